package fascicle.photo;

import static fascicle.photo.Pictures.jpeg;
import static fascicle.photo.Pictures.painted;
import static fascicle.photo.Pictures.pngOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.LinearRgb;
import fascicle.colour.Rgb;
import fascicle.photo.Sample.Against;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleTest {

    private static final Area LEFT = new Area(5, 5, 40, 90);
    private static final Area RIGHT = new Area(55, 5, 40, 90);

    @TempDir
    Path folder;

    private final Darkroom darkroom = Darkroom.withoutCache();
    private int made;

    @Test
    void withoutACardTheColourIsWhatThePictureSays() throws Exception {
        Sample sample = darkroom.sample(png(painted(1200, 900, (x, y) -> 0x7f4632)), LEFT, List.of());
        assertClose(new Rgb(0x7f, 0x46, 0x32).toLab(), sample.lab(), 1e-6);
        assertEquals(Against.NOTHING, sample.against());
        assertEquals(List.of(Caution.Kind.NO_CARD), kinds(sample));
        assertTrue(sample.uncertainty() > 6);
        assertEquals(480 * 810 - 2 * 38880, sample.pixels());
        assertEquals(0, sample.unlevelness(), 1e-9);
    }

    /** Halving the light of card and needles alike changes nothing. */
    @Test
    void theLightThatFallsOnCardAndNeedlesDoesNotMatter() throws Exception {
        Lab brick = new Rgb(0x7f, 0x46, 0x32).toLab();
        LinearRgb light = LinearRgb.of(brick);
        for (double strength : new double[] {0.5, 1, 1.6}) {
            int needles = code(strength * light.red(), strength * light.green(), strength * light.blue());
            int card = code(strength * 0.18, strength * 0.18, strength * 0.18);
            Sample sample = darkroom.sample(png(painted(1200, 900, (x, y) -> x < 600 ? needles : card)), LEFT,
                    List.of(Patch.grey(RIGHT, 18)));
            assertTrue(ColourDifference.ciede2000(brick, sample.lab()) < 0.7, sample.lab().toString());
            assertEquals(Against.GREY_CARD, sample.against());
            assertEquals(6, sample.uncertainty());
            assertEquals(List.of(), sample.cautions());
        }
    }

    @Test
    void theDarkestAndTheBrightestTenthAreLeftOut() throws Exception {
        Path file = png(painted(1000, 1000, (x, y) -> x % 20 == 0 ? 0xffffff : x % 20 == 1 ? 0x000000 : 0x7f4632));
        Sample sample = darkroom.sample(file, new Area(0, 0, 100, 100), List.of());
        assertClose(new Rgb(0x7f, 0x46, 0x32).toLab(), sample.lab(), 1e-6);
        assertEquals(List.of(Caution.Kind.NO_CARD), kinds(sample));
    }

    /** A fifth of a colour, a tenth of which is left out with the darkest, weighs one part in eight of what remains. */
    @Test
    void theMeanIsTakenOfLightAndNotOfNumbers() throws Exception {
        Path file = png(painted(1000, 1000, (x, y) -> x % 5 == 0 ? 0x404040 : 0xc0c0c0));
        Sample sample = darkroom.sample(file, new Area(0, 0, 100, 100), List.of());
        double mean = (LinearRgb.decode(0x40 / 255.0) + 7 * LinearRgb.decode(0xc0 / 255.0)) / 8;
        assertClose(Lab.ofReflectance(mean), sample.lab(), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void areasAreThoseOfThePictureThatStandsUpright(int orientation) throws Exception {
        // By the figure of the standard: where the stored first row and first column are seen.
        int[] quarters = {0x804040, 0x408040, 0x404080, 0x808040};
        Pictures.Painter upright = (x, y) -> quarters[(x < 60 ? 0 : 1) + (y < 40 ? 0 : 2)];
        BufferedImage stored = orientation < 5
                ? painted(120, 80, (x, y) -> upright.at(
                        orientation == 2 || orientation == 3 ? 119 - x : x, orientation > 2 ? 79 - y : y))
                : painted(80, 120, (x, y) -> upright.at(
                        orientation == 6 || orientation == 7 ? 119 - y : y,
                        orientation == 7 || orientation == 8 ? 79 - x : x));
        Path file = Pictures.write(folder, "turned.jpg", Pictures.withOrientation(jpeg(stored), orientation));
        assertEquals(120, darkroom.picture(file).width());
        assertEquals(80, darkroom.picture(file).height());
        for (int quarter = 0; quarter < 4; quarter++) {
            Area area = new Area(quarter % 2 == 0 ? 5 : 60, quarter < 2 ? 5 : 60, 30, 30);
            Lab expected = rgb(quarters[quarter]).toLab();
            assertTrue(ColourDifference.ciede2000(expected, darkroom.sample(file, area, List.of()).lab()) < 1);
        }
    }

    @Test
    void grainIsNotUnlevelAndAGradientIs() throws Exception {
        Random grain = new Random(7);
        Path level = png(painted(600, 600, (x, y) -> {
            int change = grain.nextInt(41) - 20;
            return 0x7f4632 + change * 0x010101;
        }));
        Path uneven = png(painted(600, 600, (x, y) -> x < 300 ? 0x7f4632 : 0x9f5642));
        Area all = new Area(0, 0, 100, 100);
        assertTrue(darkroom.sample(level, all, List.of()).unlevelness() < 0.2);
        Sample halves = darkroom.sample(uneven, all, List.of());
        double apart = ColourDifference.ciede2000(rgb(0x7f4632).toLab(), rgb(0x9f5642).toLab());
        assertEquals(apart / 2, halves.unlevelness(), 0.2);
    }

    @Test
    void progressiveAndPalettePicturesAndThoseWithAWrongNameAreRead() throws Exception {
        BufferedImage flat = painted(1200, 900, (x, y) -> 0x7f4632);
        Lab brick = rgb(0x7f4632).toLab();
        Path progressive = Pictures.write(folder, "a.jpg", Pictures.progressiveJpeg(flat));
        Path misnamed = Pictures.write(folder, "b.jpg", pngOf(flat));
        Path palette = Pictures.write(folder, "c.png", Pictures.flatPng(1200, 900, 8, 3, new int[] {1},
                Pictures.chunk("PLTE", new byte[] {0, 0, 0, 0x7f, 0x46, 0x32})));
        for (Path file : List.of(progressive, misnamed, palette)) {
            assertTrue(ColourDifference.ciede2000(brick, darkroom.sample(file, LEFT, List.of()).lab()) < 0.6);
        }
    }

    /** Components named R, G and B, without any application's segment, are no YCbCr (as common decoders take them). */
    @Test
    void aJpegWhoseComponentsAreNamedRgbIsRgb() throws Exception {
        byte[] jpeg = jpeg(painted(64, 64, (x, y) -> 0x7f4632));
        // The file's own YCbCr of that brown (ITU-T T.871), which are then meant as red, green and blue.
        double luma = 0.299 * 0x7f + 0.587 * 0x46 + 0.114 * 0x32;
        Rgb meant = new Rgb((int) StrictMath.round(luma), (int) StrictMath.round(128 + (0x32 - luma) / 1.772),
                (int) StrictMath.round(128 + (0x7f - luma) / 1.402));
        byte[] bare = Pictures.renamed(jpeg, 'R', 'G', 'B');
        Sample sample = darkroom.sample(Pictures.write(folder, "rgb.jpg", bare), LEFT, List.of());
        assertTrue(ColourDifference.ciede2000(meant.toLab(), sample.lab()) < 1, sample.lab().toString());
    }

    @Test
    void sixteenBitsAreReadToTheLast() throws Exception {
        int[] pixel = {30_001, 20_002, 10_003};
        Path file = Pictures.write(folder, "deep.png", Pictures.flatPng(100, 100, 16, 2, pixel));
        Lab expected = new LinearRgb(LinearRgb.decode(pixel[0] / 65535.0), LinearRgb.decode(pixel[1] / 65535.0),
                LinearRgb.decode(pixel[2] / 65535.0)).toLab();
        assertClose(expected, darkroom.sample(file, LEFT, List.of()).lab(), 1e-9);
    }

    private Path png(BufferedImage image) {
        return Pictures.write(folder, "made" + ++made + ".png", pngOf(image));
    }

    private static int code(double red, double green, double blue) {
        Rgb rgb = new LinearRgb(red, green, blue).toRgb();
        return rgb.red() << 16 | rgb.green() << 8 | rgb.blue();
    }

    private static Rgb rgb(int code) {
        return new Rgb(code >> 16, code >> 8 & 255, code & 255);
    }

    private static List<Caution.Kind> kinds(Sample sample) {
        return sample.cautions().stream().map(Caution::kind).toList();
    }

    private static void assertClose(Lab expected, Lab actual, double tolerance) {
        assertEquals(0, ColourDifference.cielab(expected, actual), tolerance, () -> expected + " but " + actual);
    }
}
