package fascicle.book.data;

import fascicle.notebook.Cover;
import fascicle.notebook.Kept;
import fascicle.notebook.Noted;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** The few figures of an entry that data alone shows; they follow at once from what the notebook says. */
final class EntryFigures {

    private static final double MINUTES_IN_A_DAY = 1440;

    private EntryFigures() {}

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
