package fascicle.photo;

import java.util.Arrays;

/**
 * The light of many pixels, heaped by luminance, so that the darkest and the brightest tenth can be left out without
 * keeping or sorting the pixels.
 *
 * <p>Heaps lie evenly by the root of luminance. Where a cut runs through a heap, whose pixels differ by less than a
 * thousandth of white, the rest of it counts by its share.
 */
final class Pile {

    private static final int HEAPS = 4096;
    private static final double TRIMMED = 0.1;

    private final int[] counts = new int[HEAPS];
    private final int[] bright = new int[HEAPS];
    private final int[] dark = new int[HEAPS];
    private final double[][] light = new double[3][HEAPS];

    /**
     * Adds a pixel.
     *
     * @param luminance of the three together; may lie a little outside 0 to 1
     * @param tooBright whether a channel is so bright that its light is cut off
     * @param tooDark whether a channel is so dark that its light is cut off
     */
    void add(double red, double green, double blue, double luminance, boolean tooBright, boolean tooDark) {
        int heap = (int) (StrictMath.sqrt(StrictMath.max(0, StrictMath.min(1, luminance))) * (HEAPS - 1));
        counts[heap]++;
        light[0][heap] += red;
        light[1][heap] += green;
        light[2][heap] += blue;
        if (tooBright) {
            bright[heap]++;
        }
        if (tooDark) {
            dark[heap]++;
        }
    }

    void addAll(Pile other) {
        for (int heap = 0; heap < HEAPS; heap++) {
            counts[heap] += other.counts[heap];
            bright[heap] += other.bright[heap];
            dark[heap] += other.dark[heap];
            for (int channel = 0; channel < 3; channel++) {
                light[channel][heap] += other.light[channel][heap];
            }
        }
    }

    int pixels() {
        return Arrays.stream(counts).sum();
    }

    /** The mean without the darkest and the brightest tenth of the pixels, rounded down; of at least one pixel. */
    Light trimmed() {
        int pixels = pixels();
        int left = (int) (TRIMMED * pixels);
        double[] sum = new double[3];
        double tooBright = 0;
        double tooDark = 0;
        long before = 0;
        for (int heap = 0; heap < HEAPS; heap++) {
            long after = before + counts[heap];
            long kept = StrictMath.min(after, pixels - left) - StrictMath.max(before, left);
            if (kept > 0) {
                double share = (double) kept / counts[heap];
                for (int channel = 0; channel < 3; channel++) {
                    sum[channel] += share * light[channel][heap];
                }
                tooBright += share * bright[heap];
                tooDark += share * dark[heap];
            }
            before = after;
        }
        int count = pixels - 2 * left;
        return new Light(sum[0] / count, sum[1] / count, sum[2] / count, count, pixels, tooBright / count,
                tooDark / count);
    }
}
