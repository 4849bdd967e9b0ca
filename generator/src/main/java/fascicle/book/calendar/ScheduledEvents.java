package fascicle.book.calendar;

import fascicle.book.gist.Doings;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Stage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What of a schedule becomes an event: what asks for a hand at a known time, for all pots that ask alike together. */
public final class ScheduledEvents {

    private ScheduledEvents() {}

    /**
     * The events of a schedule, which all ring; what cools and dries by itself is none.
     *
     * @param schedule the schedule; without a start it has no events
     * @param called what a pot is called in words
     * @param doings stages in words
     * @param name what the schedule is known by, for events' ids
     * @return the events, in the schedule's order
     */
    public static List<Event> of(Schedule schedule, UnaryOperator<String> called, Doings doings,
            String name) {
        Map<Double, Map<String, List<Schedule.Due>>> byTime = new TreeMap<>();
        for (Schedule.Due due : schedule.due()) {
            begin(due).ifPresent(minutes -> byTime.computeIfAbsent(minutes, unused -> new LinkedHashMap<>())
                    .computeIfAbsent(due.pot(), unused -> new ArrayList<>()).add(due));
        }
        List<Event> events = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        byTime.forEach((minutes, pots) -> schedule.at(minutes).ifPresent(from -> {
            Map<String, List<String>> alike = new LinkedHashMap<>();
            pots.forEach((pot, dues) -> alike.computeIfAbsent(dues.stream().map(due -> doings.say(due.stage()))
                    .collect(Collectors.joining(". ")), unused -> new ArrayList<>()).add(pot));
            alike.forEach((doing, together) -> {
                List<Schedule.Due> dues = pots.getOrDefault(together.get(0), List.of());
                if (dues.stream().anyMatch(due -> asks(due.stage()))) {
                    events.add(new Event(uid(name, together, dues.get(0), counts), from,
                            end(dues, minutes).stream().mapToObj(schedule::at).flatMap(Optional::stream).findFirst(),
                            together.stream().map(called).collect(Collectors.joining(", ")) + ": " + doing, "", true));
                }
            });
        }));
        return List.copyOf(events);
    }

    /** Whether somebody has something to do: the heat is turned up or down, and what keeps should have been used. */
    private static boolean asks(Stage stage) {
        return stage.kind().byHand() || switch (stage.kind()) {
            case RISE, HOLD, KEEP -> true;
            default -> false;
        };
    }

    /** When there is something to be told: of what keeps, its end. */
    private static Optional<Double> begin(Schedule.Due due) {
        OptionalDouble told = due.stage().kind() == Stage.Kind.KEEP ? due.until() : due.from();
        return told.isPresent() ? Optional.of(told.getAsDouble()) : Optional.empty();
    }

    /** When the first of what goes on is over: needles that soak until morning do not keep a pot on the stove. */
    private static OptionalDouble end(List<Schedule.Due> dues, double begun) {
        return dues.stream().filter(due -> asks(due.stage())).flatMapToDouble(due -> due.until().stream())
                .filter(until -> until > begun).min();
    }

    /** Named, not drawn by lot, so that a calendar that is read again changes its events and doubles none. */
    private static String uid(String name, List<String> pots, Schedule.Due due, Map<String, Integer> counts) {
        String what = String.join(" ", pots) + "\n" + due.stage().kind();
        int number = counts.merge(what, 1, Integer::sum);
        return UUID.nameUUIDFromBytes((name + "\n" + what + "\n" + number).getBytes(StandardCharsets.UTF_8))
                + "@fascicle";
    }
}
