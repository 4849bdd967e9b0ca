package fascicle.workings;

import fascicle.bath.HeatStage;
import fascicle.bath.Magnitude;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Heating as straight lines between the steps' temperatures, from 20 °C where no start is given: what figures, curves
 * and clocks are all taken from. A step without {@code over:} rises at once (a clock alone estimates how long that
 * takes), one without {@code to:} stays as hot as it is, and cooling is not counted.
 *
 * @param stages the steps in order, with what is known of each
 */
public record HeatCourse(List<Stage> stages) {

    /** What a bath is called hot above, °C. */
    public static final double HOT = 80;

    /** What a bath has before it is heated, °C. */
    public static final double ROOM = 20;

    /**
     * One step. How water looks has no temperature, and a night no length: these are unknown.
     *
     * @param step as written
     * @param from where it begins, °C
     * @param to where it ends, °C
     * @param over how long the change takes, min; 0 where unsaid
     * @param hold how long it is held, min; 0 where unsaid
     */
    public record Stage(HeatStep step, Magnitude from, Magnitude to, Magnitude over, Magnitude hold) {

        /**
         * The step as a line and a hold.
         *
         * @return nothing where any of its figures is unknown
         */
        public Optional<HeatStage> line() {
            return isRise() && hold.known()
                    ? Optional.of(new HeatStage(from.orThrow(), to.orThrow(), over.orThrow(), hold.orThrow()))
                    : Optional.empty();
        }

        /**
         * The step's rise without its hold.
         *
         * @return nothing where it is unknown
         */
        public Optional<HeatStage> rise() {
            return isRise() ? Optional.of(new HeatStage(from.orThrow(), to.orThrow(), over.orThrow(), 0))
                    : Optional.empty();
        }

        /**
         * Whether any figure of it is rough.
         *
         * @return false where none is known
         */
        public boolean about() {
            return from.about() || to.about() || over.about() || hold.about();
        }

        private boolean isRise() {
            return from.known() && to.known() && over.known();
        }

        /** Whether the step says how long anything takes. */
        boolean isTimed() {
            return step.over().isPresent() || step.hold().isPresent();
        }

        /**
         * How the water looks where it ends.
         *
         * @return nothing where that is given otherwise, or not at all
         */
        public Optional<HeatStep.Look> look() {
            return step.to().map(Noted::value).filter(HeatStep.Look.class::isInstance).map(HeatStep.Look.class::cast);
        }
    }

    /**
     * Follows heating step by step.
     *
     * @param steps in order
     * @return the course
     */
    public static HeatCourse of(List<HeatStep> steps) {
        List<Stage> stages = new ArrayList<>();
        Magnitude now = Magnitude.of(ROOM);
        for (HeatStep step : steps) {
            boolean startsNowhere = stages.isEmpty() && step.to().isEmpty();
            Magnitude start = startsNowhere ? Magnitude.UNKNOWN : now;
            Magnitude from = step.from().map(noted -> Substance.size(noted.value())).orElse(start);
            now = end(step, from);
            stages.add(new Stage(step, from, now, minutes(step.over()), minutes(step.hold())));
        }
        return new HeatCourse(List.copyOf(stages));
    }

    /**
     * What is known of the course from its beginning on, up to the first step that is not wholly known; of that one its
     * rise, if that is.
     *
     * @return lines one after the other
     */
    public List<HeatStage> known() {
        List<HeatStage> known = new ArrayList<>();
        for (Stage stage : stages) {
            stage.line().or(stage::rise).ifPresent(known::add);
            if (stage.line().isEmpty()) {
                break;
            }
        }
        return List.copyOf(known);
    }

    /**
     * Whether what is known of it rests on something rough.
     *
     * @return whether any figure of its {@link #known} steps is
     */
    public boolean about() {
        return stages.stream().limit(known().size()).anyMatch(Stage::about);
    }

    /**
     * The steps that are not, or not wholly, part of what is known.
     *
     * @return the first such step and all after it
     */
    public List<HeatStep> beyond() {
        return stages.stream().dropWhile(stage -> stage.line().isPresent()).map(Stage::step).toList();
    }

    private static Magnitude end(HeatStep step, Magnitude from) {
        if (step.to().isEmpty()) {
            return from;
        }
        return step.to().get().value() instanceof HeatStep.Degrees degrees
                ? Substance.size(degrees.temperature())
                : Magnitude.UNKNOWN;
    }

    private static Magnitude minutes(Optional<Noted<Span>> span) {
        if (span.isEmpty()) {
            return Magnitude.ZERO;
        }
        return span.get().value() instanceof Span.Timed timed ? Substance.size(timed.time()) : Magnitude.UNKNOWN;
    }
}
