package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.Optional;

/**
 * The half left in the light, read again.
 *
 * @param after how long it had been there
 * @param reading its colour then
 * @param wool the blue wool reference of ISO 105-B08 that lay beside it, 1 to 8
 */
public record WindowReading(Noted<Quantity> after, Reading reading, Optional<Noted<Integer>> wool) {}
