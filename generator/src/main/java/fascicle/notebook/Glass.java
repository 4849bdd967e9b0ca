package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.Optional;

/**
 * The bath looked at in a glass, in the same light.
 *
 * @param plain plain water
 * @param before the bath before the needles
 * @param after the bath after them
 * @param diluted how many times the bath was diluted to be seen through
 * @param left how much bath was left
 */
public record Glass(Optional<Reading> plain, Optional<Reading> before, Optional<Reading> after,
        Optional<Noted<Double>> diluted, Optional<Noted<Quantity>> left) {}
