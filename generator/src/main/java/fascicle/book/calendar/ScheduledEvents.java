package fascicle.book.calendar;

import fascicle.book.gist.Doings;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Stage;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What of a schedule becomes an event: everything of known time, what one pot asks for at one time together. */
public final class ScheduledEvents {

    private ScheduledEvents() {}

    /**
     * The events of a schedule. Those that need a hand ring; damp needles ring when they should have been used.
     *
     * @param schedule the schedule; without a start it has no events
     * @param called what a pot is called in words
     * @param doings stages in words
     * @param name what the schedule is known by, for events' ids
     * @return the events, in the schedule's order
     */
    public static List<Event> of(Schedule schedule, UnaryOperator<String> called, Doings doings,
            String name) {
        Map<String, List<Schedule.Due>> together = new LinkedHashMap<>();
        for (Schedule.Due due : schedule.due()) {
            begin(due).ifPresent(minutes ->
                    together.computeIfAbsent(due.pot() + "\n" + minutes, unused -> new ArrayList<>()).add(due));
        }
        List<Event> events = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (List<Schedule.Due> dues : together.values()) {
            Schedule.Due first = dues.get(0);
            Optional<LocalDateTime> start = schedule.at(begin(first).orElseThrow());
            start.ifPresent(from -> events.add(new Event(uid(name, first, counts), from,
                    end(dues).stream().mapToObj(schedule::at).flatMap(Optional::stream).findFirst(),
                    called.apply(first.pot()) + ": " + dues.stream().map(due -> doings.say(due.stage())).collect(Collectors.joining(". ")),
                    "", dues.stream().anyMatch(due -> due.stage().kind().byHand()
                            || due.stage().kind() == Stage.Kind.KEEP))));
        }
        return List.copyOf(events);
    }

    /** When there is something to be told: of what keeps, its end. */
    private static Optional<Double> begin(Schedule.Due due) {
        OptionalDouble told = due.stage().kind() == Stage.Kind.KEEP ? due.until() : due.from();
        return told.isPresent() ? Optional.of(told.getAsDouble()) : Optional.empty();
    }

    private static OptionalDouble end(List<Schedule.Due> dues) {
        return dues.stream().map(Schedule.Due::until).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).max();
    }

    /** Named, not drawn by lot, so that a calendar that is read again changes its events and doubles none. */
    private static String uid(String name, Schedule.Due due, Map<String, Integer> counts) {
        String what = due.pot() + "\n" + due.stage().kind();
        int number = counts.merge(what, 1, Integer::sum);
        return UUID.nameUUIDFromBytes((name + "\n" + what + "\n" + number).getBytes(StandardCharsets.UTF_8)) + "@fascicle";
    }
}
