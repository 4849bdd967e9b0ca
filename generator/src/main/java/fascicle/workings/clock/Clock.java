package fascicle.workings.clock;

import java.time.LocalTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A recipe by the clock: each stage in the order of the work, with when it begins and ends as far as anybody knows.
 *
 * <p>A night ends at 8:00 in the morning, a pot whose heating is given no time is estimated from its liquor, and
 * needles whose cooling is given no time are out when they are cool: from then on times are unknown until a night
 * passes. All this is {@code common practice, no source}.
 */
public final class Clock {

    /** When work begins where nobody says: only nights depend on it. */
    public static final LocalTime USUAL_START = LocalTime.of(9, 0);

    private static final double SECONDS_IN_A_MINUTE = 60;

    private final Work work;
    private final Day day;
    private final List<Stage> stages;
    private final List<Stretch> onStove;

    /**
     * A stretch of time on the stove.
     *
     * @param from when a pot goes on it
     * @param until when its heat goes off
     */
    public record Stretch(Time from, Time until) {}

    private Clock(Work work, Day day) {
        this.work = work;
        this.day = day;
        Log log = Walk.through(work, day);
        stages = log.stages();
        onStove = log.onStove();
    }

    /**
     * The clock of work that begins at the usual hour.
     *
     * @param work the work
     * @return its clock
     */
    public static Clock of(Work work) {
        return of(work, USUAL_START);
    }

    /**
     * The clock of work.
     *
     * @param work the work
     * @param start the hour it begins
     * @return its clock
     */
    public static Clock of(Work work, LocalTime start) {
        return new Clock(work, new Day(start.toSecondOfDay() / SECONDS_IN_A_MINUTE, Day.EIGHT));
    }

    /**
     * The same work beginning so many minutes after a midnight, and in the mornings after, so many minutes after 8:00.
     */
    Clock beginning(double sinceMidnight, double later) {
        return new Clock(work, new Day(sinceMidnight, Day.EIGHT + later));
    }

    /**
     * The stages.
     *
     * @return in the order of the work
     */
    public List<Stage> stages() {
        return stages;
    }

    /**
     * When pots of this work stand on the stove.
     *
     * @return each stretch; none where nothing is heated there
     */
    public List<Stretch> onStove() {
        return onStove;
    }

    /**
     * Minutes after the midnight before the start.
     *
     * @param time a time of this clock
     * @return nothing where it is unknown
     */
    public OptionalDouble sinceMidnight(Time time) {
        return day.sinceMidnight(time);
    }
}
