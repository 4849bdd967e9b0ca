package fascicle.workings;

import java.util.Comparator;

/** Which entries a maker looks at first. */
final class Best {

    /** The most even; of equals the nearest to its target, then the newest, then the first by id. */
    static final Comparator<EntryWorking> FIRST = Comparator.comparingInt(EntryWorking::evenness).reversed()
            .thenComparingDouble(Best::fromTarget)
            .thenComparing(working -> working.entry().date(), Comparator.reverseOrder())
            .thenComparing(EntryWorking::id);

    private Best() {}

    private static double fromTarget(EntryWorking working) {
        return working.colour().flatMap(ColourFigures::target).map(Difference::de00)
                .orElse(Double.POSITIVE_INFINITY);
    }
}
