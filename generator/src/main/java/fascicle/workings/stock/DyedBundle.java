package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import fascicle.notebook.Cover;
import fascicle.notebook.Kept;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.workings.EntryWorking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was kept of an entry.
 *
 * @param entry the entry
 * @param kept what its maker wrote
 * @param remainder what is left, g: what was kept less what baskets and later dyeings took
 * @param overdyed the entries that dyed of it again
 * @param useBy the last day on which a damp bundle keeps; nothing for what is dry, and where it is not known
 * @param useByAbout whether that day is rough, since how long damp needles keep was written as rough
 * @param undated what would make the use-by of a damp bundle known; none where it is, or none is needed
 */
public record DyedBundle(EntryWorking entry, Kept kept, Remainder remainder, List<EntryWorking> overdyed,
        Optional<LocalDate> useBy, boolean useByAbout, List<Gap> undated) {

    private static final double MINUTES_IN_A_DAY = 1440;

    static DyedBundle of(EntryWorking entry, Kept kept, List<EntryWorking> overdyed, Cover cover) {
        Total had = kept.weight().map(DyedBundle::grams)
                .orElseGet(() -> Total.unknown(gap(Gap.Kind.KEPT_WEIGHT, place(entry, kept), entry)));
        List<Total> used = new ArrayList<>();
        for (Kept.Use use : kept.used()) {
            used.add(grams(entry, use));
        }
        overdyed.forEach(again -> used.add(dyedAgain(entry, kept, again)));
        return new DyedBundle(entry, kept, new Remainder(had, Total.sum(used)), List.copyOf(overdyed),
                useBy(kept, cover), useBy(kept, cover).isPresent() && isRough(cover), undated(entry, kept, cover));
    }

    /**
     * Whether it is damp, and so must be woven or dried.
     *
     * @return false where that was not written
     */
    public boolean isDamp() {
        return isDamp(kept);
    }

    /**
     * Whether a day is past its use-by.
     *
     * @param today the day
     * @return false where there is no use-by
     */
    public boolean isLate(LocalDate today) {
        return useBy.filter(last -> last.isBefore(today)).isPresent();
    }

    /** What a basket took, g. */
    static Total grams(EntryWorking entry, Kept.Use use) {
        return use.weight().map(DyedBundle::grams).orElseGet(() -> Total.unknown(gap(Gap.Kind.USED_WEIGHT,
                use.in().map(Noted::place).orElse(entry.entry().place()), entry)));
    }

    /**
     * What an over-dye took, weighed as the bundle was: the dry grams of damp needles are fewer than the bundle lost.
     */
    private static Total dyedAgain(EntryWorking entry, Kept kept, EntryWorking again) {
        if (!isDamp(kept)) {
            return Taking.needles(again);
        }
        boolean alike = again.entry().needles().weighed().map(Noted::value).filter(Needles.Weighed.DAMP::equals)
                .isPresent();
        Magnitude damp = new Magnitude(again.needles().grams(), again.needles().about());
        return alike && damp.known() ? Total.of(damp) : Total.unknown(new Gap(Gap.Kind.OVERDYED_DAMP,
                kept.weight().map(Noted::place).orElse(place(entry, kept)), again.entry().called()));
    }

    private static Total grams(Noted<fascicle.measure.Quantity> weight) {
        return Total.of(Magnitude.of(weight.value().value(), weight.value().about()));
    }

    private static boolean isDamp(Kept kept) {
        return kept.how().map(Noted::value).filter(Kept.How.DAMP::equals).isPresent();
    }

    /** The last day on which damp needles keep: since then, and as long as the notebook says. */
    private static Optional<LocalDate> useBy(Kept kept, Cover cover) {
        if (!isDamp(kept)) {
            return Optional.empty();
        }
        Optional<Long> days = cover.dampKeeps()
                .map(keeps -> (long) StrictMath.floor(keeps.value().value() / MINUTES_IN_A_DAY));
        return kept.since().map(Noted::value).flatMap(since -> days.map(since::plusDays));
    }

    private static boolean isRough(Cover cover) {
        return cover.dampKeeps().filter(keeps -> keeps.value().about()).isPresent();
    }

    private static List<Gap> undated(EntryWorking entry, Kept kept, Cover cover) {
        List<Gap> gaps = new ArrayList<>();
        if (isDamp(kept) && kept.since().isEmpty()) {
            gaps.add(gap(Gap.Kind.SINCE, place(entry, kept), entry));
        }
        if (isDamp(kept) && cover.dampKeeps().isEmpty()) {
            gaps.add(new Gap(Gap.Kind.DAMP_KEEPS, Place.of("notebook.yaml"), cover.title()));
        }
        return List.copyOf(gaps);
    }

    private static Gap gap(Gap.Kind kind, Place place, EntryWorking entry) {
        return new Gap(kind, place, entry.entry().called());
    }

    private static Place place(EntryWorking entry, Kept kept) {
        return kept.how().map(Noted::place).or(() -> kept.since().map(Noted::place))
                .orElse(entry.entry().place());
    }
}
