package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues.Row;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReflectanceTest {

    private static final List<Row> SPECTRA = CheckValues.rows("spectra.csv");
    private static final List<Row> CURVES = CheckValues.rows("reflectances.csv");
    private static final Illumination D65 = Illumination.of(column(SPECTRA, "d65"));

    private static final Matrix TO_LIGHT = primaries().inverse();

    @Test
    void observerAndDaylightMultiplyToThePublishedProductDigitByDigit() {
        double[] sums = new double[3];
        for (int band = 0; band < Illumination.BANDS; band++) {
            double[] light = TO_LIGHT.times(D65.weights(band));
            for (int i = 0; i < 3; i++) {
                sums[i] += light[i];
            }
        }
        for (int band = 0; band < Illumination.BANDS; band++) {
            double[] light = TO_LIGHT.times(D65.weights(band));
            Row row = SPECTRA.get(band);
            assertEquals(row.number("t_r"), light[0] / sums[0], 1e-10, row::toString);
            assertEquals(row.number("t_g"), light[1] / sums[1], 1e-10, row::toString);
            assertEquals(row.number("t_b"), light[2] / sums[2], 1e-10, row::toString);
        }
    }

    @Test
    void ourD50IsThatOfAnotherPackageToItsTwoDecimals() {
        double[] other = column(SPECTRA, "d50_other");
        double[] ours = powerOfD50();
        for (int band = 0; band < Illumination.BANDS; band++) {
            assertEquals(other[band], ours[band], 0.0051, "band " + band);
        }
    }

    /** CIE 15:2004, 3.1: daylight of 5003 K is S0 + M1·S1 + M2·S2, with M1 and M2 from its chromaticity. */
    @Test
    void ourD50IsTheDaylightOfTheFormula() {
        double kelvin = 5000 * 1.4388 / 1.4380;
        double x = 0.244063
                + 99.11 / kelvin
                + 2.9678e6 / (kelvin * kelvin)
                - 4.6070e9 / (kelvin * kelvin * kelvin);
        double y = -3 * x * x + 2.870 * x - 0.275;
        double below = 0.0241 + 0.2562 * x - 0.7341 * y;
        double m1 = StrictMath.rint(1000 * (-1.3515 - 1.7703 * x + 5.9114 * y) / below) / 1000;
        double m2 = StrictMath.rint(1000 * (0.0300 - 31.4424 * x + 30.0717 * y) / below) / 1000;
        double[] ours = powerOfD50();
        for (int band = 0; band < Illumination.BANDS; band++) {
            Row row = SPECTRA.get(band);
            double formula = row.number("s0") + m1 * row.number("s1") + m2 * row.number("s2");
            assertEquals(formula, ours[band], 0.01, row::toString);
        }
    }

    @Test
    void theSummedWhiteIsTheWhiteOfD50AndOfD65() {
        assertChromaticity(0.3457, 0.3585, Illumination.D50.white());
        assertChromaticity(0.3127, 0.3290, D65.white());
    }

    @Test
    void aPerfectWhiteIsWhiteAndAGreyIsGrey() {
        double[] ones = new double[31];
        Arrays.fill(ones, 1);
        assertEquals(new Lab(100, 0, 0), Reflectance.of(400, 10, ones).toLab());
        Arrays.fill(ones, 0.18);
        assertEquals(0, ColourDifference.cielab(Lab.ofReflectance(0.18), Reflectance.of(400, 10, ones).toLab()), 1e-9);
        Arrays.fill(ones, 0);
        assertEquals(new Lab(0, 0, 0), Reflectance.of(400, 10, ones).toLab());
    }

    @Test
    void theCurvesOfTwelveDyesComeBackToTheirColourUnderD65() {
        assertEquals(12, dyes().size());
        for (String dye : dyes()) {
            Lab d65 = Reflectance.of(380, 10, column(CURVES, dye)).toLab(D65, Xyz.D65);
            assertEquals("#" + dye, Lab.ofD65(d65.lightness(), d65.a(), d65.b()).toRgb().hex());
        }
    }

    /** A dye under another light is not the same XYZ adapted: measured at most 1.0006 (rust), 0.52 in the mean. */
    @Test
    void underD50TheyAreNearToTheirColour() {
        double sum = 0;
        for (String dye : dyes()) {
            Lab lab = Reflectance.of(380, 10, column(CURVES, dye)).toLab();
            double difference = ColourDifference.ciede2000(Rgb.read(dye).orElseThrow().toLab(), lab);
            assertTrue(difference < 1.01, dye + ": " + difference);
            sum += difference;
        }
        assertTrue(sum / 12 < 0.52, "mean " + sum / 12);
    }

    @Test
    void fewerReadingsTellNearlyTheSameColour() {
        for (String dye : dyes()) {
            double[] all = column(CURVES, dye);
            Lab full = Reflectance.of(380, 10, all).toLab();
            Lab handheld = Reflectance.of(400, 10, Arrays.copyOfRange(all, 2, 33)).toLab();
            assertTrue(ColourDifference.cielab(full, handheld) < 0.01, dye);
            double[] coarse = new double[16];
            for (int i = 0; i < coarse.length; i++) {
                coarse[i] = all[2 + 2 * i];
            }
            assertTrue(ColourDifference.cielab(full, Reflectance.of(400, 20, coarse).toLab()) < 0.7, dye);
        }
    }

    @Test
    void betweenCoarseReadingsALineIsDrawnAndTheEndsHoldOn() {
        double[] factors = new double[16];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = (400 + 20 * i) / 1000.0;
        }
        double[] bands = Reflectance.of(400, 20, factors).bands();
        assertArrayEquals(new double[] {0.4, 0.4, 0.4, 0.41, 0.42}, Arrays.copyOf(bands, 5), 1e-12);
        assertArrayEquals(new double[] {0.69, 0.7, 0.7, 0.7, 0.7}, Arrays.copyOfRange(bands, 31, 36), 1e-12);
    }

    @Test
    void ofFineReadingsEveryTenthNanometreIsPicked() {
        double[] factors = new double[361];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = i % 10 == 0 ? i / 1000.0 : 9;
        }
        double[] bands = Reflectance.of(370, 1, factors).bands();
        assertEquals(0.01, bands[0], 1e-12);
        assertEquals(0.36, bands[35], 1e-12);
    }

    @Test
    void wavelengthsThatTellNoSpectrumAreAMistake() {
        double[] even = even(400, 20, 16);
        assertTrue(Reflectance.covers(even));
        assertTrue(Reflectance.covers(even(420, 20, 14)));
        assertFalse(Reflectance.covers(even(430, 10, 30)));
        assertFalse(Reflectance.covers(even(400, 10, 28)));
        assertFalse(Reflectance.covers(even(400, 25, 13)));
        assertFalse(Reflectance.covers(even(700, -20, 16)));
        assertFalse(Reflectance.covers(new double[0]));
        assertFalse(Reflectance.covers(new double[] {400, 700}));
        assertThrows(IllegalArgumentException.class, () -> Reflectance.of(500, 10, new double[20]));
        IllegalArgumentException counts =
                assertThrows(IllegalArgumentException.class, () -> Reflectance.of(even, new double[15]));
        assertEquals("16 wavelengths, 15 factors", counts.getMessage());
        double[] broken = new double[16];
        broken[3] = Double.NaN;
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Reflectance.of(even, broken))
                .getMessage().contains("NaN"));
    }

    private static double[] even(double start, double step, int count) {
        double[] wavelengths = new double[count];
        for (int i = 0; i < count; i++) {
            wavelengths[i] = start + i * step;
        }
        return wavelengths;
    }

    /** Weights are observer times power; dividing by those of an even power of 1 leaves the power. */
    private static double[] powerOfD50() {
        double[] ones = new double[Illumination.BANDS];
        Arrays.fill(ones, 1);
        Illumination even = Illumination.of(ones);
        double[] power = new double[Illumination.BANDS];
        for (int band = 0; band < power.length; band++) {
            power[band] = Illumination.D50.weights(band)[1] / even.weights(band)[1];
        }
        return power;
    }

    /** Sums in steps of 10 nm lie a little off the white of the finer table. */
    private static void assertChromaticity(double x, double y, Xyz white) {
        double sum = white.x() + white.y() + white.z();
        assertEquals(x, white.x() / sum, 1.5e-4);
        assertEquals(y, white.y() / sum, 1.5e-4);
    }

    private static List<String> dyes() {
        return CURVES.get(0).cells().keySet().stream().filter(name -> !name.equals("nm")).toList();
    }

    private static double[] column(List<Row> rows, String name) {
        return rows.stream().mapToDouble(row -> row.number(name)).toArray();
    }

    /** XYZ of the primaries of IEC 61966-2-1, from their chromaticities. */
    private static Matrix primaries() {
        Matrix chromaticities = Matrix.ofColumns(
                new double[] {0.64, 0.33, 0.03}, new double[] {0.30, 0.60, 0.10}, new double[] {0.15, 0.06, 0.79});
        return chromaticities.times(Matrix.ofDiagonal(chromaticities.inverse().times(Xyz.D65.toArray())));
    }
}
