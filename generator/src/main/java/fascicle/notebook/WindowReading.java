package fascicle.notebook;

import fascicle.measure.Quantity;

/**
 * The half left in the light, read again.
 *
 * @param after how long it had been there
 * @param reading its colour then
 */
public record WindowReading(Noted<Quantity> after, Reading reading) {}
