package fascicle.workings;

import java.util.OptionalDouble;

/**
 * Heating in figures, by the straight lines between the steps' temperatures, from 20 °C where no start is given.
 *
 * @param minutesAbove80 minutes at more than 80 °C; unknown where a step has no temperature or no length
 * @param minutesTotal minutes of heating and holding, cooling not counted
 * @param peak the highest temperature, °C; unknown where a step is given by the look of the water
 * @param aboutMinutes whether the minutes rest on something rough
 * @param aboutPeak whether the highest temperature does
 */
public record HeatFigures(OptionalDouble minutesAbove80, OptionalDouble minutesTotal, OptionalDouble peak,
        boolean aboutMinutes, boolean aboutPeak) {}
