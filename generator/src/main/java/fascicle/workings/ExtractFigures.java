package fascicle.workings;

import java.util.OptionalDouble;

/**
 * A plant that is drawn out, in figures.
 *
 * @param plantGrams how much of the plant, g
 * @param waterMl the water it is drawn out in, mL
 * @param about whether either rests on a rough figure
 */
public record ExtractFigures(OptionalDouble plantGrams, OptionalDouble waterMl, boolean about) {}
