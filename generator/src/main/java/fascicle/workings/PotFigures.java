package fascicle.workings;

import fascicle.bath.Pot;
import fascicle.notebook.Vessel;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bath in its vessel, in figures.
 *
 * @param depthCm how deep the liquor stands before the needles, cm
 * @param filledPercent how much of the vessel's height is filled once the needles are in, per cent; above 100 it runs
 *     over
 * @param needleCm how long the needles are, cm
 * @param lineCm the longest line that lies flat in the vessel, cm
 */
public record PotFigures(OptionalDouble depthCm, OptionalDouble filledPercent, OptionalDouble needleCm,
        OptionalDouble lineCm) {

    /** A bath in no vessel that is known. */
    private static final PotFigures UNKNOWN = new PotFigures(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * A bath in its vessel.
     *
     * @param vessel the vessel, where there is one
     * @param liquor in mL
     * @param needles dry, in g
     * @param needleCm how long the needles are, cm
     * @return what is known of it
     */
    static PotFigures of(Optional<Vessel> vessel, OptionalDouble liquor, OptionalDouble needles,
            OptionalDouble needleCm) {
        Optional<Pot> pot = vessel.flatMap(Vessel::pot);
        if (pot.isEmpty()) {
            return UNKNOWN;
        }
        OptionalDouble depth = liquor.isPresent() ? OptionalDouble.of(pot.get().depthOf(liquor.getAsDouble()))
                : OptionalDouble.empty();
        OptionalDouble filled = liquor.isPresent() && needles.isPresent()
                ? OptionalDouble.of(100 * pot.get().filledBy(liquor.getAsDouble(), needles.getAsDouble()))
                : OptionalDouble.empty();
        return new PotFigures(depth, filled, needleCm, OptionalDouble.of(pot.get().basin().longestLine()));
    }

    /**
     * Whether the needles are longer than anything that lies flat in the vessel.
     *
     * @return false where that is not known
     */
    public boolean isTooShort() {
        return needleCm.isPresent() && lineCm.isPresent() && needleCm.getAsDouble() > lineCm.getAsDouble();
    }

    /**
     * Whether it is filled higher than can be stirred and carried.
     *
     * @return false where that is not known
     */
    public boolean isTooFull() {
        return filledPercent.isPresent() && filledPercent.getAsDouble() > 100 * Pot.FULL;
    }
}
