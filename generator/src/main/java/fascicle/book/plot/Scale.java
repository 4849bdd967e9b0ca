package fascicle.book.plot;

/**
 * From a value to its place in a drawing, along an axis.
 *
 * @param low the value at the axis' beginning
 * @param high the value at its end; above {@code low}
 * @param start the place of the beginning
 * @param end the place of the end; below {@code start} where an axis points up
 * @param logarithmic whether equal factors, and not equal differences, lie equally far apart
 */
public record Scale(double low, double high, double start, double end, boolean logarithmic) {

    /**
     * A scale.
     *
     * @throws IllegalArgumentException if its values do not rise, or if logarithms are asked of a value not above 0
     */
    public Scale {
        if (!(high > low) || logarithmic && !(low > 0)) {
            throw new IllegalArgumentException("no scale: from " + low + " to " + high);
        }
    }

    /**
     * Equal differences lie equally far apart.
     *
     * @param ticks the axis
     * @param start the place of its first tick
     * @param end the place of its last
     * @return the scale
     */
    public static Scale even(Ticks ticks, double start, double end) {
        return new Scale(ticks.low(), ticks.high(), start, end, false);
    }

    /**
     * Equal factors lie equally far apart.
     *
     * @param ticks the axis; above 0
     * @param start the place of its first tick
     * @param end the place of its last
     * @return the scale
     */
    public static Scale logarithmic(Ticks ticks, double start, double end) {
        return new Scale(ticks.low(), ticks.high(), start, end, true);
    }

    /**
     * Where a value stands.
     *
     * @param value any value; above 0 on a logarithmic scale
     * @return its place, beyond the axis' ends where the value is
     */
    public double at(double value) {
        double share = logarithmic
                ? StrictMath.log(value / low) / StrictMath.log(high / low)
                : (value - low) / (high - low);
        return start + share * (end - start);
    }
}
