package fascicle.workings.clock;

import fascicle.bath.Magnitude;
import java.util.OptionalDouble;

/**
 * A point of the work: so many minutes after its start, or after the morning that a night ended in.
 *
 * @param mornings the days after the first whose morning it is counted from; 0 for the start itself
 * @param minutes after that; empty where nobody knows
 * @param about whether it rests on a night, on an estimate or on something rough
 */
public record Time(int mornings, OptionalDouble minutes, boolean about) {

    /** The start. */
    public static final Time START = new Time(0, OptionalDouble.of(0), false);

    /**
     * A point of the work.
     *
     * @throws IllegalArgumentException if it lies before what it is counted from
     */
    public Time {
        if (mornings < 0 || minutes.orElse(0) < 0) {
            throw new IllegalArgumentException("no time of the work: " + mornings + " mornings and " + minutes);
        }
    }

    /** A morning that a night ends in. */
    static Time morning(int mornings) {
        return new Time(mornings, OptionalDouble.of(0), true);
    }

    /**
     * Whether it is known.
     *
     * @return false where something before it takes nobody knows how long
     */
    public boolean known() {
        return minutes.isPresent();
    }

    /**
     * The time after something.
     *
     * @param length how long it takes, min
     * @return the time when it is over, unknown where either is
     */
    public Time plus(Magnitude length) {
        return known() && length.known()
                ? new Time(mornings, OptionalDouble.of(minutes.getAsDouble() + length.orThrow()),
                        about || length.about())
                : unknown();
    }

    /** The same, said to be rough. */
    Time roughly() {
        return new Time(mornings, minutes, true);
    }

    /** Some time after this, on the same day as far as anybody knows. */
    Time unknown() {
        return new Time(mornings, OptionalDouble.empty(), about);
    }
}
