package fascicle.photo;

import fascicle.colour.LinearRgb;
import fascicle.colour.Matrix;
import java.util.Arrays;

/**
 * Makes a picture smaller: each new pixel is the mean of the light on the area that it covers, so that a fine pattern
 * of needles keeps its brightness. Light is averaged in the picture's own primaries and carried to sRGB afterwards, in
 * single precision, which is far finer than the 8 bits that come of it.
 */
final class Reduction {

    /** Steps of light for which the sRGB number is kept; the numbers' own steps are twenty times wider at the least. */
    private static final int STEPS = 65_535;
    private static final byte[] NUMBERS = numbers();

    private final int oldWidth;
    private final int width;
    private final int height;
    private final boolean srgb;
    private final Matrix toSrgb;
    private final float[] columns;
    private final float[] light;
    private final double rows;
    private double wanted;
    private int next;

    /**
     * A reduction that waits for the rows of a picture.
     *
     * @param width of the new rows, at most that of the old ones
     * @param height of the new columns, at most that of the old ones
     */
    Reduction(int oldWidth, int oldHeight, Profile profile, int width, int height) {
        this.oldWidth = oldWidth;
        this.width = width;
        this.height = height;
        srgb = profile.isSrgb();
        toSrgb = LinearRgb.toXyzUnderD50().inverse().times(profile.toXyz());
        columns = new float[3 * oldWidth];
        light = new float[3 * width * height];
        rows = (double) oldHeight / height;
        wanted = rows;
    }

    /** Takes the next row of light. */
    void take(float[] row) {
        if (wanted > 1 || next == height - 1) {
            gather(row, 1);
            wanted -= 1;
        } else {
            gather(row, (float) wanted);
            finish();
            float rest = (float) (1 - wanted);
            gather(row, rest);
            wanted = rows - rest;
        }
    }

    /** The light of a new row, after all old ones; as {@link LightRows} gives it. */
    float[] row(int y) {
        complete();
        return Arrays.copyOfRange(light, 3 * width * y, 3 * width * (y + 1));
    }

    /**
     * The picture in sRGB of 8 bits, red, green and blue of each pixel in turn, not yet turned upright; after all rows.
     */
    byte[] result() {
        complete();
        byte[] numbers = new byte[light.length];
        for (int at = 0; at < light.length; at += 3) {
            put(numbers, at);
        }
        return numbers;
    }

    private void complete() {
        if (next < height) {
            finish();
        }
    }

    /** Adds a row's light to that of the rows above it which make one new row. */
    private void gather(float[] row, float share) {
        float[] sums = columns;
        if (share == 1) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += row[i];
            }
        } else {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += share * row[i];
            }
        }
    }

    /** Brings the gathered columns into new ones: a share of the first and of the last, and all between. */
    private void finish() {
        double across = (double) oldWidth / width;
        double area = rows * across;
        for (int x = 0; x < width; x++) {
            double from = x * across;
            double to = StrictMath.min((x + 1) * across, oldWidth);
            int first = (int) from;
            int last = StrictMath.min((int) to, oldWidth - 1);
            double ofFirst = StrictMath.min(to, first + 1) - from;
            double ofLast = last > first ? to - last : 0;
            double red = ofFirst * columns[3 * first] + ofLast * columns[3 * last];
            double green = ofFirst * columns[3 * first + 1] + ofLast * columns[3 * last + 1];
            double blue = ofFirst * columns[3 * first + 2] + ofLast * columns[3 * last + 2];
            for (int i = 3 * (first + 1); i < 3 * last; i += 3) {
                red += columns[i];
                green += columns[i + 1];
                blue += columns[i + 2];
            }
            int at = 3 * (next * width + x);
            light[at] = (float) (red / area);
            light[at + 1] = (float) (green / area);
            light[at + 2] = (float) (blue / area);
        }
        Arrays.fill(columns, 0);
        next++;
    }

    private void put(byte[] numbers, int at) {
        if (srgb) {
            numbers[at] = number(light[at]);
            numbers[at + 1] = number(light[at + 1]);
            numbers[at + 2] = number(light[at + 2]);
        } else {
            double[] carried = toSrgb.times(light[at], light[at + 1], light[at + 2]);
            numbers[at] = number(carried[0]);
            numbers[at + 1] = number(carried[1]);
            numbers[at + 2] = number(carried[2]);
        }
    }

    private static byte number(double light) {
        return NUMBERS[(int) (StrictMath.max(0, StrictMath.min(1, light)) * STEPS + 0.5)];
    }

    private static byte[] numbers() {
        byte[] numbers = new byte[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            numbers[i] = (byte) StrictMath.round(255 * LinearRgb.encode((double) i / STEPS));
        }
        return numbers;
    }
}
