package fascicle.workings;

import fascicle.bath.Pot;
import fascicle.measure.Quantity;
import fascicle.notebook.Vessel;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bath in its vessel, in figures.
 *
 * @param depthCm how deep the liquor stands before the needles, cm
 * @param filledPercent how much of the vessel's height is filled once the needles are in, per cent; above 100 it runs
 *     over
 * @param needles how long the needles are
 * @param lineCm the longest line that lies flat in the vessel, cm
 */
public record PotFigures(OptionalDouble depthCm, OptionalDouble filledPercent, Optional<Quantity> needles,
        OptionalDouble lineCm) {

    /** A bath in no vessel that is known. */
    private static final PotFigures UNKNOWN = new PotFigures(OptionalDouble.empty(), OptionalDouble.empty(),
            Optional.empty(), OptionalDouble.empty());

    /**
     * A bath in its vessel.
     *
     * @param vessel the vessel, where there is one
     * @param liquor in mL
     * @param needles dry, in g
     * @param length how long the needles are
     * @return what is known of it
     */
    static PotFigures of(Optional<Vessel> vessel, OptionalDouble liquor, OptionalDouble needles,
            Optional<Quantity> length) {
        Optional<Pot> pot = vessel.flatMap(Vessel::pot);
        if (pot.isEmpty()) {
            return UNKNOWN;
        }
        OptionalDouble depth = liquor.isPresent() ? OptionalDouble.of(pot.get().depthOf(liquor.getAsDouble()))
                : OptionalDouble.empty();
        OptionalDouble filled = liquor.isPresent() && needles.isPresent()
                ? OptionalDouble.of(100 * pot.get().filledBy(liquor.getAsDouble(), needles.getAsDouble()))
                : OptionalDouble.empty();
        return new PotFigures(depth, filled, length, OptionalDouble.of(pot.get().basin().longestLine()));
    }

    /**
     * Whether the needles are longer than anything that lies flat in the vessel.
     *
     * @return false where that is not known
     */
    public boolean isTooShort() {
        return needles.isPresent() && lineCm.isPresent() && needles.get().value() > lineCm.getAsDouble();
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
