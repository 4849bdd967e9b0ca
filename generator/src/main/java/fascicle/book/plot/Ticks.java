package fascicle.book.plot;

import fascicle.book.figures.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Round numbers along an axis; the first and the last are the axis' ends.
 *
 * @param at the numbers, rising; two at least
 */
public record Ticks(List<Double> at) {

    /** Into how many steps an axis is cut at most, so that its numbers stand apart on a phone. */
    private static final int MOST_STEPS = 6;

    /** The same for depths, whose numbers are short. */
    private static final int MOST_DEPTHS = 8;

    /** Depths up to here are read by doubling. */
    private static final double DEEPEST_DOUBLED = 16;

    /** What a step may be, times a power of ten. */
    private static final List<Integer> ROUND = List.of(1, 2, 5);

    /**
     * Ticks of an axis.
     *
     * @throws IllegalArgumentException if they do not rise, or are fewer than two
     */
    public Ticks {
        at = List.copyOf(at);
        for (int i = 1; i < at.size(); i++) {
            if (!(at.get(i) > at.get(i - 1))) {
                throw new IllegalArgumentException("ticks do not rise: " + at);
            }
        }
        if (at.size() < 2) {
            throw new IllegalArgumentException("no axis has fewer than two ticks: " + at);
        }
    }

    /**
     * Round ticks about some values: steps of 1, 2 or 5 times a power of ten, the finest that cut the axis into at most
     * six.
     *
     * @param from the least value
     * @param to the greatest value
     * @param leastSpan how long the axis is at least; above 0
     * @return ticks that hold the values, with room on both sides where they lie close together
     * @throws IllegalArgumentException if a value is not finite, if {@code from} lies above {@code to}, or without a
     *     span
     */
    public static Ticks round(double from, double to, double leastSpan) {
        if (!Double.isFinite(from) || !Double.isFinite(to) || from > to || !(leastSpan > 0)) {
            throw new IllegalArgumentException("no axis: from " + from + " to " + to + " over " + leastSpan);
        }
        double room = StrictMath.max(0, leastSpan - (to - from)) / 2;
        return steps(from - room, to + room);
    }

    /**
     * Round ticks from nought.
     *
     * @param to the greatest value; not below 0
     * @param least how far the axis reaches at least; above 0
     * @return ticks from 0
     * @throws IllegalArgumentException if the value is not finite or below 0
     */
    public static Ticks fromNought(double to, double least) {
        if (!(to >= 0) || !(least > 0)) {
            throw new IllegalArgumentException("no axis from 0 to " + to + ", or at least " + least);
        }
        return round(0, StrictMath.max(to, least), least);
    }

    /**
     * Depths as dyers step them: doubling (… 0.25, 0.5, 1, 2, 4 …) where none lies above 16, else by 1, 2 and 5 times a
     * power of ten ({@code common practice, no source}).
     *
     * @param from the least depth; above 0
     * @param to the greatest depth
     * @return depths that hold these
     * @throws IllegalArgumentException if the least is not above 0 or lies above the greatest
     */
    public static Ticks depths(double from, double to) {
        if (!(from > 0) || !(to >= from) || !Double.isFinite(to)) {
            throw new IllegalArgumentException("no depths: from " + from + " to " + to);
        }
        List<Double> at = to <= DEEPEST_DOUBLED ? doubling(from, to) : roundNumbers(from, to);
        while (at.size() > MOST_DEPTHS) {
            at = everySecond(at);
        }
        return new Ticks(at);
    }

    /** The least and the greatest stay; between them every second one falls away. */
    private static List<Double> everySecond(List<Double> at) {
        int last = at.size() - 1;
        return IntStream.rangeClosed(0, last).filter(i -> i == 0 || i > 1 && (last - i) % 2 == 0).mapToObj(at::get)
                .toList();
    }

    private static List<Double> doubling(double from, double to) {
        List<Double> at = new ArrayList<>();
        for (double depth = StrictMath.scalb(1.0, StrictMath.getExponent(from)); holdsNotYet(at, to); depth *= 2) {
            at.add(depth);
        }
        return at;
    }

    private static List<Double> roundNumbers(double from, double to) {
        List<Double> at = new ArrayList<>();
        BigDecimal exact = new BigDecimal(from);
        for (int power = exact.precision() - exact.scale() - 1; holdsNotYet(at, to); power++) {
            for (int digit : ROUND) {
                double depth = decimal(digit, power);
                if (holdsNotYet(at, to)) {
                    if (depth <= from) {
                        at.clear();
                    }
                    at.add(depth);
                }
            }
        }
        return at;
    }

    private static boolean holdsNotYet(List<Double> at, double to) {
        return at.size() < 2 || at.get(at.size() - 1) < to;
    }

    /**
     * The same step over a longer axis, with as much room on either side.
     *
     * @param steps how many steps; not fewer than there are
     * @return ticks of an even step
     * @throws IllegalArgumentException if there are more steps already
     */
    public Ticks widenedTo(int steps) {
        int more = steps - steps();
        if (more < 0) {
            throw new IllegalArgumentException("more than " + steps + " steps already: " + at);
        }
        return even(StrictMath.round(low() / step()) - more / 2, StrictMath.round(high() / step()) + more - more / 2,
                step());
    }

    /** Evenly stepped ticks by a step that another axis has too. */
    Ticks steppedBy(double coarser) {
        return even((long) StrictMath.floor(low() / coarser), (long) StrictMath.ceil(high() / coarser), coarser);
    }

    private static Ticks steps(double from, double to) {
        for (int power = -9;; power++) {
            for (int digit : ROUND) {
                double step = decimal(digit, power);
                double first = StrictMath.floor(from / step);
                double last = StrictMath.ceil(to / step);
                if (last - first <= MOST_STEPS) {
                    return even((long) first, (long) last, step);
                }
            }
        }
    }

    private static Ticks even(long first, long last, double step) {
        BigDecimal exact = BigDecimal.valueOf(step);
        return new Ticks(LongStream.rangeClosed(first, last)
                .mapToObj(number -> exact.multiply(BigDecimal.valueOf(number)).doubleValue()).toList());
    }

    private static double decimal(int digit, int power) {
        return BigDecimal.valueOf(digit).scaleByPowerOfTen(power).doubleValue();
    }

    /**
     * Where the axis begins.
     *
     * @return the first tick
     */
    public double low() {
        return at.get(0);
    }

    /**
     * Where the axis ends.
     *
     * @return the last tick
     */
    public double high() {
        return at.get(at.size() - 1);
    }

    /**
     * How many steps the axis has.
     *
     * @return one fewer than ticks
     */
    public int steps() {
        return at.size() - 1;
    }

    /** From one tick to the next. */
    double step() {
        return (high() - low()) / steps();
    }

    /** The numbers as they stand at the axis. */
    List<String> labels() {
        return at.stream().map(value -> Figures.atMost(value, 6)).toList();
    }

    /** The least and the greatest of some values, as round ticks. */
    static Ticks about(DoubleStream values, double leastSpan) {
        double[] sorted = values.sorted().toArray();
        return round(sorted[0], sorted[sorted.length - 1], leastSpan);
    }
}
