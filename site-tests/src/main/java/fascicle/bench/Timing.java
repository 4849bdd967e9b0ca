package fascicle.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The runs of one thing, in the order of their rounds.
 *
 * @param name what ran
 * @param runs one for each round
 */
record Timing(String name, List<Run> runs) {

    double min() {
        return sorted(seconds())[0];
    }

    double median() {
        return median(seconds());
    }

    double max() {
        return sorted(seconds())[runs.size() - 1];
    }

    /** The most memory that any of the runs held, in KiB; 0 where unknown. */
    long peakKb() {
        return runs.stream().mapToLong(Run::peakKb).max().orElse(0);
    }

    /** This one's time over the other's, round by round, so that a drift of the machine drops out. */
    List<Double> ratios(Timing other) {
        return IntStream.range(0, runs.size()).mapToObj(i -> runs.get(i).seconds() / other.runs.get(i).seconds()).toList();
    }

    /** A line of the table. */
    String line() {
        String peak = peakKb() == 0 ? "      -" : String.format(Locale.ROOT, "%7.0f", peakKb() / 1024.0);
        return String.format(Locale.ROOT, "  %-42s %8.3f %8.3f %8.3f  %s", name, min(), median(), max(), peak);
    }

    /** The middle of some figures; of an even number of them the mean of the middle two. */
    static double median(double[] figures) {
        double[] sorted = sorted(figures);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private double[] seconds() {
        return runs.stream().mapToDouble(Run::seconds).toArray();
    }

    private static double[] sorted(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}
