package fascicle.workings.clock;

import fascicle.bath.Magnitude;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.workings.HeatCourse;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bath while it is heated, by the stages of its {@link HeatCourse}. Only two things are its own, both estimates
 * ({@link HeatingUp}): how hot water is that is given by its look, and how long a rise takes that nobody gave a time.
 */
final class HeatedBath {

    /**
     * Water from a tap should be no hotter, 120 °F: US Consumer Product Safety Commission, publication 5098; from
     * memory.
     */
    private static final double HOT_TO_THE_HAND = 49;

    private final Log log;
    private final Stage.Vat vat;
    private final Optional<Recipe.Purpose> purpose;
    private final OptionalDouble liquor;
    private final double boil;
    private Magnitude celsius = Magnitude.UNKNOWN;

    /** A bath of so much liquor, mL, where water boils at so many °C. */
    HeatedBath(Log log, Stage.Vat vat, Optional<Recipe.Purpose> purpose, OptionalDouble liquor, double boil) {
        this.log = log;
        this.vat = vat;
        this.purpose = purpose;
        this.liquor = liquor;
        this.boil = boil;
    }

    /** What heats a step of heating. */
    static HeatStep.Source source(HeatStep step) {
        return step.on().map(Noted::value).orElse(HeatStep.Source.STOVE);
    }

    /** Heats it, and adds what goes in meanwhile. */
    void heat(List<HeatStep> steps, List<Part> parts) {
        boolean stove = steps.stream().anyMatch(step -> source(step) == HeatStep.Source.STOVE);
        Time begun = log.now();
        log.moment(stove ? Stage.Kind.ON : Stage.Kind.IN, vat, purpose);
        int first = log.stages().size();
        HeatCourse.of(steps).stages().forEach(this::heat);
        if (isLit(steps)) {
            log.moment(Stage.Kind.OFF, vat, purpose);
        }
        if (stove) {
            log.stoodOnStove(begun);
        }
        parts.forEach(part -> part.at().ifPresent(at ->
                log.adds(part, vat, purpose, log.after(begun, Optional.of(at.value())), first)));
    }

    /** Whether it is too hot to reach into after these steps; what fire leaves at an unknown heat may be. */
    boolean isHotAfter(List<HeatStep> steps) {
        return celsius.known() ? celsius.orThrow() > HOT_TO_THE_HAND : isLit(steps);
    }

    private static boolean isLit(List<HeatStep> steps) {
        return steps.stream().anyMatch(step -> source(step) != HeatStep.Source.SUN);
    }

    private void heat(HeatCourse.Stage stage) {
        HeatStep step = stage.step();
        celsius = stage.from().known() ? stage.from() : celsius;
        Magnitude end = stage.look().map(look -> Magnitude.of(HeatingUp.celsius(look, boil), true))
                .orElse(stage.to().known() ? stage.to() : celsius);
        if (step.over().isPresent()) {
            goesOn(Stage.Kind.RISE, step, log.after(log.now(), step.over().map(Noted::value)), false);
        } else if (step.to().isPresent()) {
            goesOn(Stage.Kind.RISE, step, log.now().plus(estimate(step, end)), true);
        }
        celsius = end;
        if (step.hold().isPresent()) {
            goesOn(Stage.Kind.HOLD, step, log.after(log.now(), step.hold().map(Noted::value)), false);
        }
    }

    /** How long a rise takes that nobody gave a time; what the sun or an oven does is not estimated. */
    private Magnitude estimate(HeatStep step, Magnitude end) {
        boolean estimable = celsius.known()
                && (source(step) == HeatStep.Source.STOVE || end.orThrow() <= celsius.orThrow());
        return estimable ? HeatingUp.minutes(liquor, celsius.orThrow(), end.orThrow()) : Magnitude.UNKNOWN;
    }

    private void goesOn(Stage.Kind kind, HeatStep step, Time until, boolean estimated) {
        log.heats(kind, vat, purpose, step, until, estimated);
    }
}
