package fascicle.workings.plan;

import fascicle.workings.PartFigures;

/**
 * What reaches a class as it is, though nobody in a class should handle it dry.
 *
 * @param part what it is, for the whole batch
 * @param why why there is no solution of it
 */
public record StillDry(PartFigures part, Why why) {

    /** Why something stays dry. */
    public enum Why {
        /** Nobody knows how many grams of it there are. */
        UNWEIGHED,
        /** Needles are finished with it, and that is no bath. */
        FINISH
    }
}
