package fascicle.photo;

import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Draws the photographs of the demonstration notebook, and the table of the chart that lies in one of them: nobody took
 * them, as nobody dyed what they show. Called with the notebook's folder; it tells what it drew.
 */
final class DemonstrationPhotographs {

    private static final int WIDTH = 1600;
    private static final int HEIGHT = 1200;

    /** Signal of a white: there is room above it for gloss. */
    private static final double EXPOSURE = 0.82;

    private final Path notebook;

    private DemonstrationPhotographs(Path notebook) {
        this.notebook = notebook;
    }

    /** Needles to lay, where to read them, and the colour that is to be read there. */
    record Laid(Bundle bundle, Area read, Lab colour, double gloss, double vary) {}

    /** A camera's white balance, which is not quite right. */
    record Balance(double red, double green, double blue) {}

    /** What lies beside the needles. */
    enum Beside { GREY_CARD, CHART, NOTHING }

    /** A photograph to draw. */
    record Shot(String file, TableTop table, Balance balance, Beside beside, Area card, boolean tellsItsPlace,
            long seed, List<Laid> laid) {}

    public static void main(String[] folder) throws IOException {
        DemonstrationPhotographs drawing = new DemonstrationPhotographs(Path.of(folder[0]));
        for (Shot shot : shots()) {
            drawing.draw(shot);
        }
        drawing.writeChart();
    }

    static List<Shot> shots() {
        return List.of(
                new Shot("days/2026-06-13/class-bundles.jpg", TableTop.WOOD, new Balance(1.03, 1, 0.90),
                        Beside.GREY_CARD, new Area(72, 60, 22, 28), false, 13, List.of(
                                new Laid(new Bundle(270, 240, 0.03, 860, 34, 0.07, 46), new Area(26, 16.5, 16, 6.5),
                                        new Lab(52.8, 5.4, 32.6), 0.10, 0.06),
                                new Laid(new Bundle(250, 580, -0.02, 840, 34, 0.07, 46), new Area(25, 45, 16, 6.5),
                                        new Lab(43.3, 26.3, 12.9), 0.08, 0.08),
                                new Laid(new Bundle(280, 950, -0.10, 800, 30, 0.07, 40), new Area(27, 74, 15, 6),
                                        hex("#905e55"), 0.07, 0.13))),
                new Shot("days/2026-05-30/blue-kept-green-wet.jpg", TableTop.SLATE, new Balance(0.98, 1, 1.04),
                        Beside.GREY_CARD, new Area(72, 5, 21, 27), false, 61, List.of(
                                new Laid(new Bundle(290, 800, -0.06, 1120, 78, 0.13, 120), new Area(29, 59, 16, 10),
                                        hex("#3d5a33"), 0.24, 0.09))),
                new Shot("days/2026-07-04/moss.jpg", TableTop.LINEN, new Balance(1.02, 1, 0.94),
                        Beside.GREY_CARD, new Area(72, 68, 21, 27), true, 66, List.of(
                                new Laid(new Bundle(280, 400, 0.02, 1130, 76, 0.13, 120), new Area(28, 30, 16, 10),
                                        new Lab(48.8, -16.2, 22.9), 0.10, 0.06))),
                new Shot("days/2026-09-19/blends-side-by-side.jpg", TableTop.SLATE, new Balance(1.01, 1, 0.96),
                        Beside.GREY_CARD, new Area(73, 36, 21, 27), false, 75, List.of(
                                new Laid(new Bundle(260, 230, 0.02, 840, 34, 0.07, 46), new Area(25, 15.5, 16, 6.5),
                                        new Lab(42.6, 18.7, 26.9), 0.08, 0.06),
                                new Laid(new Bundle(280, 600, -0.02, 820, 32, 0.07, 44), new Area(26, 46.5, 16, 6.5),
                                        new Lab(36.5, 6.9, -0.2), 0.07, 0.14),
                                new Laid(new Bundle(260, 960, -0.05, 840, 34, 0.07, 46), new Area(25, 75.5, 16, 6.5),
                                        new Lab(21.9, -2.7, 0.2), 0.06, 0.06))),
                new Shot("days/2026-09-05/rust-straw.jpg", TableTop.LINEN, new Balance(1.05, 1, 0.86),
                        Beside.CHART, new Area(60, 58.5, 35, 38), false, 74, List.of(
                                new Laid(new Bundle(270, 360, -0.03, 1120, 70, 0.12, 110), new Area(28, 25, 16, 9),
                                        new Lab(53.0, 27.8, 37.9), 0.09, 0.06))),
                new Shot("days/2026-10-17/rust-glycerin.jpg", TableTop.WOOD, new Balance(1.10, 0.98, 0.76),
                        Beside.NOTHING, new Area(0, 0, 100, 100), false, 81, List.of(
                                new Laid(new Bundle(330, 820, -0.24, 1150, 80, 0.17, 125), new Area(30, 51, 15, 10),
                                        new Lab(46.9, 14.3, 30.0), 0.16, 0.07))));
    }

    private void draw(Shot shot) throws IOException {
        List<double[]> colours = new ArrayList<>();
        shot.laid().forEach(one -> colours.add(linear(one.colour())));
        Canvas canvas = laidOut(shot, colours);
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < colours.size(); i++) {
                colours.set(i, closer(colours.get(i), canvas, shot.laid().get(i)));
            }
            canvas = laidOut(shot, colours);
        }
        Balance balance = shot.balance();
        canvas.tint(EXPOSURE * balance.red(), EXPOSURE * balance.green(), EXPOSURE * balance.blue());
        canvas.slope(0.03, -0.04);
        canvas.grain(0.25, shot.seed());
        Exposure photograph = Exposure.of(canvas);
        Files.write(notebook.resolve(shot.file()),
                (shot.tellsItsPlace() ? photograph.tellingItsPlace() : photograph).jpeg());
        shot.laid().forEach(one -> System.out.println(
                shot.file() + ": " + one.read() + " " + one.colour() + " beside " + shot.beside() + " " + shot.card()));
    }

    /** The whole of it as light of a white that is 1. */
    private static Canvas laidOut(Shot shot, List<double[]> colours) {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        shot.table().lay(canvas);
        switch (shot.beside()) {
            case GREY_CARD -> Card.grey(canvas, shot.card(), new double[] {0.18, 0.18, 0.18});
            case CHART -> Card.chart(canvas, shot.card(),
                    Spectrum.chart().stream().map(patch -> linear(patch.lab())).toList());
            case NOTHING -> { }
        }
        for (int i = 0; i < colours.size(); i++) {
            Laid one = shot.laid().get(i);
            one.bundle().lay(canvas, colours.get(i), one.gloss(), one.vary(), shot.seed() + i);
        }
        return canvas;
    }

    private void writeChart() throws IOException {
        Files.createDirectories(notebook.resolve("charts"));
        Files.writeString(notebook.resolve("charts/bench-chart.csv"), Spectrum.chart().stream()
                .map(Spectrum::lab)
                .map(lab -> hundredths(lab.lightness()) + "," + hundredths(lab.a()) + "," + hundredths(lab.b()))
                .collect(Collectors.joining("\n", "L,a,b\n", "\n")), StandardCharsets.UTF_8);
    }

    /** Shadows between needles darken them: what was laid is mended by what came out where it is to be read. */
    private static double[] closer(double[] colour, Canvas canvas, Laid laid) {
        double[] wanted = linear(laid.colour());
        double[] found = middle(canvas, laid.read());
        double[] closer = new double[3];
        for (int i = 0; i < 3; i++) {
            closer[i] = StrictMath.max(0.0005, colour[i] + wanted[i] - found[i]);
        }
        return closer;
    }

    /** The mean of an area without its darkest and brightest tenths. */
    private static double[] middle(Canvas canvas, Area area) {
        List<float[]> pixels = new ArrayList<>();
        for (int y = (int) (area.y() * HEIGHT / 100); y < (area.y() + area.height()) * HEIGHT / 100; y++) {
            for (int x = (int) (area.x() * WIDTH / 100); x < (area.x() + area.width()) * WIDTH / 100; x++) {
                float[] pixel = {canvas.at(x, y, 0), canvas.at(x, y, 1), canvas.at(x, y, 2)};
                pixels.add(pixel);
            }
        }
        pixels.sort(Comparator.comparingDouble(pixel -> 0.21 * pixel[0] + 0.72 * pixel[1] + 0.07 * pixel[2]));
        int tenth = pixels.size() / 10;
        double[] mean = new double[3];
        for (float[] pixel : pixels.subList(tenth, pixels.size() - tenth)) {
            for (int i = 0; i < 3; i++) {
                mean[i] += pixel[i] / (pixels.size() - 2.0 * tenth);
            }
        }
        return mean;
    }

    private static Lab hex(String written) {
        return Rgb.read(written).orElseThrow().toLab();
    }

    /** Linear sRGB of a colour under D50. */
    private static double[] linear(Lab lab) {
        double[] white = Illuminant.D50.white();
        double y = (lab.lightness() + 16) / 116;
        double[] shares = {y + lab.a() / 500, y, y - lab.b() / 200};
        double[] xyz = new double[3];
        for (int i = 0; i < 3; i++) {
            double cube = shares[i] * shares[i] * shares[i];
            xyz[i] = white[i] * (cube > 216.0 / 24389 ? cube : (116 * shares[i] - 16) * 27 / 24389);
        }
        double[] linear = RgbSpace.SRGB.linear(Square.times(Square.adaptation(white, RgbSpace.white()), xyz));
        return Arrays.stream(linear).map(light -> StrictMath.max(0, light)).toArray();
    }

    /** Two digits after the point, and never -0. */
    private static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", StrictMath.round(100 * value) / 100.0 + 0.0);
    }
}
