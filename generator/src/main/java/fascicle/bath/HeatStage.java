package fascicle.bath;

/**
 * A straight rise or fall of temperature, and a hold at its end.
 *
 * @param from where it begins, °C
 * @param to where it ends and is held, °C
 * @param over how long the change takes, min; 0 for at once
 * @param hold how long it is held, min
 */
public record HeatStage(double from, double to, double over, double hold) {

    /** Refuses a time below nothing. */
    public HeatStage {
        if (!(over >= 0) || !(hold >= 0)) {
            throw new IllegalArgumentException("a time is 0 min or more: " + over + ", " + hold);
        }
    }

    /**
     * How long it is hotter than a temperature.
     *
     * @param threshold in °C; a hold at that very temperature does not count
     * @return in min
     */
    public double minutesAbove(double threshold) {
        return over * shareAbove(threshold) + (to > threshold ? hold : 0);
    }

    /**
     * How long it takes in all.
     *
     * @return in min
     */
    public double minutes() {
        return over + hold;
    }

    private double shareAbove(double threshold) {
        double low = StrictMath.min(from, to);
        double high = StrictMath.max(from, to);
        if (low >= threshold) {
            return high > threshold ? 1 : 0;
        }
        return high <= threshold ? 0 : (high - threshold) / (high - low);
    }
}
