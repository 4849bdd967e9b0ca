package fascicle.workings;

import fascicle.bath.HeatStage;
import fascicle.bath.Magnitude;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import java.util.List;
import java.util.Optional;

/**
 * Works out heating: straight lines between the steps' temperatures, from 20 °C where no start is given; a step
 * without {@code over:} rises at once, and cooling is not counted.
 *
 * <p>How water looks has no temperature, and a night no length: what depends on them is unknown. So are the minutes
 * where no step, or a step given by its look, says how long it takes.
 */
final class Heat {

    private static final Magnitude ROOM = Magnitude.of(20);
    private static final double HOT = 80;

    private Heat() {}

    /** The figures of heating, step by step. */
    static HeatFigures of(List<HeatStep> steps) {
        boolean timed = steps.stream().anyMatch(Heat::isTimed);
        Magnitude above = timed ? Magnitude.ZERO : Magnitude.UNKNOWN;
        Magnitude total = above;
        Magnitude peak = steps.isEmpty() ? Magnitude.UNKNOWN : Magnitude.ZERO;
        Magnitude now = ROOM;
        for (int i = 0; i < steps.size(); i++) {
            HeatStep step = steps.get(i);
            boolean startsNowhere = i == 0 && step.to().isEmpty();
            Magnitude start = startsNowhere ? Magnitude.UNKNOWN : now;
            Magnitude from = step.from().map(noted -> Substance.size(noted.value())).orElse(start);
            Magnitude to = end(step, from);
            Magnitude over = minutes(step.over());
            Magnitude hold = minutes(step.hold());
            boolean lookOfUnknownLength = !isTimed(step) && isLook(step);
            total = lookOfUnknownLength ? Magnitude.UNKNOWN : total.plus(over).plus(hold);
            above = from.known() && to.known() && over.known() && hold.known()
                    ? above.plus(Magnitude.of(stage(from, to, over, hold).minutesAbove(HOT)))
                    : Magnitude.UNKNOWN;
            peak = i == 0 ? higher(from, to) : higher(peak, higher(from, to));
            now = to;
        }
        return new HeatFigures(above.value(), total.value(), peak.value());
    }

    private static HeatStage stage(Magnitude from, Magnitude to, Magnitude over, Magnitude hold) {
        return new HeatStage(from.orThrow(), to.orThrow(), over.orThrow(), hold.orThrow());
    }

    private static Magnitude higher(Magnitude one, Magnitude other) {
        return one.known() && other.known()
                ? Magnitude.of(StrictMath.max(one.orThrow(), other.orThrow()))
                : Magnitude.UNKNOWN;
    }

    /** Where a step ends; one that names no end holds what there is. */
    private static Magnitude end(HeatStep step, Magnitude from) {
        if (step.to().isEmpty()) {
            return from;
        }
        return step.to().get().value() instanceof HeatStep.Degrees degrees
                ? Magnitude.of(degrees.temperature().value())
                : Magnitude.UNKNOWN;
    }

    private static Magnitude minutes(Optional<Noted<Span>> span) {
        if (span.isEmpty()) {
            return Magnitude.ZERO;
        }
        return span.get().value() instanceof Span.Timed timed ? Magnitude.of(timed.time().value()) : Magnitude.UNKNOWN;
    }

    private static boolean isTimed(HeatStep step) {
        return step.over().isPresent() || step.hold().isPresent();
    }

    private static boolean isLook(HeatStep step) {
        return step.to().filter(to -> to.value() instanceof HeatStep.Look).isPresent();
    }
}
