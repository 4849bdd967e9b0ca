package fascicle.workings;

import fascicle.colour.ColourName;
import fascicle.colour.Lab;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A colour in figures.
 *
 * @param lab mean of the comparable readings, D50
 * @param readings the comparable readings, in order
 * @param by how they were read: {@code lab}, {@code hex}, or {@code mixed}
 * @param unlevelness mean CIEDE2000 of the readings from their mean; unknown below three readings
 * @param name the nearest ISCC–NBS name and its family
 * @param shift CIEDE2000 from the bare lot; unknown where the lot has no colour
 * @param target CIEDE2000 from the target; unknown where there is none
 */
public record ColourFigures(Lab lab, List<Lab> readings, String by, OptionalDouble unlevelness, ColourName name,
        OptionalDouble shift, OptionalDouble target) {}
