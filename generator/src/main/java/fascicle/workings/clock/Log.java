package fascicle.workings.clock;

import fascicle.bath.Magnitude;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is done when, written down stage by stage; it knows what time it is. */
final class Log {

    private final Day day;
    private final List<Stage> stages = new ArrayList<>();
    private final List<Clock.Stretch> onStove = new ArrayList<>();
    private Time now = Time.START;

    Log(Day day) {
        this.day = day;
    }

    Time now() {
        return now;
    }

    List<Stage> stages() {
        return List.copyOf(stages);
    }

    List<Clock.Stretch> onStove() {
        return List.copyOf(onStove);
    }

    /** Something done in a moment. */
    void moment(Stage.Kind kind, Stage.Vat vat, Optional<Recipe.Purpose> purpose) {
        goesOn(kind, vat, purpose, now);
    }

    /** A bath is made ready now: before needles come out of the presoak for it, which wait there so long. */
    void makesReady(Stage.Kind kind, Stage.Vat vat, Optional<Recipe.Purpose> purpose) {
        int last = stages.size() - 1;
        boolean soaking = last >= 0 && stages.get(last).vat() == Stage.Vat.BIN && stages.get(last).from().equals(now);
        stages.add(soaking ? last : last + 1,
                new Stage(kind, vat, purpose, now, now, Optional.empty(), Optional.empty(), false));
    }

    /** Something that goes on until a time, which is then now. */
    void goesOn(Stage.Kind kind, Stage.Vat vat, Optional<Recipe.Purpose> purpose, Time until) {
        stages.add(new Stage(kind, vat, purpose, now, until, Optional.empty(), Optional.empty(), false));
        now = until;
    }

    /** A step of heating that goes on until a time, which is then now. */
    void heats(Stage.Kind kind, Stage.Vat vat, Optional<Recipe.Purpose> purpose, HeatStep step, Time until,
            boolean estimated) {
        stages.add(new Stage(kind, vat, purpose, now, until, Optional.of(step), Optional.empty(), estimated));
        now = until;
    }

    /** Something that is added at a time, among the stages from a place on. */
    void adds(Part part, Stage.Vat vat, Optional<Recipe.Purpose> purpose, Time when, int first) {
        insert(new Stage(Stage.Kind.ADD, vat, purpose, when, when, Optional.empty(), Optional.of(part), false), first);
    }

    /** Something that began at another time than now, and goes on beside all else. */
    void beside(Stage.Kind kind, Time from, Time until) {
        stages.add(new Stage(kind, Stage.Vat.NONE, Optional.empty(), from, until, Optional.empty(), Optional.empty(),
                false));
    }

    /** A pot stood on the stove from a time until now. */
    void stoodOnStove(Time from) {
        onStove.add(new Clock.Stretch(from, now));
    }

    /** Puts in what went on meanwhile; what comes next waits for the later of both. */
    void meanwhile(Log other) {
        other.stages.forEach(stage -> insert(stage, 0));
        onStove.addAll(other.onStove);
        now = day.later(now, other.now);
    }

    /** The time after another, as the notebook gives it; unknown where it gives none. */
    Time after(Time time, Optional<Span> span) {
        return span.map(given -> given instanceof Span.Timed timed
                ? time.plus(Magnitude.of(timed.time().value(), timed.time().about()))
                : day.overnight(time)).orElse(time.unknown());
    }

    /** Puts a stage among those from a place on, before the first that begins later, or at no known time. */
    private void insert(Stage stage, int first) {
        int place = first;
        while (place < stages.size() && isNoLater(stages.get(place).from(), stage.from())) {
            place++;
        }
        stages.add(place, stage);
    }

    private boolean isNoLater(Time one, Time other) {
        OptionalDouble first = day.sinceMidnight(one);
        OptionalDouble second = day.sinceMidnight(other);
        return first.isPresent() && (second.isEmpty() || first.getAsDouble() <= second.getAsDouble());
    }
}
