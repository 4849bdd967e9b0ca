package fascicle.photo;

import java.util.Random;

/** Linear sRGB light that falls on a sensor, pixel by pixel; not held to 0 … 1 until it is developed. */
final class Canvas {

    private static final float[] GRAIN = grain();

    private final int width;
    private final int height;
    private final float[] light;

    Canvas(int width, int height) {
        this.width = width;
        this.height = height;
        light = new float[3 * width * height];
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    float at(int x, int y, int channel) {
        return light[3 * (y * width + x) + channel];
    }

    /** The share of an area's pixels of which a channel falls outside what 8 bits can tell, above 254 or below 1. */
    double beyondTheCamera(Area area) {
        int count = 0;
        int beyond = 0;
        for (int y = (int) (area.y() * height / 100); y < (area.y() + area.height()) * height / 100; y++) {
            for (int x = (int) (area.x() * width / 100); x < (area.x() + area.width()) * width / 100; x++) {
                float least = StrictMath.min(at(x, y, 0), StrictMath.min(at(x, y, 1), at(x, y, 2)));
                float most = StrictMath.max(at(x, y, 0), StrictMath.max(at(x, y, 1), at(x, y, 2)));
                count++;
                beyond += least < RgbSpace.decode(1 / 255.0) || most > RgbSpace.decode(254 / 255.0) ? 1 : 0;
            }
        }
        return (double) beyond / count;
    }

    /** Covers a pixel in part; outside the picture nothing happens. */
    void cover(int x, int y, double[] colour, double share) {
        if (share > 0 && x >= 0 && y >= 0 && x < width && y < height) {
            int at = 3 * (y * width + x);
            for (int i = 0; i < 3; i++) {
                light[at + i] += (float) (share * (colour[i] - light[at + i]));
            }
        }
    }

    /** Dims or brightens a pixel. */
    void dim(int x, int y, double factor) {
        if (x >= 0 && y >= 0 && x < width && y < height) {
            int at = 3 * (y * width + x);
            for (int i = 0; i < 3; i++) {
                light[at + i] *= (float) factor;
            }
        }
    }

    /**
     * Brightens the right and the lower edge and dims the others: the light changes by {@code across} of itself from
     * left to right, and by {@code down} from top to bottom.
     */
    void slope(double across, double down) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                dim(x, y, (1 + across * ((double) x / width - 0.5)) * (1 + down * ((double) y / height - 0.5)));
            }
        }
    }

    /** Gives each channel its share of the light. */
    void tint(double red, double green, double blue) {
        for (int i = 0; i < light.length; i += 3) {
            light[i] *= (float) red;
            light[i + 1] *= (float) green;
            light[i + 2] *= (float) blue;
        }
    }

    /** Dims what lies in the shadow of a mask that stands a little above it, the light coming from the upper left. */
    void shade(Canvas mask, int distance, double strength) {
        mask.blur(distance);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int fromX = StrictMath.max(0, x - distance);
                int fromY = StrictMath.max(0, y - distance * 4 / 3);
                dim(x, y, 1 - strength * mask.at(fromX, fromY, 0));
            }
        }
    }

    /** Three runs of a mean over neighbours, along lines and columns, which is nearly a Gaussian. */
    private void blur(int radius) {
        for (int run = 0; run < 3; run++) {
            for (int y = 0; y < height; y++) {
                smooth(3 * y * width, 3, width, radius);
            }
            for (int x = 0; x < width; x++) {
                smooth(3 * x, 3 * width, height, radius);
            }
        }
    }

    /** Only the first channel, as masks have one. */
    private void smooth(int start, int step, int count, int radius) {
        float[] line = new float[count];
        for (int i = 0; i < count; i++) {
            line[i] = light[start + i * step];
        }
        double sum = 0;
        for (int i = -radius; i <= radius; i++) {
            sum += line[StrictMath.max(0, StrictMath.min(count - 1, i))];
        }
        for (int i = 0; i < count; i++) {
            light[start + i * step] = (float) (sum / (2 * radius + 1));
            sum += line[StrictMath.min(count - 1, i + radius + 1)] - line[StrictMath.max(0, i - radius)];
        }
    }

    /**
     * Adds the noise of a small sensor, whose variance grows with the light.
     *
     * @param strength 1 for a phone in a lit room
     * @param seed the same seed gives the same noise
     */
    void grain(double strength, long seed) {
        int place = (int) (seed * 7919 & 0xffff);
        for (int i = 0; i < light.length; i++) {
            place = place + 7 + (i >> 9 & 15) & 0xffff;
            double spread = StrictMath.sqrt(2e-6 + 2e-4 * StrictMath.max(0, light[i]));
            light[i] += (float) (strength * spread * GRAIN[place]);
        }
    }

    /** A fixed bag of normal deviates, since drawing each anew costs more than the rest of a scene. */
    private static float[] grain() {
        Random random = new Random(1931);
        float[] grain = new float[0x10000];
        for (int i = 0; i < grain.length; i++) {
            grain[i] = (float) random.nextGaussian();
        }
        return grain;
    }
}
