package fascicle.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Things of known reflectance on a table top, in one light before one camera: needles, grey cards, a chart.
 *
 * <p>What is laid is painted at once; {@link #taken} then lets the light fall and gives the picture. The colour of
 * needles varies round what it is laid with, as real ones do, between dark gaps and with gloss, so that only its middle
 * is known.
 */
final class Scene {

    /** Where needles are laid if nothing else is said. */
    static final Area NEEDLES = new Area(5, 10, 40, 80);

    /** What to read of them: well inside. */
    static final Area INSIDE = new Area(10, 20, 30, 60);

    /** Where a card is laid if nothing else is said. */
    static final Area CARD = new Area(62, 30, 24, 36);

    /** A picture just large enough not to look as if a messenger had made it small. */
    static final int WIDTH = 1160;
    static final int HEIGHT = 870;

    private final Camera camera;
    private final Canvas canvas;
    private final Random random;
    private final long seed;
    private double across;
    private double down;
    private double grain = 1;

    /** An empty table of pale wood. */
    Scene(int width, int height, Camera camera, long seed) {
        this.camera = camera;
        this.seed = seed;
        canvas = new Canvas(width, height);
        random = new Random(seed);
        fill(new Area(0, 0, 100, 100), Spectrum.of("b08d57").deeper(0.8));
    }

    /** A small picture that is large enough to be read. */
    static Scene before(Camera camera, long seed) {
        return new Scene(WIDTH, HEIGHT, camera, seed);
    }

    Scene needles(Spectrum spectrum) {
        return needles(NEEDLES, spectrum, 0.25);
    }

    /**
     * Needles side by side, from the left to the right of the area.
     *
     * @param gloss linear light of the brightest highlight, beside 0.85 for a white
     */
    Scene needles(Area area, Spectrum spectrum, double gloss) {
        double[] colour = camera.linear(spectrum);
        fill(area, spectrum.deeper(1.6));
        double left = area.x() * canvas.width() / 100;
        double right = left + area.width() * canvas.width() / 100;
        double top = area.y() * canvas.height() / 100;
        double bottom = top + area.height() * canvas.height() / 100;
        double thick = canvas.height() / 75.0;
        for (double y = top + thick / 2; y < bottom; y += 1.04 * thick) {
            double tilt = thick * 0.3 * random.nextGaussian();
            double strength = 1 + 0.07 * random.nextGaussian();
            new Needle(left, y, (left + right) / 2, y + tilt, right, y, thick, 0)
                    .paint(canvas, scaled(colour, strength), random.nextInt(3) == 0 ? gloss : 0);
        }
        return this;
    }

    Scene card(double percent) {
        return card(CARD, Spectrum.grey(percent));
    }

    Scene card(Area area, Spectrum spectrum) {
        fill(area, spectrum);
        return this;
    }

    /** Patches in rows of six on a black ground. */
    Scene chart(Area area, List<Spectrum> patches) {
        fill(area, Spectrum.grey(3));
        List<Area> places = patches(area, patches.size());
        for (int i = 0; i < patches.size(); i++) {
            fill(places.get(i), patches.get(i));
        }
        return this;
    }

    /** Where the patches of a chart lie, row by row. */
    static List<Area> patches(Area chart, int count) {
        double cell = chart.width() / 6;
        double row = chart.height() / ((count + 5) / 6);
        List<Area> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(new Area(
                    chart.x() + i % 6 * cell + 0.1 * cell, chart.y() + i / 6 * row + 0.1 * row, 0.8 * cell, 0.8 * row));
        }
        return places;
    }

    /** The middle of an area, as a maker marks it who keeps off the edges. */
    static Area within(Area area) {
        return new Area(
                area.x() + area.width() / 5, area.y() + area.height() / 5, area.width() * 3 / 5, area.height() * 3 / 5);
    }

    /** The light grows by these shares of itself from left to right and from top to bottom. */
    Scene light(double growsAcross, double growsDown) {
        across = growsAcross;
        down = growsDown;
        return this;
    }

    /** Noise, 1 being a phone in a lit room. */
    Scene grain(double strength) {
        grain = strength;
        return this;
    }

    /** Takes the picture; the scene is used up. */
    Canvas taken() {
        canvas.slope(across, down);
        canvas.grain(grain, seed);
        return canvas;
    }

    private void fill(Area area, Spectrum spectrum) {
        double[] colour = camera.linear(spectrum);
        int right = (int) StrictMath.round((area.x() + area.width()) * canvas.width() / 100);
        int bottom = (int) StrictMath.round((area.y() + area.height()) * canvas.height() / 100);
        for (int y = (int) StrictMath.round(area.y() * canvas.height() / 100); y < bottom; y++) {
            for (int x = (int) StrictMath.round(area.x() * canvas.width() / 100); x < right; x++) {
                canvas.cover(x, y, colour, 1);
            }
        }
    }

    static double[] scaled(double[] colour, double factor) {
        return new double[] {factor * colour[0], factor * colour[1], factor * colour[2]};
    }
}
