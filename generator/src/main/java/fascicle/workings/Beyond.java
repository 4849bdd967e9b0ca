package fascicle.workings;

import fascicle.measure.Quantity;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;

/** How a recipe asks for heat that no open pot has, or for time that nobody takes. */
public sealed interface Beyond {

    /** What takes time. */
    enum Taking {
        /** Heating on a stove or in an oven. */
        HEATING,
        /** Standing in the sun. */
        SUN,
        /** Soaking before the bath. */
        SOAKING,
        /** Waiting for what goes in later. */
        BATH,
        /** Cooling in the bath. */
        COOLING,
        /** Drying. */
        DRYING
    }

    /**
     * Hotter than an open pot gets.
     *
     * @param asked the temperature as written
     * @param boil where water boils, °C
     */
    record TooHot(Noted<Quantity> asked, double boil) implements Beyond {}

    /**
     * So cold that a bath is ice.
     *
     * @param asked the temperature as written
     */
    record Ice(Noted<Quantity> asked) implements Beyond {}

    /**
     * Longer than anyone works or waits.
     *
     * @param key under which it is written
     * @param asked the time as written
     * @param most what one expects at most, min
     * @param taking what would take so long
     */
    record TooLong(String key, Noted<Span> asked, double most, Taking taking) implements Beyond {}
}
