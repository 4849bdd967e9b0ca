package fascicle.workings;

import fascicle.bath.HeatStage;
import fascicle.bath.Magnitude;
import fascicle.notebook.HeatStep;
import java.util.List;

/**
 * Works out heating: how long it takes, how long it is hot, and how hot.
 *
 * <p>What depends on how water looks, or on a night, is unknown. So are the minutes where no step, or a step given by
 * its look, says how long it takes.
 */
final class Heat {

    private Heat() {}

    /** The figures of heating, step by step. */
    static HeatFigures of(List<HeatStep> steps) {
        List<HeatCourse.Stage> stages = HeatCourse.of(steps).stages();
        boolean timed = stages.stream().anyMatch(HeatCourse.Stage::isTimed);
        Magnitude above = timed ? Magnitude.ZERO : Magnitude.UNKNOWN;
        Magnitude total = above;
        Magnitude peak = stages.isEmpty() ? Magnitude.UNKNOWN : higher(stages.get(0).from(), stages.get(0).to());
        for (HeatCourse.Stage stage : stages) {
            boolean lookOfUnknownLength = !stage.isTimed() && stage.look().isPresent();
            total = lookOfUnknownLength ? Magnitude.UNKNOWN : total.plus(stage.over()).plus(stage.hold());
            above = above.plus(stage.line().map(line -> minutesHot(line).about(stage.about()))
                    .orElse(Magnitude.UNKNOWN));
            peak = higher(peak, higher(stage.from(), stage.to()));
        }
        return new HeatFigures(above.value(), total.value(), peak.value(), above.about() || total.about(),
                peak.about());
    }

    private static Magnitude minutesHot(HeatStage line) {
        return Magnitude.of(line.minutesAbove(HeatCourse.HOT));
    }

    private static Magnitude higher(Magnitude one, Magnitude other) {
        return one.known() && other.known()
                ? one.orThrow() >= other.orThrow() ? one : other
                : Magnitude.UNKNOWN;
    }
}
