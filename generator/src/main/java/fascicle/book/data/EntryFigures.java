package fascicle.book.data;

import fascicle.colour.ColourDifference;
import fascicle.notebook.Cover;
import fascicle.notebook.Kept;
import fascicle.notebook.Noted;
import fascicle.notebook.WindowReading;
import fascicle.workings.EntryWorking;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** The few figures of an entry that data alone shows; they follow at once from what the notebook says. */
final class EntryFigures {

    private static final double MINUTES_IN_A_DAY = 1440;

    private EntryFigures() {}

    /** Days for which a half lay in the light. */
    static double daysInLight(WindowReading window) {
        return window.after().value().value() / MINUTES_IN_A_DAY;
    }

    /** CIEDE2000 from the entry's mean colour to a half that lay in the light; unknown without both, and of wet needles. */
    static OptionalDouble faded(EntryWorking working, WindowReading window) {
        if (window.reading().wet() || working.colour().isEmpty()) {
            return OptionalDouble.empty();
        }
        return window.reading().colour().lab().stream()
                .mapToDouble(now -> ColourDifference.ciede2000(working.colour().get().lab(), now)).findFirst();
    }

    /** Grams left of what was kept; unknown where a weight is. */
    static OptionalDouble leftGrams(Kept kept) {
        if (kept.weight().isEmpty() || kept.used().stream().anyMatch(use -> use.weight().isEmpty())) {
            return OptionalDouble.empty();
        }
        double used = kept.used().stream().flatMap(use -> use.weight().stream())
                .mapToDouble(weight -> weight.value().value()).sum();
        return OptionalDouble.of(kept.weight().get().value().value() - used);
    }

    /** The last day on which damp needles keep: since then, and as long as the notebook says. */
    static Optional<LocalDate> useBy(Kept kept, Cover cover) {
        boolean damp = kept.how().map(Noted::value).filter(how -> how == Kept.How.DAMP).isPresent();
        if (!damp || kept.since().isEmpty() || cover.dampKeeps().isEmpty()) {
            return Optional.empty();
        }
        long days = (long) StrictMath.floor(cover.dampKeeps().get().value().value() / MINUTES_IN_A_DAY);
        return Optional.of(kept.since().get().value().plusDays(days));
    }
}
