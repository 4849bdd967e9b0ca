package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.ajalt.colormath.Illuminant;
import com.github.ajalt.colormath.WhitePoint;
import com.github.ajalt.colormath.calculate.DifferenceKt;
import com.github.ajalt.colormath.model.LAB;
import com.github.ajalt.colormath.model.LABColorSpaces;
import com.github.ajalt.colormath.model.RGB;
import com.github.ajalt.colormath.model.XYZ;
import com.github.ajalt.colormath.model.XYZColorSpaces;
import fascicle.colour.CheckValues.Row;
import org.junit.jupiter.api.Test;

/**
 * A general-purpose colour library's opinion on sRGB, XYZ and Lab. It reckons in single precision, and adapts whites
 * with the cone matrix it is given: its own choice is not Bradford's, and lies up to 4.2 ΔE*ab away.
 */
class SecondOpinionTest {

    private static final double SINGLE_PRECISION = 1e-3;

    private static final float[] BRADFORD = {
        0.8951f, 0.2664f, -0.1614f, -0.7502f, 1.7135f, 0.0367f, 0.0389f, -0.0685f, 1.0296f
    };

    @Test
    void theOtherLibraryMeansTheSameWhites() {
        assertWhite(0.3127, 0.3290, Illuminant.INSTANCE.getD65());
        assertWhite(0.3457, 0.3585, Illuminant.INSTANCE.getD50());
    }

    @Test
    void srgbAcrossTheWholeScreenHasTheSameLabUnderBothWhites() {
        for (int red = 0; red <= 255; red += 17) {
            for (int green = 0; green <= 255; green += 17) {
                for (int blue = 0; blue <= 255; blue += 17) {
                    Lab ours = new Rgb(red, green, blue).toLab();
                    XYZ theirs = RGB.Companion.from255(red, green, blue, 255).toXYZ();
                    LAB d65 = theirs.toLAB();
                    LAB d50 = theirs.adaptTo(XYZColorSpaces.INSTANCE.getXYZ50(), BRADFORD).toLAB();
                    assertSame(ours, Lab.ofD65(d65.getL(), d65.getA(), d65.getB()));
                    assertSame(ours, new Lab(d50.getL(), d50.getA(), d50.getB()));
                }
            }
        }
    }

    @Test
    void labAcrossTheWholeScreenComesBackAsTheSameLinearLight() {
        for (int lightness = 10; lightness <= 90; lightness += 10) {
            for (int a = -40; a <= 40; a += 10) {
                for (int b = -40; b <= 60; b += 10) {
                    LinearRgb ours = LinearRgb.of(Lab.ofD65(lightness, a, b));
                    XYZ theirs = d65(lightness, a, b).toXYZ();
                    Xyz back = new Xyz(theirs.getX(), theirs.getY(), theirs.getZ());
                    assertSame(ours.toLab(), back.fromD65ToD50().toLab(Xyz.D50));
                }
            }
        }
    }

    /** Should this fail one day, the library has been mended and may be asked about differences as well. */
    @Test
    void itsColourDifferenceIsNotAskedSinceItMissesPublishedPairs() {
        int missed = 0;
        for (Row row : CheckValues.rows("ciede2000.csv")) {
            float theirs = DifferenceKt.differenceCIE2000(
                    d65(row.number("L1"), row.number("a1"), row.number("b1")),
                    d65(row.number("L2"), row.number("a2"), row.number("b2")));
            missed += StrictMath.abs(theirs - row.number("de00_published")) > 0.01 ? 1 : 0;
        }
        assertTrue(missed > 0);
    }

    private static void assertWhite(double x, double y, WhitePoint white) {
        assertEquals(x, white.getChromaticity().getX(), 1e-6);
        assertEquals(y, white.getChromaticity().getY(), 1e-6);
    }

    private static void assertSame(Lab ours, Lab theirs) {
        assertTrue(ColourDifference.cielab(ours, theirs) < SINGLE_PRECISION, () -> ours + " " + theirs);
    }

    private static LAB d65(double lightness, double a, double b) {
        return LABColorSpaces.INSTANCE.getLAB65().invoke((float) lightness, (float) a, (float) b, 1f);
    }
}
