package fascicle.photo;

import fascicle.colour.LinearRgb;
import fascicle.colour.Matrix;
import java.util.Arrays;

/**
 * Makes a picture smaller: each new pixel is the mean of the light on the area that it covers, so that a fine pattern of
 * needles keeps its brightness. Light is averaged in the picture's own primaries and carried to sRGB afterwards, in
 * single precision, which is far finer than the 8 bits that come of it.
 */
final class Reduction {

    /** Steps of light for which the sRGB number is kept; the numbers' own steps are twenty times wider at the least. */
    private static final int STEPS = 65_535;
    private static final byte[] NUMBERS = numbers();

    private final Pixels pixels;
    private final int width;
    private final int height;
    private final float[][] light;
    private final Profile profile;
    private final Matrix toSrgb;
    private final float[] columns;
    private final byte[] reduced;

    private Reduction(Pixels pixels, Profile profile, int width, int height) {
        this.pixels = pixels;
        this.profile = profile;
        this.width = width;
        this.height = height;
        toSrgb = LinearRgb.toXyzUnderD50().inverse().times(profile.toXyz());
        light = single(profile.light(pixels.highest()));
        columns = new float[3 * pixels.width()];
        reduced = new byte[3 * width * height];
    }

    /**
     * The picture in sRGB of 8 bits, red, green and blue of each pixel in turn, not yet turned upright.
     *
     * @param width of the new rows, at most that of the old ones
     * @param height of the new columns, at most that of the old ones
     */
    static byte[] of(Pixels pixels, Profile profile, int width, int height) {
        return new Reduction(pixels, profile, width, height).reduce();
    }

    private byte[] reduce() {
        Pixels.Reader reader = pixels.new Reader();
        double rows = (double) pixels.height() / height;
        int next = 0;
        double left = rows;
        for (int y = 0; y < pixels.height(); y++) {
            int[] row = reader.row(y);
            if (reader.seeThrough()) {
                layOnWhite(row, reader.opacity());
            }
            if (left > 1 || next == height - 1) {
                gather(row, 1);
                left -= 1;
            } else {
                gather(row, (float) left);
                finish(next++, rows);
                float rest = (float) (1 - left);
                Arrays.fill(columns, 0);
                gather(row, rest);
                left = rows - rest;
            }
        }
        finish(height - 1, rows);
        return reduced;
    }

    /** Adds a row's light to that of the rows above it which make one new row. */
    private void gather(int[] row, float share) {
        float[] red = light[0];
        float[] green = light[1];
        float[] blue = light[2];
        float[] sums = columns;
        for (int i = 0; i < sums.length; i += 3) {
            sums[i] += share * red[row[i]];
            sums[i + 1] += share * green[row[i + 1]];
            sums[i + 2] += share * blue[row[i + 2]];
        }
    }

    /** Brings the gathered columns into new ones. */
    private void finish(int y, double rows) {
        double across = (double) pixels.width() / width;
        double[] sum = new double[3];
        for (int x = 0; x < width; x++) {
            double from = x * across;
            double to = StrictMath.min((x + 1) * across, pixels.width());
            Arrays.fill(sum, 0);
            for (int column = (int) from; column < to; column++) {
                double share = StrictMath.min(to, column + 1) - StrictMath.max(from, column);
                sum[0] += share * columns[3 * column];
                sum[1] += share * columns[3 * column + 1];
                sum[2] += share * columns[3 * column + 2];
            }
            double area = rows * across;
            put(3 * (y * width + x), sum[0] / area, sum[1] / area, sum[2] / area);
        }
    }

    private void put(int at, double red, double green, double blue) {
        if (profile.isSrgb()) {
            reduced[at] = number(red);
            reduced[at + 1] = number(green);
            reduced[at + 2] = number(blue);
        } else {
            double[] srgb = toSrgb.times(red, green, blue);
            reduced[at] = number(srgb[0]);
            reduced[at + 1] = number(srgb[1]);
            reduced[at + 2] = number(srgb[2]);
        }
    }

    /** As pages show it: the numbers themselves are mixed, not the light. */
    private void layOnWhite(int[] row, int[] opacity) {
        int highest = pixels.highest();
        for (int i = 0; i < row.length; i++) {
            long covered = opacity[i / 3];
            row[i] = (int) ((row[i] * covered + highest * (highest - covered) + highest / 2) / highest);
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

    private static float[][] single(double[][] curves) {
        float[][] single = new float[curves.length][];
        for (int channel = 0; channel < curves.length; channel++) {
            single[channel] = new float[curves[channel].length];
            for (int i = 0; i < curves[channel].length; i++) {
                single[channel][i] = (float) curves[channel][i];
            }
        }
        return single;
    }
}
