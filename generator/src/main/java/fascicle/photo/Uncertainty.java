package fascicle.photo;

import java.util.List;

/** How far photographs of things of known colour lie from the truth. */
public final class Uncertainty {

    /** From how many things on the figure means something ({@code common practice, no source}). */
    public static final int ENOUGH = 8;

    /** What the known colours themselves may be off: those of a meter. */
    private static final double LEAST = 1;

    /** The 95 % point of chi-squared with three degrees of freedom (NIST/SEMATECH e-Handbook 1.3.6.7.4). */
    private static final double CHI_SQUARED = 7.815;

    private Uncertainty() {}

    /**
     * How far a photograph's colour may lie from the truth, so that nineteen of twenty lie nearer. The differences are
     * taken as distances in three directions in each of which errors fall alike and normally; their mean square is then
     * a third of what the 95 % point of chi-squared is to be multiplied with.
     *
     * @param differences CIEDE2000 between what was read and what is known; none below 0
     * @return as CIEDE2000, at least 1
     * @throws IllegalArgumentException if there are no differences
     */
    public static double of(List<Double> differences) {
        double meanSquare = differences.stream().mapToDouble(one -> one * one).average().orElseThrow(() ->
                new IllegalArgumentException("nothing was learnt from no differences: " + differences));
        return StrictMath.max(LEAST, StrictMath.sqrt(meanSquare / 3 * CHI_SQUARED));
    }
}
