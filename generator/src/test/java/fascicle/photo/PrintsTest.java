package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies to publish: upright, in sRGB, and with nothing in them but the picture. */
class PrintsTest {

    @TempDir
    private Path folder;

    private static Exposure good() {
        return Exposure.of(
                Scene.before(Camera.in(Illuminant.D65), 3).needles(Spectrum.of("9e2b25")).card(18).taken());
    }

    @Test
    void nothingTellsWhereOrWithWhatItWasTaken() throws Exception {
        byte[] original = good().tellingItsPlace().jpeg();
        assertTrue(holds(original, "Exif") && holds(original, Exif.MODEL));
        for (byte[] print : List.of(print(original, 400), print(original, 4000))) {
            for (String trace : List.of("Exif", Exif.MODEL, "ICC_PROFILE", "http", "Adobe")) {
                assertTrue(!holds(print, trace), trace);
            }
        }
    }

    @Test
    void uprightAndInSrgbHoweverItWasHeld() throws Exception {
        BufferedImage plain = image(print(good().jpeg(), 580));
        assertEquals(580, plain.getWidth());
        assertEquals(435, plain.getHeight());
        Exposure wide = good().in(RgbSpace.DISPLAY_P3, ColourProfile.withFormula(RgbSpace.DISPLAY_P3));
        for (int orientation = 1; orientation <= 8; orientation++) {
            BufferedImage held = image(print(wide.lying(orientation).jpeg(), 580));
            assertEquals(580, held.getWidth(), "orientation " + orientation);
            assertEquals(435, held.getHeight(), "orientation " + orientation);
            for (Area area : List.of(Scene.INSIDE, Scene.within(Scene.CARD))) {
                assertTrue(ColourDifference.ciede2000(mean(plain, area), mean(held, area)) < 0.7,
                        "orientation " + orientation);
            }
        }
    }

    /** A copy is made smaller, never larger. */
    @Test
    void neverWiderThanItWas() throws Exception {
        assertEquals(Scene.WIDTH, image(print(good().jpeg(), 4000)).getWidth());
        assertEquals(Scene.WIDTH, image(print(good().png(), Scene.WIDTH)).getWidth());
    }

    /** The light of a fine pattern is that of its parts in linear light, and does not darken as it is made smaller. */
    @Test
    void aFinePatternKeepsItsLight() throws Exception {
        Canvas stripes = new Canvas(800, 400);
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 800; x++) {
                double light = x % 2 == 0 ? 0.8 : 0.02;
                stripes.cover(x, y, new double[] {light, light, light}, 1);
            }
        }
        BufferedImage small = image(print(Exposure.of(stripes).png(), 200));
        double seen = RgbSpace.decode((small.getRGB(100, 50) >> 8 & 255) / 255.0);
        assertEquals(0.41, seen, 0.02);
    }

    @Test
    void theSameBytesEachTime() throws Exception {
        byte[] original = good().jpeg();
        assertArrayEquals(print(original, 300), print(original, 300));
    }

    private byte[] print(byte[] original, int width) throws Exception {
        return Darkroom.withoutCache().print(new Album(folder).keep("original.jpg", original), width);
    }

    private static boolean holds(byte[] file, String letters) {
        return PhotographFilesTest.indexOf(file, letters.getBytes(StandardCharsets.US_ASCII)) >= 0;
    }

    private static BufferedImage image(byte[] file) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(file));
    }

    private static Lab mean(BufferedImage image, Area area) {
        long[] sum = new long[4];
        double perX = image.getWidth() / 100.0;
        double perY = image.getHeight() / 100.0;
        for (int y = (int) (area.y() * perY); y < (area.y() + area.height()) * perY; y++) {
            for (int x = (int) (area.x() * perX); x < (area.x() + area.width()) * perX; x++) {
                int pixel = image.getRGB(x, y);
                sum[0] += pixel >> 16 & 255;
                sum[1] += pixel >> 8 & 255;
                sum[2] += pixel & 255;
                sum[3]++;
            }
        }
        return new fascicle.colour.Rgb(
                (int) (sum[0] / sum[3]), (int) (sum[1] / sum[3]), (int) (sum[2] / sum[3])).toLab();
    }
}
