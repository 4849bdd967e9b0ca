package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.gist.Doings;
import fascicle.book.page.PlanPage;
import fascicle.book.words.Words;
import fascicle.workings.clock.Schedule;
import fascicle.workings.plan.DayPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A planned day by the hour. */
final class PlannedHours {

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

    /** The names of all pots, as they were planned. */
    List<String> pots() {
        return plan.pots();
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
        notes.add(words.say("clock.note-estimate"));
        return List.copyOf(notes);
    }

    static String hour(LocalDateTime time) {
        return Figures.hours(time.getHour() * 60 + time.getMinute());
    }

    private List<PlanPage.Due> told(List<Schedule.Due> due) {
        List<PlanPage.Due> told = new ArrayList<>();
        Optional<LocalDate> day = Optional.empty();
        for (Schedule.Due one : due) {
            Optional<LocalDateTime> at = one.from().stream().mapToObj(plan.schedule()::at).flatMap(Optional::stream)
                    .findFirst();
            String when = one.from().isEmpty() ? words.say("clock.then") : when(one.from().getAsDouble());
            String roughly = one.from().isPresent() && one.stage().from().about() ? words.say("about", when) : when;
            boolean newDay = at.isPresent() && !at.map(LocalDateTime::toLocalDate).equals(day);
            day = at.isPresent() ? at.map(LocalDateTime::toLocalDate) : day;
            told.add(new PlanPage.Due(newDay ? words.say("plan.day-and-hour", figures.date(day.orElseThrow()), roughly)
                    : roughly, one.pot(), doings.say(one.stage()), length(one)));
        }
        return List.copyOf(told);
    }

    private String when(double minutes) {
        return plan.schedule().at(minutes).map(PlannedHours::hour).orElseGet(() -> Figures.hours(minutes));
    }

    private Optional<String> length(Schedule.Due due) {
        if (due.from().isEmpty() || due.until().isEmpty() || due.until().getAsDouble() <= due.from().getAsDouble()) {
            return Optional.empty();
        }
        String lasting = Figures.hours(due.until().getAsDouble() - due.from().getAsDouble());
        return Optional.of(due.stage().until().about() ? words.say("about", lasting) : lasting);
    }
}
