package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import fascicle.measure.Dimension;

/**
 * What is left of a needle lot, a dye or an assistant, and how long it lasts.
 *
 * @param measured whether it is weighed, in g, or measured, in mL: as its pack is
 * @param remainder what is left
 * @param lately what was used in the last days of the notebook
 * @param least the least that a batch ever took of it; unknown where none did, or any took an unknown amount
 * @param days how many days those are: 365, or as many as a younger notebook tells of
 */
public record Supply(Dimension measured, Remainder remainder, Total lately, Magnitude least, long days) {

    /** A pace is that of a year. */
    static final long YEAR = 365;

    /**
     * So soon it is about to run out, and over so few days a pace cannot be told: {@code common practice, no source}.
     */
    private static final long QUARTER = 90;

    /**
     * How many days what is left lasts at the pace of the last days.
     *
     * @return days, rough; unknown where what is left or the pace is, where nothing was used lately or nothing is left
     */
    public Magnitude lasts() {
        Magnitude left = remainder.left();
        boolean paced = days >= QUARTER && lately.whole().known() && lately.known().orThrow() > 0;
        return paced && left.known() && left.orThrow() > 0
                ? left.over(lately.known()).times(days).about(true)
                : Magnitude.UNKNOWN;
    }

    /**
     * Whether something is left, but less than any batch took of it.
     *
     * @return false where that is not known
     */
    public boolean isTooLittle() {
        Magnitude left = remainder.left();
        return left.known() && left.orThrow() > 0 && least.known() && left.orThrow() < least.orThrow();
    }

    /**
     * Whether it is about to run out: nothing is left, or less than the smallest batch took, or it lasts for less than
     * 90 days.
     *
     * @return false where that is not known
     */
    public boolean isRunningOut() {
        return remainder.isUsedUp() || isTooLittle() || lasts().known() && lasts().orThrow() < QUARTER;
    }
}
