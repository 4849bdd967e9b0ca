package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.LinearRgb;
import fascicle.colour.Rgb;
import fascicle.colour.Xyz;
import fascicle.photo.Caution.Kind;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProfileTest {

    private static final Area ALL = new Area(0, 0, 100, 100);

    /** What five decimals of a colour and of the profile's colorants, and 16 bits, may add up to. */
    private static final double ROUNDED = 0.02;

    @TempDir
    Path folder;

    /**
     * Display P3 and the same colour otherwise, from the web platform's tests of CSS Color 4: display-p3-001 and -002
     * (greens of sRGB), display-p3-006 (lch(54% 35 118)), and the table of named colours in the tests of a colour
     * library for the same module (red, orange, blue of sRGB).
     */
    @Test
    void displayP3IsThatOfTheStandardsTests() throws Exception {
        assertP3(new Rgb(0, 128, 0).toLab(), 0.21604, 0.49418, 0.13151);
        assertP3(new Rgb(0, 153, 0).toLab(), 0.26374, 0.59085, 0.16434);
        assertP3(new Lab(54, 35 * StrictMath.cos(StrictMath.toRadians(118)),
                35 * StrictMath.sin(StrictMath.toRadians(118))), 0.465377, 0.532768, 0.317713);
        assertP3(new Rgb(255, 0, 0).toLab(), 0.91749, 0.20029, 0.13856);
        assertP3(new Rgb(255, 165, 0).toLab(), 0.94965, 0.6629, 0.23297);
        assertP3(new Rgb(0, 0, 255).toLab(), 0, 0, 0.95959);
        assertP3(new Rgb(255, 255, 255).toLab(), 1, 1, 1);
    }

    private void assertP3(Lab expected, double red, double green, double blue) throws Exception {
        int[] pixel = {deep(red), deep(green), deep(blue)};
        for (byte[] profile : List.of(Profiles.displayP3(), Profiles.displayP3ByTable(1024))) {
            Lab lab = sample(Pictures.flatPng(40, 40, 16, 2, pixel, Pictures.profileChunk(profile))).lab();
            assertTrue(ColourDifference.cielab(expected, lab) < ROUNDED, () -> expected + " but " + lab);
        }
    }

    /** The JDK's colour management reckons with 16 bits, clips Z at 0, and has the white of ICC.1. */
    @Test
    void theJdksOwnReaderIsOfOneMind() {
        for (byte[] content : List.of(Profiles.displayP3(), Profiles.adobeRgb(), Profiles.displayP3ByTable(1024))) {
            Profile ours = Profile.ofIcc(content);
            ICC_ColorSpace theirs = new ICC_ColorSpace(ICC_Profile.getInstance(content));
            for (int i = 0; i < 216; i++) {
                float[] rgb = {(i % 6) / 5f, (i / 6 % 6) / 5f, (i / 36) / 5f};
                float[] xyz = theirs.toCIEXYZ(rgb);
                double[] ourXyz = ours.toXyz().times(ours.red().decode(rgb[0]), ours.green().decode(rgb[1]),
                        ours.blue().decode(rgb[2]));
                assertEquals(xyz[0] * Xyz.D50.x() / 0.9642, ourXyz[0], 1e-4);
                assertEquals(xyz[1], ourXyz[1], 1e-4);
                assertEquals(xyz[2] * Xyz.D50.z() / 0.8249, StrictMath.max(0, ourXyz[2]), 1e-4);
            }
        }
    }

    /** Red of Display P3 in sRGB: 1.0930, -0.2267, -0.1501 encoded (from memory); it must not be clipped. */
    @Test
    void coloursBeyondSrgbKeepWhatLiesBeyond() throws Exception {
        LinearRgb red = LinearRgb.of(sample(Pictures.flatPng(40, 40, 8, 2, new int[] {255, 0, 0},
                Pictures.profileChunk(Profiles.displayP3()))).lab());
        assertEquals(1.0930, LinearRgb.encode(red.red()), 2e-4);
        assertEquals(-0.2267, -LinearRgb.encode(-red.green()), 1e-3);
        assertEquals(-0.1501, -LinearRgb.encode(-red.blue()), 1e-3);
    }

    @Test
    void aJpegsProfileIsHeededToo() throws Exception {
        byte[] jpeg = Pictures.jpeg(Pictures.painted(200, 200, (x, y) -> 0xc83232));
        Lab plain = sample(jpeg).lab();
        Lab wide = sample(Pictures.withProfile(jpeg, Profiles.displayP3())).lab();
        Lab deep = sample(Pictures.flatPng(40, 40, 8, 2, new int[] {0xc8, 0x32, 0x32},
                Pictures.profileChunk(Profiles.displayP3()))).lab();
        assertTrue(ColourDifference.ciede2000(deep, wide) < 0.6, wide.toString());
        assertTrue(ColourDifference.ciede2000(plain, wide) > 1.5);
    }

    /** Its primaries but green are those of sRGB, and so is its white: equal greys, and the same blue's hue. */
    @Test
    void anOldProfileOfAnExponentIsRead() throws Exception {
        Lab grey = sample(Pictures.flatPng(40, 40, 16, 2, new int[] {32768, 32768, 32768},
                Pictures.profileChunk(Profiles.adobeRgb()))).lab();
        double light = StrictMath.pow(32768 / 65535.0, 563 / 256.0);
        assertEquals(0, ColourDifference.cielab(Lab.ofReflectance(light), grey), 1e-6);
        Lab red = sample(Pictures.flatPng(40, 40, 8, 2, new int[] {219, 0, 0},
                Pictures.profileChunk(Profiles.adobeRgb()))).lab();
        // Red of sRGB is (0.8586, 0, 0) there: the standard's own example, from memory.
        assertTrue(ColourDifference.ciede2000(new Rgb(255, 0, 0).toLab(), red) < 0.4, red.toString());
    }

    /** The five functions of parametricCurveType, worked by hand at one half (ICC.1:2022, table 68). */
    @Test
    void parametricCurvesAreThoseOfTheStandard() {
        assertHalf(0.25, Profiles.parametric(0, 2));
        assertHalf(0.16, Profiles.parametric(1, 2, 1.2, -0.2));
        assertHalf(0.19, Profiles.parametric(2, 2, 1.2, -0.2, 0.03));
        assertHalf(0.05, Profiles.parametric(3, 2, 1, 0, 0.1, 0.6));
        assertHalf(0.27, Profiles.parametric(4, 2, 1, 0, 0.1, 0.1, 0.02, 0));
    }

    private static void assertHalf(double expected, byte[] curve) {
        assertEquals(expected, Profile.ofIcc(Profiles.withCurve(curve)).red().decode(0.5), 2e-5);
    }

    @Test
    void aDamagedProfileIsTakenAsSrgbAndSaidSo() throws Exception {
        byte[] jpeg = Pictures.jpeg(Pictures.painted(1200, 900, (x, y) -> 0xc83232));
        for (byte[] damaged : List.of(new byte[60], Arrays.copyOf(Profiles.displayP3(), 200))) {
            Sample sample = sample(Pictures.withProfile(jpeg, damaged));
            assertEquals(sample(jpeg).lab(), sample.lab());
            assertEquals(List.of(Kind.NO_CARD, Kind.PROFILE_UNREADABLE),
                    sample.cautions().stream().map(Caution::kind).toList());
        }
    }

    /** PNG (third edition), 11.3.2.2: the number is light to the power of gAMA. */
    @Test
    void aPngsExponentIsHeededUnlessItSaysSrgb() throws Exception {
        int[] grey = {128, 128, 128};
        byte[] linear = Pictures.chunk("gAMA", Pictures.number(100_000));
        assertLight(128 / 255.0, Pictures.flatPng(40, 40, 8, 2, grey, linear));
        assertLight(LinearRgb.decode(128 / 255.0), Pictures.flatPng(40, 40, 8, 2, grey,
                Pictures.chunk("gAMA", Pictures.number(45_455))));
        assertLight(LinearRgb.decode(128 / 255.0),
                Pictures.flatPng(40, 40, 8, 2, grey, Pictures.chunk("sRGB", new byte[1]), linear));
    }

    private void assertLight(double light, byte[] png) throws Exception {
        assertEquals(0, ColourDifference.cielab(Lab.ofReflectance(light), sample(png).lab()), 1e-6);
    }

    private Sample sample(byte[] content) throws Exception {
        return Darkroom.withoutCache().sample(Pictures.write(folder, "made", content), ALL, List.of());
    }

    private static int deep(double share) {
        return (int) Math.round(65535 * share);
    }
}
