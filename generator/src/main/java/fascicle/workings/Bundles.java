package fascicle.workings;

import fascicle.bath.Magnitude;
import fascicle.notebook.Conditions;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Needles;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds out what needles an entry had and what they weighed. */
final class Bundles {

    private final Map<String, NeedleLot> lots;
    private final Map<String, Entry> entries;
    private final Conditions conditions;

    Bundles(Notebook notebook) {
        lots = Notebook.byId(notebook.lots(), NeedleLot::id);
        entries = Notebook.byId(notebook.entries(), Entry::id);
        conditions = Conditions.of(notebook.cover());
    }

    /** The needles of an entry. */
    NeedleFigures of(Entry entry) {
        Optional<NeedleLot> lot = lot(entry);
        Magnitude grams = grams(entry.needles(), lot);
        Needles.Weighed state = entry.needles().state();
        boolean dry = state == Needles.Weighed.DRY || state == Needles.Weighed.GUESSED;
        return new NeedleFigures(lot, lot.flatMap(NeedleLot::condition).map(Noted::value).map(this::spelled),
                lot.flatMap(NeedleLot::species).map(Noted::value), grams.value(),
                dry ? grams.value() : Magnitude.UNKNOWN.value(), grams.about());
    }

    /** The dry weight of an entry's needles, g. */
    static Magnitude dry(NeedleFigures needles) {
        return new Magnitude(needles.dryGrams(), needles.about());
    }

    private static Magnitude grams(Needles needles, Optional<NeedleLot> lot) {
        boolean guessed = needles.state() == Needles.Weighed.GUESSED;
        Magnitude weighed = needles.weight().map(noted -> Substance.size(noted.value())).orElse(Magnitude.UNKNOWN);
        Magnitude counted = needles.bundles().isPresent() ? counted(needles.bundles().get().value(), lot)
                : Magnitude.UNKNOWN;
        Magnitude grams = (weighed.known() ? weighed : counted).about(guessed);
        return grams.known() && grams.orThrow() > 0 ? grams : Magnitude.UNKNOWN;
    }

    private static Magnitude counted(double bundles, Optional<NeedleLot> lot) {
        return lot.flatMap(NeedleLot::bundle)
                .map(bundle -> Magnitude.of(bundle.weight().value().value())
                        .over(Magnitude.of(bundle.counted().value())).times(bundles).about(true))
                .orElse(Magnitude.UNKNOWN);
    }

    /** The lot of needles that may have been dyed before, and before that: it is the first dyeing that tells. */
    private Optional<NeedleLot> lot(Entry entry) {
        Set<String> seen = new HashSet<>();
        Entry first = entry;
        while (first.needles().from().isPresent() && seen.add(Ids.key(first.id()))) {
            Entry before = entries.get(Ids.key(first.needles().from().get().value()));
            if (before == null) {
                break;
            }
            first = before;
        }
        return first.needles().lot().flatMap(noted -> Optional.ofNullable(lots.get(Ids.key(noted.value()))));
    }

    private String spelled(String condition) {
        return conditions.find(condition).map(Conditions.Condition::id).orElse(condition);
    }
}
