package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.gist.Doings;
import fascicle.book.page.PlanPage;
import fascicle.book.words.Words;
import fascicle.workings.clock.Clock;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Stage;
import fascicle.workings.plan.DayPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A planned day by the hour. */
final class PlannedHours {

    private static final int NIGHT = 22;
    private static final int MORNING = 6;
    private static final double SECONDS = 60;
    private static final LocalDate SOME_DAY = LocalDate.of(2001, 1, 1);

    private final Schedule schedule;
    private final Words words;
    private final Figures figures;
    private final Doings doings;

    /** What several pots may be asked for together; at a time that nobody knows each stands by itself, at its place. */
    private record Asked(OptionalDouble time, int place, Stage.Kind kind, String doing, OptionalDouble until) {}

    /** What is done in some pots at one time, one thing after the other; the last may go on. */
    private record Line(List<String> pots, List<Schedule.Due> dues) {

        Schedule.Due first() {
            return dues.get(0);
        }

        boolean goesOn(Line next) {
            Schedule.Due last = dues.get(dues.size() - 1);
            return pots.equals(next.pots) && !lasts(last) && minute(last).equals(minute(next.first()));
        }

        Line plus(Line next) {
            return new Line(pots, Stream.concat(dues.stream(), next.dues.stream()).toList());
        }
    }

    PlannedHours(DayPlan plan, Words words, Doings doings) {
        this.schedule = plan.schedule();
        this.words = words;
        this.figures = new Figures(words);
        this.doings = doings;
    }

    /** Everything, in the order of time. */
    List<PlanPage.Due> all() {
        return told(schedule.due());
    }

    /** What is due in one pot. */
    List<PlanPage.Due> of(String pot) {
        return told(schedule.due().stream().filter(due -> due.pot().equals(pot)).toList());
    }

    /** When the stove is free again, and when the last needles come out of a bath. */
    List<String> ends() {
        return Stream.of(last(stage -> stage.kind() == Stage.Kind.OFF).map(when -> words.say("plan.stove-free", when)),
                last(Stage::endsBath).map(when -> words.say("plan.all-out", when))).flatMap(Optional::stream).toList();
    }

    private Optional<String> last(Predicate<Stage> asked) {
        List<Schedule.Due> ends = schedule.due().stream().filter(due -> asked.test(due.stage())).toList();
        return ends.stream().anyMatch(due -> due.from().isEmpty()) ? Optional.empty()
                : ends.stream().max(Comparator.comparingDouble(due -> due.from().orElseThrow())).map(due -> {
                    double minutes = due.from().orElseThrow();
                    String hour = due.stage().from().about() ? words.say("about", when(minutes)) : when(minutes);
                    return dated(minutes, hour);
                });
    }

    /** An hour after its day. */
    private String dated(double minutes, String hour) {
        return words.say("plan.day-and-hour", day(minutes), hour);
    }

    /** The date, or where nobody said when work begins, which day of the work it is. */
    private String day(double minutes) {
        return schedule.at(minutes).map(time -> figures.date(time.toLocalDate()))
                .orElseGet(() -> words.say("plan.day",
                        ChronoUnit.DAYS.between(SOME_DAY, time(minutes).toLocalDate()) + 1));
    }

    /** A local time; of work that nobody said when it begins, from some day on. */
    private LocalDateTime time(double minutes) {
        return schedule.at(minutes).orElseGet(() -> SOME_DAY.atTime(Clock.USUAL_START)
                .plusSeconds(StrictMath.round(minutes * SECONDS)));
    }

    /** What the times rest on. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (schedule.due().isEmpty()) {
            return notes;
        }
        schedule.together().forEach(two -> notes.add(words.say("plan.together", two.one(), two.other(),
                dated(two.from(), when(two.from())))));
        named("plan.last", schedule.last()).ifPresent(notes::add);
        named("plan.unplaced", schedule.unplaced()).ifPresent(notes::add);
        notes.add(words.say("plan.two-places"));
        notes.add(words.say("plan.note-hands"));
        if (schedule.due().stream().anyMatch(due -> due.stage().kind() == Stage.Kind.SOAK
                && due.stage().until().mornings() > 0)) {
            notes.add(words.say("plan.note-evening"));
        }
        if (schedule.due().stream().anyMatch(this::isAtNight)) {
            notes.add(words.say("plan.at-night"));
        }
        if (schedule.due().stream().anyMatch(due -> due.stage().estimated())) {
            notes.add(words.say("clock.note-estimate"));
        }
        if (schedule.due().stream().anyMatch(due -> due.stage().until().mornings() > 0)) {
            notes.add(words.say("plan.note-morning"));
        }
        return List.copyOf(notes);
    }

    private Optional<String> named(String key, List<String> pots) {
        return pots.isEmpty() ? Optional.empty()
                : Optional.of(words.say(key, String.join(words.say("pieces"), pots)));
    }

    /** Whether somebody would have to stand at the stove when others sleep: from 22:00 to 6:00. */
    private boolean isAtNight(Schedule.Due due) {
        return due.stage().kind().byHand() && due.from().stream().mapToObj(this::time)
                .anyMatch(time -> time.getHour() >= NIGHT || time.getHour() < MORNING);
    }

    static String hour(LocalDateTime time) {
        return Figures.hours(time.getHour() * 60 + time.getMinute());
    }

    /** What several pots ask for at the same time stands in one line, and so does what one pot asks for at one time. */
    private List<PlanPage.Due> told(List<Schedule.Due> due) {
        List<PlanPage.Due> told = new ArrayList<>();
        Optional<String> day = Optional.empty();
        for (Line line : lines(due)) {
            Optional<String> now = time(line.first()).stream().mapToObj(this::day).findFirst();
            String hour = hour(line.first());
            String when = now.isPresent() && !now.equals(day) ? words.say("plan.day-and-hour", now.get(), hour) : hour;
            day = now.isPresent() ? now : day;
            told.add(new PlanPage.Due(when, String.join(words.say("pieces"), line.pots()), line.dues().stream()
                    .map(one -> words.say("sentence", doings.say(one.stage()))).collect(Collectors.joining(" ")),
                    length(line.dues().get(line.dues().size() - 1))));
        }
        return List.copyOf(told);
    }

    private List<Line> lines(List<Schedule.Due> due) {
        Map<Asked, List<Schedule.Due>> alike = new LinkedHashMap<>();
        for (int place = 0; place < due.size(); place++) {
            Schedule.Due one = due.get(place);
            alike.computeIfAbsent(new Asked(time(one), time(one).isPresent() ? -1 : place, one.stage().kind(),
                    doings.say(one.stage()), one.until()), unused -> new ArrayList<>()).add(one);
        }
        List<Line> lines = new ArrayList<>();
        for (List<Schedule.Due> together : alike.values()) {
            Line line = new Line(together.stream().map(Schedule.Due::pot).toList(), List.of(together.get(0)));
            int last = lines.size() - 1;
            if (last >= 0 && lines.get(last).goesOn(line)) {
                lines.set(last, lines.get(last).plus(line));
            } else {
                lines.add(line);
            }
        }
        return lines;
    }

    /** The minute that a clock shows then. */
    private static Optional<Double> minute(Schedule.Due due) {
        return time(due).stream().mapToObj(minutes -> StrictMath.floor(StrictMath.round(minutes * SECONDS) / SECONDS))
                .findFirst();
    }

    /** When there is something to be told: of what keeps, when it should have been used. */
    private static OptionalDouble time(Schedule.Due due) {
        return due.stage().kind() == Stage.Kind.KEEP ? due.until() : due.from();
    }

    private String hour(Schedule.Due due) {
        boolean about = due.stage().kind() == Stage.Kind.KEEP ? due.stage().until().about()
                : due.stage().from().about();
        return time(due).stream().mapToObj(this::when).map(hour -> about ? words.say("about", hour) : hour).findFirst()
                .orElseGet(() -> words.say("clock.then"));
    }

    private String when(double minutes) {
        return hour(time(minutes));
    }

    /** Whether it is known to go on for a while. */
    private static boolean lasts(Schedule.Due due) {
        return due.stage().kind() != Stage.Kind.KEEP && due.from().isPresent() && due.until().isPresent()
                && due.until().getAsDouble() > due.from().getAsDouble();
    }

    private Optional<String> length(Schedule.Due due) {
        if (!lasts(due)) {
            return Optional.empty();
        }
        String lasting = figures.lasting(due.until().orElseThrow() - due.from().orElseThrow());
        return Optional.of(due.stage().until().about() ? words.say("about", lasting) : lasting);
    }
}
