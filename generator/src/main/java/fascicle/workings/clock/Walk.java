package fascicle.workings.clock;

import fascicle.bath.Magnitude;
import fascicle.notebook.Bath;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import fascicle.workings.HeatCourse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Walks through the work once, from the soak to the drying rack, and notes when what is done. */
final class Walk {

    /** Whoever says to dry for less, before rinsing, means a little: {@code common practice, no source}. */
    private static final double A_LITTLE_DRYING = 12 * 60;

    /** Water from a tap should be no hotter, 120 °F: US Consumer Product Safety Commission, publication 5098; from memory. */
    private static final double HOT_TO_THE_HAND = 49;

    private final Work work;
    private final Day day;
    private List<Stage> stages = new ArrayList<>();
    private final List<Clock.Stretch> onStove = new ArrayList<>();
    private Time now = Time.START;

    Walk(Work work, Day day) {
        this.work = work;
        this.day = day;
    }

    List<Stage> stages() {
        return List.copyOf(stages);
    }

    List<Clock.Stretch> onStove() {
        return List.copyOf(onStove);
    }

    void through() {
        Recipe recipe = work.recipe();
        Time drawnOut = recipe.bath().extract().map(this::extract).orElse(Time.START);
        List<Stage> meanwhile = stages;
        stages = new ArrayList<>();
        now = Time.START;
        recipe.presoak().ifPresent(this::soak);
        treatments(recipe.before(), work.before(), Stage.Vat.BEFORE);
        meanwhile.forEach(stage -> insert(stage, 0));
        now = day.later(now, drawnOut);
        dye(recipe);
        treatments(recipe.after(), work.after(), Stage.Vat.AFTER);
        dry(recipe);
    }

    /** A plant is drawn out while the needles soak. */
    private Time extract(Bath.Extract extract) {
        new HeatedBath(Stage.Vat.EXTRACT, Optional.empty(), extract.water().map(water ->
                OptionalDouble.of(water.value().value())).orElse(OptionalDouble.empty())).heat(extract.heat(), List.of());
        moment(Stage.Kind.OUT, Stage.Vat.EXTRACT, Optional.empty());
        return now;
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

    private void soak(Recipe.Presoak presoak) {
        goesOn(Stage.Kind.SOAK, Stage.Vat.BIN, Optional.empty(), after(now, presoak.time()));
        moment(Stage.Kind.OUT, Stage.Vat.BIN, Optional.empty());
    }

    /**
     * A treatment ends with its heat: how long it cools is nobody's to guess, and would make every later time
     * unknown, in a plan for all pots. Where its last step leaves it hot, the needles are lifted out, and the book says how.
     */
    private void treatments(List<Recipe.Treatment> treatments, List<OptionalDouble> liquors, Stage.Vat vat) {
        for (int i = 0; i < treatments.size(); i++) {
            Recipe.Treatment treatment = treatments.get(i);
            Optional<Recipe.Purpose> purpose = treatment.as().map(Noted::value);
            OptionalDouble liquor = i < liquors.size() ? liquors.get(i) : OptionalDouble.empty();
            HeatedBath bath = new HeatedBath(vat, purpose, liquor);
            bath.heat(treatment.heat(), treatment.with());
            if (treatment.heat().isEmpty()) {
                goesOn(Stage.Kind.STAND, vat, purpose, now.unknown());
            }
            moment(bath.celsius > HOT_TO_THE_HAND ? Stage.Kind.LIFT : Stage.Kind.OUT, vat, purpose);
        }
    }

    private void dye(Recipe recipe) {
        List<Part> parts = Stream.concat(recipe.bath().dye().stream(), recipe.bath().assistants().stream()).toList();
        List<HeatStep> heat = recipe.heat();
        new HeatedBath(Stage.Vat.DYEBATH, Optional.empty(), work.liquor()).heat(heat, parts);
        boolean sunned = !heat.isEmpty() && source(heat.get(heat.size() - 1)) == HeatStep.Source.SUN;
        if (recipe.cool().isPresent() || !sunned) {
            goesOn(heat.isEmpty() ? Stage.Kind.STAND : Stage.Kind.COOL, Stage.Vat.DYEBATH, Optional.empty(),
                    after(now, recipe.cool()));
        }
        moment(Stage.Kind.OUT, Stage.Vat.DYEBATH, Optional.empty());
    }

    /** Needles are damp from the bath on, and once more where they were rinsed after they had dried. */
    private void dry(Recipe recipe) {
        Optional<Recipe.Rinse> rinse = recipe.rinse().map(Noted::value);
        Time damp = now;
        if (rinse.filter(Recipe.Rinse.BEFORE_DRYING::equals).isPresent()) {
            moment(Stage.Kind.RINSE, Stage.Vat.NONE, Optional.empty());
        }
        Time dried = after(now, recipe.dry());
        if (rinse.filter(Recipe.Rinse.AFTER_DRYING::equals).isPresent()) {
            boolean wholly = recipe.dry().filter(span -> !(span.value() instanceof Span.Timed timed)
                    || timed.time().value() >= A_LITTLE_DRYING).isPresent();
            goesOn(wholly ? Stage.Kind.DRY : Stage.Kind.HALF_DRY, Stage.Vat.NONE, Optional.empty(),
                    wholly ? dried.roughly() : dried);
            moment(Stage.Kind.RINSE, Stage.Vat.NONE, Optional.empty());
            damp = wholly ? now : damp;
            dried = now.unknown();
        }
        goesOn(Stage.Kind.DRY, Stage.Vat.NONE, Optional.empty(), dried);
        if (!recipe.finish().isEmpty()) {
            moment(Stage.Kind.FINISH, Stage.Vat.NONE, Optional.empty());
        }
        if (work.dampKeeps().isPresent()) {
            stages.add(new Stage(Stage.Kind.KEEP, Stage.Vat.NONE, Optional.empty(), damp,
                    damp.plus(Magnitude.of(work.dampKeeps().getAsDouble())), Optional.empty(), Optional.empty(), false));
        }
    }

    private void moment(Stage.Kind kind, Stage.Vat vat, Optional<Recipe.Purpose> purpose) {
        goesOn(kind, vat, purpose, now);
    }

    private void goesOn(Stage.Kind kind, Stage.Vat vat, Optional<Recipe.Purpose> purpose, Time until) {
        stages.add(new Stage(kind, vat, purpose, now, until, Optional.empty(), Optional.empty(), false));
        now = until;
    }

    private Time after(Time time, Optional<Noted<Span>> span) {
        return span.map(noted -> after(time, noted.value())).orElse(time.unknown());
    }

    private Time after(Time time, Span span) {
        return span instanceof Span.Timed timed
                ? time.plus(Magnitude.of(timed.time().value(), timed.time().about()))
                : day.overnight(time);
    }

    private static HeatStep.Source source(HeatStep step) {
        return step.on().map(Noted::value).orElse(HeatStep.Source.STOVE);
    }

    /** A bath while it is heated. */
    private final class HeatedBath {

        private final Stage.Vat vat;
        private final Optional<Recipe.Purpose> purpose;
        private final OptionalDouble liquor;
        private double celsius = HeatCourse.ROOM;

        HeatedBath(Stage.Vat vat, Optional<Recipe.Purpose> purpose, OptionalDouble liquor) {
            this.vat = vat;
            this.purpose = purpose;
            this.liquor = liquor;
        }

        void heat(List<HeatStep> steps, List<Part> parts) {
            boolean stove = steps.stream().anyMatch(step -> source(step) == HeatStep.Source.STOVE);
            Time begun = now;
            moment(stove ? Stage.Kind.ON : Stage.Kind.IN, vat, purpose);
            int first = stages.size();
            steps.forEach(this::step);
            if (steps.stream().anyMatch(step -> source(step) != HeatStep.Source.SUN)) {
                moment(Stage.Kind.OFF, vat, purpose);
            }
            if (stove) {
                onStove.add(new Clock.Stretch(begun, now));
            }
            for (Part part : parts) {
                part.at().ifPresent(at -> {
                    Time when = after(begun, at.value());
                    insert(new Stage(Stage.Kind.ADD, vat, purpose, when, when, Optional.empty(), Optional.of(part),
                            false), first);
                });
            }
        }

        private void step(HeatStep step) {
            step.from().ifPresent(from -> celsius = from.value().value());
            step.to().ifPresent(to -> {
                double target = to.value() instanceof HeatStep.Degrees degrees ? degrees.temperature().value()
                        : HeatingUp.celsius((HeatStep.Look) to.value(), work.boil());
                boolean estimated = step.over().isEmpty();
                Time reached = estimated ? now.plus(risen(step, target)) : after(now, step.over());
                note(Stage.Kind.RISE, step, reached, estimated);
                celsius = target;
            });
            step.hold().ifPresent(hold -> note(Stage.Kind.HOLD, step, after(now, hold.value()), false));
        }

        /** How long heating takes that nobody gave a time; what the sun or an oven does is not estimated. */
        private Magnitude risen(HeatStep step, double target) {
            return source(step) == HeatStep.Source.STOVE || target <= celsius
                    ? HeatingUp.minutes(liquor, celsius, target) : Magnitude.UNKNOWN;
        }

        private void note(Stage.Kind kind, HeatStep step, Time until, boolean estimated) {
            stages.add(new Stage(kind, vat, purpose, now, until, Optional.of(step), Optional.empty(), estimated));
            now = until;
        }
    }
}
