package fascicle.workings.clock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A stove with room for two pots. A pot has its place from when it goes on until its heat is off; it soaks and cools
 * elsewhere. A third pot waits, and with it its soak, so that no needles wait; what has to wait after a night begins
 * later in the morning instead. A pot of which nobody knows how long it needs its place keeps it.
 */
final class Stove {

    /** How many pots stand on it at once: {@code common practice, no source}. */
    private static final int ROOM = 2;

    private static final double STEP = 5;
    private static final double LONGEST_WAIT = 7 * 24 * 60;

    private final double begun;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Held> held = new ArrayList<>();

    /** A place that a pot holds: from and until in minutes after the schedule's start, the end perhaps never. */
    private record Held(String pot, double from, double until) {

        boolean holds(double minute) {
            return from <= minute && minute < until;
        }
    }

    /** A pot with its clock as it came out, and whether there was room for it. */
    record Placed(String name, Clock clock, boolean hasTimes) {

        OptionalDouble minutes(Time time, double begun) {
            OptionalDouble since = clock.sinceMidnight(time);
            return hasTimes && since.isPresent() ? OptionalDouble.of(since.getAsDouble() - begun)
                    : OptionalDouble.empty();
        }
    }

    /** An empty stove; work begins so many minutes after midnight. */
    Stove(double begun) {
        this.begun = begun;
    }

    /** Whether it is known when a pot needs a place. */
    static boolean isKnown(Clock clock) {
        return clock.onStove().stream().allMatch(stretch -> stretch.from().known() && stretch.until().known());
    }

    /** Finds a place for a pot, as soon as there is one. */
    void place(Schedule.Pot pot) {
        for (double wait = 0; wait <= LONGEST_WAIT; wait += STEP) {
            if (!fits(pot, wait, 0, true)) {
                continue;
            }
            for (double later = 0; later <= LONGEST_WAIT; later += STEP) {
                if (fits(pot, wait, later, false)) {
                    Placed found = new Placed(pot.name(), pot.clock().beginning(begun + wait, later), true);
                    placed.add(found);
                    held.addAll(held(found, false));
                    return;
                }
            }
            break;
        }
        placed.add(new Placed(pot.name(), pot.clock(), false));
    }

    List<Placed> placed() {
        return List.copyOf(placed);
    }

    List<String> unplaced() {
        return placed.stream().filter(pot -> !pot.hasTimes()).map(Placed::name).toList();
    }

    List<Schedule.Together> together() {
        List<Schedule.Together> together = new ArrayList<>();
        for (Held one : held) {
            for (Held other : held) {
                double until = StrictMath.min(one.until(), other.until());
                boolean first = one.from() < other.from()
                        || one.from() == other.from() && held.indexOf(one) < held.indexOf(other);
                if (!one.pot().equals(other.pot()) && first && other.from() < until) {
                    together.add(new Schedule.Together(one.pot(), other.pot(), other.from(),
                            Double.isInfinite(until) ? OptionalDouble.empty() : OptionalDouble.of(until)));
                }
            }
        }
        together.sort(Comparator.comparingDouble(Schedule.Together::from));
        return List.copyOf(together);
    }

    private boolean fits(Schedule.Pot pot, double wait, double later, boolean firstDayAlone) {
        List<Held> asked = held(new Placed(pot.name(), pot.clock().beginning(begun + wait, later), true),
                firstDayAlone);
        return asked.stream().allMatch(own -> Stream.concat(held.stream(), asked.stream())
                .map(Held::from).filter(own::holds)
                .allMatch(minute -> crowd(asked, minute) <= ROOM));
    }

    private long crowd(List<Held> asked, double minute) {
        return Stream.concat(held.stream(), asked.stream()).filter(one -> one.holds(minute)).count();
    }

    private List<Held> held(Placed pot, boolean firstDayAlone) {
        return pot.clock().onStove().stream().filter(stretch -> !firstDayAlone || stretch.from().mornings() == 0)
                .map(stretch -> new Held(pot.name(), pot.minutes(stretch.from(), begun).orElse(
                                pot.minutes(Time.START, begun).orElse(0)),
                        pot.minutes(stretch.until(), begun).orElse(Double.POSITIVE_INFINITY)))
                .toList();
    }
}
