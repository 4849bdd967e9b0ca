package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.gist.Doings;
import fascicle.book.page.PlanPage;
import fascicle.book.words.Words;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Stage;
import fascicle.workings.plan.DayPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A planned day by the hour. */
final class PlannedHours {

    private static final int NIGHT = 22;
    private static final int MORNING = 6;

    private final DayPlan plan;
    private final Words words;
    private final Figures figures;
    private final Doings doings;

    PlannedHours(DayPlan plan, Words words, Doings doings) {
        this.plan = plan;
        this.words = words;
        this.figures = new Figures(words);
        this.doings = doings;
    }

    /** Everything, in the order of time. */
    List<PlanPage.Due> all() {
        return told(plan.schedule().due());
    }

    /** What is due in one pot. */
    List<PlanPage.Due> of(String pot) {
        return told(plan.schedule().due().stream().filter(due -> due.pot().equals(pot)).toList());
    }

    /** When the stove is free again, and when the last needles come out of a bath. */
    List<String> ends() {
        return Stream.of(last(Stage.Kind.OFF).map(when -> words.say("plan.stove-free", when)),
                last(Stage.Kind.OUT).map(when -> words.say("plan.all-out", when))).flatMap(Optional::stream).toList();
    }

    private Optional<String> last(Stage.Kind kind) {
        boolean known = plan.schedule().due().stream().filter(due -> due.stage().kind() == kind)
                .allMatch(due -> due.from().isPresent());
        return !known ? Optional.empty() : plan.schedule().due().stream().filter(due -> due.stage().kind() == kind)
                .max(Comparator.comparingDouble(due -> due.from().orElseThrow())).map(due -> {
                    double minutes = due.from().orElseThrow();
                    String hour = due.stage().from().about() ? words.say("about", when(minutes)) : when(minutes);
                    return plan.schedule().at(minutes).map(time -> words.say("plan.day-and-hour",
                            figures.date(time.toLocalDate()), hour)).orElse(hour);
                });
    }

    /** What the times rest on. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (plan.schedule().due().isEmpty()) {
            return notes;
        }
        plan.schedule().together().forEach(two -> notes.add(words.say("plan.together", two.one(), two.other(),
                when(two.from()))));
        plan.schedule().last().forEach(pot -> notes.add(words.say("plan.last", pot)));
        plan.schedule().unplaced().forEach(pot -> notes.add(words.say("plan.unplaced", pot)));
        notes.add(words.say("plan.two-places"));
        if (plan.schedule().due().stream().anyMatch(this::isAtNight)) {
            notes.add(words.say("plan.at-night"));
        }
        if (plan.schedule().due().stream().anyMatch(due -> due.stage().estimated())) {
            notes.add(words.say("clock.note-estimate"));
        }
        if (plan.schedule().due().stream().anyMatch(due -> due.stage().until().mornings() > 0)) {
            notes.add(words.say("plan.note-morning"));
        }
        return List.copyOf(notes);
    }

    /** Whether somebody would have to stand at the stove when others sleep: from 22:00 to 6:00. */
    private boolean isAtNight(Schedule.Due due) {
        return due.stage().kind().byHand() && due.from().stream().mapToObj(plan.schedule()::at).flatMap(Optional::stream)
                .anyMatch(time -> time.getHour() >= NIGHT || time.getHour() < MORNING);
    }

    static String hour(LocalDateTime time) {
        return Figures.hours(time.getHour() * 60 + time.getMinute());
    }

    /** What several pots ask for at the same time stands in one line, and so does what one pot asks for at one time. */
    private List<PlanPage.Due> told(List<Schedule.Due> due) {
        Map<List<Object>, List<Schedule.Due>> alike = new LinkedHashMap<>();
        for (Schedule.Due one : due) {
            Object when = time(one).isPresent() ? time(one) : one.pot();
            alike.computeIfAbsent(List.of(when, one.stage().kind(), doings.say(one.stage()), one.until()),
                    unused -> new ArrayList<>()).add(one);
        }
        List<PlanPage.Due> told = new ArrayList<>();
        Optional<LocalDate> day = Optional.empty();
        for (List<Schedule.Due> together : alike.values()) {
            Schedule.Due one = together.get(0);
            Optional<LocalDate> date = time(one).stream().mapToObj(plan.schedule()::at).flatMap(Optional::stream)
                    .map(LocalDateTime::toLocalDate).findFirst();
            boolean newDay = date.isPresent() && !date.equals(day);
            day = date.isPresent() ? date : day;
            String pots = together.stream().map(Schedule.Due::pot).collect(Collectors.joining(words.say("pieces")));
            String when = newDay ? words.say("plan.day-and-hour", figures.date(day.orElseThrow()), hour(one)) : hour(one);
            add(told, new PlanPage.Due(when, pots, words.say("sentence", doings.say(one.stage())), length(one)));
        }
        return List.copyOf(told);
    }

    private void add(List<PlanPage.Due> told, PlanPage.Due due) {
        int last = told.size() - 1;
        boolean sameTime = last >= 0 && told.get(last).pot().equals(due.pot()) && told.get(last).length().isEmpty()
                && (told.get(last).when().equals(due.when()) || told.get(last).when().endsWith(", " + due.when()));
        if (sameTime) {
            PlanPage.Due before = told.remove(last);
            told.add(new PlanPage.Due(before.when(), due.pot(), before.doing() + " " + due.doing(), due.length()));
        } else {
            told.add(due);
        }
    }

    /** When there is something to be told: of what keeps, when it should have been used. */
    private static OptionalDouble time(Schedule.Due due) {
        return due.stage().kind() == Stage.Kind.KEEP ? due.until() : due.from();
    }

    private String hour(Schedule.Due due) {
        boolean about = due.stage().kind() == Stage.Kind.KEEP ? due.stage().until().about() : due.stage().from().about();
        return time(due).stream().mapToObj(this::when).map(hour -> about ? words.say("about", hour) : hour).findFirst()
                .orElseGet(() -> words.say("clock.then"));
    }

    private String when(double minutes) {
        return plan.schedule().at(minutes).map(PlannedHours::hour).orElseGet(() -> Figures.hours(minutes));
    }

    private Optional<String> length(Schedule.Due due) {
        if (due.stage().kind() == Stage.Kind.KEEP || due.from().isEmpty() || due.until().isEmpty() || due.until().getAsDouble() <= due.from().getAsDouble()) {
            return Optional.empty();
        }
        String lasting = figures.lasting(due.until().getAsDouble() - due.from().getAsDouble());
        return Optional.of(due.stage().until().about() ? words.say("about", lasting) : lasting);
    }
}
