package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues.Row;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabTest {

    private static final List<Row> COLOURS = CheckValues.rows("lab-srgb.csv");

    @Test
    void srgbBecomesTheLabUnderD50OfTwoOtherLibraries() {
        assertEquals(62, COLOURS.size());
        for (Row row : COLOURS) {
            Lab lab = rgb(row).toLab();
            assertClose(row.lab("js_L50", "js_a50", "js_b50"), lab, 1e-4, row);
            assertClose(row.lab("cu_L50", "cu_a50", "cu_b50"), lab, 1.5e-4, row); // printed to 4 decimals, 4.2e-5 apart
        }
    }

    @Test
    void labUnderD65OfTwoOtherLibrariesBecomesTheirLabUnderD50() {
        for (Row row : COLOURS) {
            Lab adapted = Lab.ofD65(row.number("js_L65"), row.number("js_a65"), row.number("js_b65"));
            // The D65 figures are rounded themselves; adapting them may stretch that a little.
            assertClose(row.lab("js_L50", "js_a50", "js_b50"), adapted, 2e-4, row);
        }
    }

    @Test
    void labUnderD65IsThatOfTwoOtherLibraries() {
        for (Row row : COLOURS) {
            LinearRgb light = LinearRgb.of(rgb(row));
            Xyz d50 = Xyz.ofLab(light.toLab().lightness(), light.toLab().a(), light.toLab().b(), Xyz.D50);
            assertClose(row.lab("js_L65", "js_a65", "js_b65"), d50.fromD50ToD65().toLab(Xyz.D65), 1e-4, row);
            assertClose(row.lab("cu_L65", "cu_a65", "cu_b65"), d50.fromD50ToD65().toLab(Xyz.D65), 1e-4, row);
        }
    }

    @Test
    void labToTwoDecimalsBecomesTheSameHexAgainUnderBothWhites() {
        for (Row row : COLOURS) {
            Lab d50 = new Lab(hundredths(row, "js_L50"), hundredths(row, "js_a50"), hundredths(row, "js_b50"));
            Lab d65 = Lab.ofD65(hundredths(row, "js_L65"), hundredths(row, "js_a65"), hundredths(row, "js_b65"));
            assertEquals(row.text("hex"), d50.toRgb().hex());
            assertEquals(row.text("hex"), d65.toRgb().hex());
        }
    }

    /** Whites and matrices as the check file's header prints them (CSS Color 4, 8 decimals). */
    @Test
    void whitesAndMatricesAreThoseOfTheDefinitions() {
        assertEquals(0.95045593, Xyz.D65.x(), 5e-9);
        assertEquals(1.08905775, Xyz.D65.z(), 5e-9);
        assertEquals(0.96429568, Xyz.D50.x(), 5e-9);
        assertEquals(0.82510460, Xyz.D50.z(), 5e-9);
        Xyz firstColumn = new Xyz(1, 0, 0).fromD65ToD50();
        assertEquals(1.04792979, firstColumn.x(), 5e-9);
        assertEquals(0.02962781, firstColumn.y(), 5e-9);
        assertEquals(-0.00924304, firstColumn.z(), 5e-9);
        Xyz lastColumn = new Xyz(0, 0, 1).fromD65ToD50();
        assertEquals(-0.05019227, lastColumn.x(), 5e-9);
        assertEquals(-0.01707380, lastColumn.y(), 5e-9);
        assertEquals(0.75187428, lastColumn.z(), 5e-9);
    }

    /** A meter set to D65 and a book under D50: taken for one another, strong colours would be off by whole units. */
    @Test
    void figuresUnderD65AreNotFiguresUnderD50() {
        Lab blue = new Rgb(0, 0, 255).toLab();
        Row row = COLOURS.stream().filter(r -> r.text("name").equals("blue")).findFirst().orElseThrow();
        Lab misread = row.lab("js_L65", "js_a65", "js_b65");
        assertTrue(ColourDifference.ciede2000(blue, misread) > 3);
    }

    @Test
    void aGreyHasNeitherChromaNorHue() {
        for (int step = 0; step < 256; step++) {
            Lab grey = new Rgb(step, step, step).toLab();
            assertEquals(0, grey.chroma());
            assertEquals(0, grey.hueDegrees());
        }
        assertEquals(new Lab(50, 0, 0), new Lab(50, -0.0, -0.0));
        assertEquals(0, new Lab(50, -0.0, 0).hueDegrees());
    }

    @Test
    void hueRunsFromRedThroughYellowGreenAndBlue() {
        assertEquals(0, new Lab(50, 10, 0).hueDegrees());
        assertEquals(90, new Lab(50, 0, 10).hueDegrees());
        assertEquals(180, new Lab(50, -10, 0).hueDegrees());
        assertEquals(270, new Lab(50, 0, -10).hueDegrees());
        assertEquals(5, new Lab(50, 3, 4).chroma());
    }

    @Test
    void aHueAHairBelowRedIsNotTheFullCircle() {
        assertEquals(0, new Lab(50, 10, -1e-30).hueDegrees());
    }

    @Test
    void aScreenShowsItsOwnColoursAndNotTheStrongestDyes() {
        for (Row row : COLOURS) {
            assertTrue(rgb(row).toLab().displayable(), row::toString);
        }
        assertFalse(new Lab(50, 100, 80).displayable());
        assertFalse(new Lab(101, 0, 0).displayable());
    }

    @Test
    void halfAStepBeyondTheEdgeIsStillDisplayable() {
        double step = 1 / 255.0;
        assertTrue(grey(1 + 0.49 * step).displayable());
        assertFalse(grey(1 + 0.51 * step).displayable());
        assertTrue(grey(-0.49 * step).displayable());
        assertFalse(grey(-0.51 * step).displayable());
    }

    @Test
    void coloursOutsideTheScreenAreClippedChannelByChannel() {
        assertEquals("#ffffff", new Lab(120, 0, 0).toRgb().hex());
        assertEquals("#000000", new Lab(-5, 0, 0).toRgb().hex());
        assertEquals(255, new Lab(50, 120, 100).toRgb().red());
        assertEquals(0, new Lab(50, 120, 100).toRgb().green());
    }

    @Test
    void meanAndMedianAreTakenCoordinateByCoordinate() {
        List<Lab> three = List.of(new Lab(30, 9, 1), new Lab(60, 3, 2), new Lab(33, 0, 6));
        assertEquals(new Lab(41, 4, 3), Lab.mean(three));
        assertEquals(new Lab(33, 3, 2), Lab.median(three));
    }

    @Test
    void theMedianOfAnEvenCountIsTheMeanOfTheMiddleTwo() {
        assertEquals(
                new Lab(35, 1.5, 25),
                Lab.median(List.of(new Lab(90, 0, 20), new Lab(30, 1, 30), new Lab(40, 2, 90), new Lab(10, 99, -5))));
    }

    /** NIST/SEMATECH e-Handbook 7.2.5.2, twelve resistivities: median 95.1579 by every definition of quantiles. */
    @Test
    void theMedianOfThePublishedResistivitiesIsAsPublished() {
        double[] values = {
            95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682
        };
        List<Lab> readings = Arrays.stream(values).mapToObj(v -> new Lab(v, -v, v / 2)).toList();
        assertClose(new Lab(95.1579, -95.1579, 95.1579 / 2), Lab.median(readings), 5.1e-5, readings);
    }

    @Test
    void theOrderOfReadingsChangesNoDigitOfTheirMean() {
        Lab one = new Lab(0.1, 0.7, 1e16);
        Lab two = new Lab(0.2, 0.1, 1);
        Lab three = new Lab(0.3, 0.3, -1e16);
        assertEquals(Lab.mean(List.of(one, two, three)), Lab.mean(List.of(three, one, two)));
    }

    @Test
    void nothingHasNoMiddleAndNoNumberIsNoColour() {
        assertThrows(IllegalArgumentException.class, () -> Lab.mean(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Lab.median(List.of()));
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, () -> new Lab(50, Double.NaN, 0));
        assertTrue(thrown.getMessage().contains("NaN"));
    }

    private static Lab grey(double encoded) {
        double light = encoded < 0 ? encoded / 12.92 : LinearRgb.decode(encoded);
        return new LinearRgb(light, light, light).toLab();
    }

    private static double hundredths(Row row, String column) {
        return StrictMath.rint(100 * row.number(column)) / 100;
    }

    private static Rgb rgb(Row row) {
        return Rgb.read(row.text("hex")).orElseThrow();
    }

    private static void assertClose(Lab expected, Lab actual, double tolerance, Object about) {
        assertEquals(expected.lightness(), actual.lightness(), tolerance, about::toString);
        assertEquals(expected.a(), actual.a(), tolerance, about::toString);
        assertEquals(expected.b(), actual.b(), tolerance, about::toString);
    }
}
