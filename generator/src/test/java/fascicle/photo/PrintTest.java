package fascicle.photo;

import static fascicle.photo.Pictures.jpeg;
import static fascicle.photo.Pictures.joined;
import static fascicle.photo.Pictures.painted;
import static fascicle.photo.Pictures.text;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.LinearRgb;
import fascicle.colour.Rgb;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintTest {

    private static final int BRICK = 0x7f4632;

    @TempDir
    Path folder;

    /** Markers by ITU-T T.81, table B.1: application segments are E0 to EF, comments FE. */
    @Test
    void nothingStandsInItBesideThePicture() throws Exception {
        String place = "N 48 12 30.5, E 16 22 21.1";
        byte[] secret = text(place);
        byte[] source = jpeg(painted(400, 300, (x, y) -> BRICK));
        source = Pictures.withSegment(source, 0xfe, secret);
        source = Pictures.withSegment(source, 0xed, secret);
        source = Pictures.withSegment(source, 0xe1, joined(text("http://ns.adobe.com/xap/1.0/\0"), secret));
        source = Pictures.withProfile(source, Profiles.displayP3());
        source = Pictures.withSegment(source, 0xe1, joined(text("Exif\0\0"), Pictures.exif(1), secret));
        byte[] png = Pictures.pngOf(painted(400, 300, (x, y) -> BRICK),
                Pictures.chunk("tEXt", joined(text("Place\0"), secret)));
        for (byte[] content : List.of(source, png)) {
            assertTrue(new String(content, StandardCharsets.ISO_8859_1).contains(place));
            byte[] print = print(content, 200);
            assertFalse(new String(print, StandardCharsets.ISO_8859_1).contains(place));
            assertEquals(List.of(0xe0), applications(print));
        }
    }

    private static List<Integer> applications(byte[] jpeg) {
        List<Integer> found = new ArrayList<>();
        for (int at = 2; (jpeg[at + 1] & 0xff) != 0xda; ) {
            int marker = jpeg[at + 1] & 0xff;
            if (marker >= 0xe0) {
                found.add(marker);
            }
            at += 2 + ((jpeg[at + 2] & 0xff) << 8 | jpeg[at + 3] & 0xff);
        }
        return found;
    }

    /** T.81, B.2.2: the frame names sampling factors; twice as many of the luminance each way is 4:2:0. */
    @Test
    void coloursHaveHalfTheResolution() throws Exception {
        byte[] print = print(jpeg(painted(40, 30, (x, y) -> BRICK)), 40);
        int at = new String(print, StandardCharsets.ISO_8859_1).indexOf("\u00ff\u00c0");
        assertEquals(List.of(0x22, 0x11, 0x11),
                List.of((int) print[at + 11], (int) print[at + 14], (int) print[at + 17]));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void itStandsUpright(int orientation) throws Exception {
        // Where the stored first row and first column are seen, by the figure of the standard.
        Pictures.Painter upright = (x, y) -> x < 80 ? (y < 48 ? 0x804040 : 0x408040) : y < 48 ? 0x404080 : 0x808040;
        BufferedImage stored = orientation < 5
                ? painted(160, 96, (x, y) -> upright.at(
                        orientation == 2 || orientation == 3 ? 159 - x : x, orientation > 2 ? 95 - y : y))
                : painted(96, 160, (x, y) -> upright.at(
                        orientation == 6 || orientation == 7 ? 159 - y : y,
                        orientation == 7 || orientation == 8 ? 95 - x : x));
        BufferedImage print = seen(print(Pictures.withOrientation(jpeg(stored), orientation), 80));
        assertEquals(80, print.getWidth());
        assertEquals(48, print.getHeight());
        for (int quarter = 0; quarter < 4; quarter++) {
            int x = quarter % 2 == 0 ? 20 : 60;
            int y = quarter < 2 ? 12 : 36;
            assertNear(upright.at(2 * x, 2 * y), print.getRGB(x, y), 1);
        }
    }

    @Test
    void aNarrowerPictureKeepsItsWidth() throws Exception {
        BufferedImage print = seen(print(jpeg(painted(123, 77, (x, y) -> BRICK)), 480));
        assertEquals(123, print.getWidth());
        assertEquals(77, print.getHeight());
        assertNear(BRICK, print.getRGB(60, 40), 1);
        assertEquals(1, seen(print(jpeg(painted(500, 2, (x, y) -> BRICK)), 20)).getHeight());
        assertThrows(IllegalArgumentException.class, () -> print(jpeg(painted(5, 5, (x, y) -> BRICK)), 0));
    }

    /** Lines of black and white reflect half the light, whatever part of a line falls on a new pixel. */
    @Test
    void aFinePatternKeepsItsBrightness() throws Exception {
        byte[] stripes = Pictures.pngOf(painted(1000, 600, (x, y) -> (x + y) % 2 == 0 ? 0 : 0xffffff));
        int half = (int) StrictMath.round(255 * LinearRgb.encode(0.5));
        for (int width : new int[] {500, 100}) {
            assertNear(half * 0x010101, seen(print(stripes, width)).getRGB(50, 20), 0.5);
        }
        // Each new pixel covers 2.5 old ones: brightest where three whites fall on it, and half the light on average.
        BufferedImage between = seen(print(stripes, 400));
        double light = 0;
        for (int x = 0; x < 200; x++) {
            for (int y = 0; y < 200; y++) {
                light += LinearRgb.decode((between.getRGB(x, y) & 255) / 255.0);
            }
        }
        assertEquals(0.5, light / 40_000, 0.01);
    }

    /** Green of sRGB in Display P3, from the web platform's tests of CSS Color 4 (display-p3-001). */
    @Test
    void itIsInSrgb() throws Exception {
        byte[] wide = Pictures.flatPng(64, 64, 16, 2, new int[] {14_158, 32_386, 8_619},
                Pictures.profileChunk(Profiles.displayP3()));
        assertNear(0x008000, seen(print(wide, 32)).getRGB(16, 16), 0.8);
    }

    @Test
    void whatCanBeSeenThroughIsLaidOnWhite() throws Exception {
        assertNear(0xffffff, seen(print(Pictures.flatPng(64, 64, 8, 6, new int[] {0, 0, 0, 0}), 32)).getRGB(9, 9), 0.5);
        assertNear(0x7f7f7f,
                seen(print(Pictures.flatPng(64, 64, 16, 6, new int[] {0, 0, 0, 32_896}), 32)).getRGB(9, 9), 0.5);
    }

    /** A narrower copy is made of the wider one's light; it is the same to the eye as one made of the picture itself. */
    @Test
    void severalWidthsAreThoseOfEachAloneToTheEye() throws Exception {
        Path file = Pictures.write(folder, "a.jpg",
                jpeg(painted(1400, 1000, (x, y) -> BRICK + x / 7 % 16 * 0x030201 + y / 9 % 8)));
        List<Integer> widths = List.of(480, 300, 960);
        List<byte[]> prints = Darkroom.withoutCache().prints(file, widths);
        assertArrayEquals(Darkroom.withoutCache().print(file, 960), prints.get(2), "the widest is made of the picture");
        for (int i = 0; i < widths.size(); i++) {
            BufferedImage together = seen(prints.get(i));
            BufferedImage alone = seen(Darkroom.withoutCache().print(file, widths.get(i)));
            long off = 0;
            for (int y = 0; y < alone.getHeight(); y++) {
                for (int x = 0; x < alone.getWidth(); x++) {
                    off += Math.abs((alone.getRGB(x, y) >> 8 & 255) - (together.getRGB(x, y) >> 8 & 255));
                }
            }
            assertTrue(off < 1.5 * alone.getWidth() * alone.getHeight(), "of 255, on average: "
                    + (double) off / alone.getWidth() / alone.getHeight());
        }
    }

    private byte[] print(byte[] content, int width) throws Exception {
        return Darkroom.withoutCache().print(Pictures.write(folder, "made", content), width);
    }

    private static BufferedImage seen(byte[] jpeg) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(jpeg));
    }

    private static void assertNear(int expected, int actual, double tolerance) {
        double difference = ColourDifference.ciede2000(rgb(expected).toLab(), rgb(actual & 0xffffff).toLab());
        assertTrue(difference <= tolerance, () -> rgb(expected).hex() + " but " + rgb(actual & 0xffffff).hex());
    }

    private static Rgb rgb(int code) {
        return new Rgb(code >> 16, code >> 8 & 255, code & 255);
    }
}
