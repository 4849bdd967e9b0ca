package fascicle.notebook;

import fascicle.measure.Quantity;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The half left in the light, read again.
 *
 * @param after how long it had been there
 * @param reading its colour then
 * @param wool the blue wool reference of ISO 105-B08 that lay beside it, 1 to 8
 */
public record WindowReading(Noted<Quantity> after, Reading reading, Optional<Noted<Integer>> wool) {

    private static final double MINUTES_IN_A_DAY = 1440;

    /** Beyond so many days, some 2700 years, calendars lose their sense. */
    private static final double END_OF_DAYS = 1_000_000;

    /**
     * The day on which it was read.
     *
     * @param dyed the entry's dye day
     * @return so many whole days later
     */
    public LocalDate on(LocalDate dyed) {
        return dyed.plusDays((long) StrictMath.min(after.value().value() / MINUTES_IN_A_DAY, END_OF_DAYS));
    }
}
