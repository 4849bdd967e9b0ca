package fascicle.workings.clock;

import java.util.OptionalDouble;

/**
 * What hour of a day the work begins, and from when on hands are free in the mornings after.
 *
 * @param start minutes after the midnight before the start
 * @param morning minutes after midnight
 */
record Day(double start, double morning) {

    /** When a night ends, 8:00: {@code common practice, no source}. */
    static final double EIGHT = 8 * 60;

    private static final double MINUTES_IN_A_DAY = 24 * 60;

    /** What is left overnight is left for four hours at least; who works past midnight is still on the same dye day. */
    private static final double SHORTEST_NIGHT = 4 * 60;

    /** Minutes after the midnight before the start; nothing where the time is unknown. */
    OptionalDouble sinceMidnight(Time time) {
        return time.known() ? OptionalDouble.of(begin(time) + time.minutes().getAsDouble()) : OptionalDouble.empty();
    }

    /** The end of the night that begins at a time; of an unknown one, that of the day it was last known to be on. */
    Time overnight(Time time) {
        if (!time.known()) {
            return Time.morning(time.mornings() + 1);
        }
        double soonest = sinceMidnight(time).getAsDouble() + SHORTEST_NIGHT - EIGHT;
        return Time.morning((int) StrictMath.max(1, StrictMath.ceil(soonest / MINUTES_IN_A_DAY)));
    }

    /** The later of two times; unknown where one of them is. */
    Time later(Time one, Time other) {
        if (!one.known() || !other.known()) {
            return (one.mornings() >= other.mornings() ? one : other).unknown();
        }
        return sinceMidnight(one).getAsDouble() >= sinceMidnight(other).getAsDouble() ? one : other;
    }

    private double begin(Time time) {
        return time.mornings() == 0 ? start : time.mornings() * MINUTES_IN_A_DAY + morning;
    }
}
