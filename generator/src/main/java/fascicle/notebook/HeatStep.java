package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.Optional;

/**
 * One step of heating.
 *
 * @param to the temperature or the look of the water to reach
 * @param from where the step begins, when it is not where the last one ended
 * @param over how long the rise takes
 * @param hold how long it is kept there
 * @param on what heats it
 */
public record HeatStep(Optional<Noted<To>> to, Optional<Noted<Quantity>> from, Optional<Noted<Span>> over,
        Optional<Noted<Span>> hold, Optional<Noted<Source>> on) {

    /**
     * Whether the sun alone heats it.
     *
     * @return false for a stove or an oven, and where nobody said, which means a stove
     */
    public boolean isInTheSun() {
        return on.filter(source -> source.value() == Source.SUN).isPresent();
    }

    /** What a step heats to. */
    public sealed interface To {}

    /**
     * A temperature.
     *
     * @param temperature a quantity of temperature
     */
    public record Degrees(Quantity temperature) implements To {}

    /** How the water looks; it has no temperature in the data. */
    public enum Look implements To, Word {
        /** Steam rises, nothing moves. */
        STEAMING,
        /** Small movement, no bubbles. */
        BELOW_SIMMER,
        /** Small bubbles rise. */
        SIMMER,
        /** A rolling boil. */
        BOIL
    }

    /** What heats a bath. */
    public enum Source implements Word {
        /** A stove or hotplate. */
        STOVE,
        /** An oven. */
        OVEN,
        /** The sun. */
        SUN
    }
}
