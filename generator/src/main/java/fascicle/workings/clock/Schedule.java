package fascicle.workings.clock;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Several pots on one stove: everything that is done, in the order of time. See {@link Stove} for who waits.
 *
 * @param start when the first pot begins, where that is known
 * @param due the stages of all pots, in the order of time; what has no known time stands after what comes before it in
 *     its own pot, and what keeps at the day it keeps to
 * @param together when two pots stand on the stove at once
 * @param last pots of which nobody knows how long they keep the stove, and which therefore came last
 * @param unplaced those among them for which there is no place until another of them goes off; they have no times
 */
public record Schedule(Optional<LocalDateTime> start, List<Due> due, List<Together> together, List<String> last,
        List<String> unplaced) {

    private static final double SECONDS_IN_A_MINUTE = 60;

    /**
     * A pot.
     *
     * @param name what it is called
     * @param clock its clock, whatever hour that begins at
     */
    public record Pot(String name, Clock clock) {}

    /**
     * Something to be done, or going on.
     *
     * @param pot the pot's name
     * @param stage what is done
     * @param from minutes after the schedule's start; nothing where unknown
     * @param until when it is over, in the same way
     */
    public record Due(String pot, Stage stage, OptionalDouble from, OptionalDouble until) {}

    /**
     * Two pots on the stove at once.
     *
     * @param one the pot that stood there first
     * @param other the other
     * @param from minutes after the schedule's start
     * @param until when one of them goes off; nothing where nobody knows
     */
    public record Together(String one, String other, double from, OptionalDouble until) {}

    /**
     * Pots that begin at a certain time, as far as there is room for them.
     *
     * @param pots the pots, the first to be begun first
     * @param start when work begins
     * @return the schedule
     */
    public static Schedule of(List<Pot> pots, LocalDateTime start) {
        return of(pots, Optional.of(start), start.toLocalTime());
    }

    /**
     * Pots that begin at the usual hour of no certain day.
     *
     * @param pots the pots, the first to be begun first
     * @return the schedule, in minutes after its start alone
     */
    public static Schedule of(List<Pot> pots) {
        return of(pots, Optional.empty(), Clock.USUAL_START);
    }

    /**
     * What hour it is then.
     *
     * @param minutes after the schedule's start
     * @return the local date and time; nothing where the start is not known
     */
    public Optional<LocalDateTime> at(double minutes) {
        return start.map(begun -> begun.plusSeconds(StrictMath.round(minutes * SECONDS_IN_A_MINUTE)));
    }

    private static Schedule of(List<Pot> pots, Optional<LocalDateTime> start, LocalTime hour) {
        double begun = hour.toSecondOfDay() / SECONDS_IN_A_MINUTE;
        Stove stove = new Stove(begun);
        List<Pot> known = pots.stream().filter(pot -> Stove.isKnown(pot.clock())).toList();
        List<Pot> unknown = pots.stream().filter(pot -> !Stove.isKnown(pot.clock())).toList();
        known.forEach(stove::place);
        unknown.forEach(stove::place);
        List<Keyed> keyed = new ArrayList<>();
        stove.placed().forEach(placed -> keyed.addAll(keyed(placed, begun)));
        keyed.sort(Comparator.comparingDouble(Keyed::key));
        return new Schedule(start, keyed.stream().map(Keyed::due).toList(), stove.together(),
                unknown.stream().map(Pot::name).toList(), stove.unplaced());
    }

    /** Something due, and the last time known before it. */
    private record Keyed(double key, Due due) {}

    private static List<Keyed> keyed(Stove.Placed placed, double begun) {
        List<Keyed> keyed = new ArrayList<>();
        double key = placed.hasTimes() ? 0 : Double.POSITIVE_INFINITY;
        for (Stage stage : placed.clock().stages()) {
            OptionalDouble from = placed.minutes(stage.from(), begun);
            key = StrictMath.max(key, from.orElse(key));
            OptionalDouble until = placed.minutes(stage.until(), begun);
            keyed.add(new Keyed(stage.kind() == Stage.Kind.KEEP ? until.orElse(Double.POSITIVE_INFINITY) : key,
                    new Due(placed.name(), stage, from, until)));
        }
        return keyed;
    }
}
