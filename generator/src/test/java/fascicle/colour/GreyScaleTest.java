package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues.Row;
import java.util.List;
import org.junit.jupiter.api.Test;

class GreyScaleTest {

    private static final List<Row> CASES = CheckValues.rows("grey-scale.csv");
    private static final List<Row> CHIPS = CheckValues.rows("grey-scale-chips.csv");
    private static final List<Row> BOUNDS = CheckValues.rows("grey-scale-bounds.csv");

    @Test
    void theWorkedCasesOfAChangeComeOutAsPrinted() {
        List<Row> cases = of(CASES, "method", "A05");
        assertEquals(12, cases.size());
        for (Row row : cases) {
            assertEquals(row.number("difference"), GreyScale.changeDifference(one(row), other(row)), 5.1e-5);
            assertEquals(row.number("value"), GreyScale.changeValue(one(row), other(row)), 5.1e-5);
            assertEquals(row.text("grade"), GreyScale.change(one(row), other(row)).toString(), row::toString);
        }
    }

    @Test
    void theWorkedCasesOfStainingComeOutAsPrinted() {
        List<Row> cases = of(CASES, "method", "A04");
        assertEquals(8, cases.size());
        for (Row row : cases) {
            assertEquals(row.number("difference"), GreyScale.stainingDifference(one(row), other(row)), 5.1e-5);
            assertEquals(row.number("value"), GreyScale.stainingValue(one(row), other(row)), 5.1e-5);
            assertEquals(row.text("grade"), GreyScale.staining(one(row), other(row)).toString(), row::toString);
        }
    }

    @Test
    void theChipsOfTheScaleForChangeGetTheirOwnGrades() {
        List<Row> chips = of(CHIPS, "scale", "A02");
        assertEquals(9, chips.size());
        for (Row chip : chips) {
            Lab changed = new Lab(50 + chip.number("difference"), 0, 0);
            assertEquals(chip.text("grade"), GreyScale.change(new Lab(50, 0, 0), changed).toString());
            // At the half grades the chips are rounded: 9.6 stands for the 9.62 of grade 1-2.
            assertEquals(figure(chip), GreyScale.changeValue(new Lab(50, 0, 0), changed), 0.035, chip::toString);
        }
    }

    @Test
    void theChipsOfTheScaleForStainingGetTheirOwnGrades() {
        List<Row> chips = of(CHIPS, "scale", "A03");
        assertEquals(9, chips.size());
        for (Row chip : chips) {
            Lab stained = new Lab(95 - chip.number("difference"), 0, 0);
            assertEquals(chip.text("grade"), GreyScale.staining(new Lab(95, 0, 0), stained).toString());
            assertEquals(figure(chip), GreyScale.stainingValue(new Lab(95, 0, 0), stained), 0.02, chip::toString);
        }
    }

    /** Those of the scale seen by eye (0.2, 0.6 to 1.0 …) leave gaps; these leave none. */
    @Test
    void theGradesOfAChangeEndWhereTheStandardEndsThem() {
        for (Row bound : of(BOUNDS, "method", "A05")) {
            double from = bound.number("from");
            double below = bound.text("below").equals("inf") ? 40 : bound.number("below");
            assertEquals(bound.text("grade"), greyChange(from));
            assertEquals(bound.text("grade"), greyChange((from + below) / 2));
            assertEquals(bound.text("grade"), greyChange(below - 1e-6));
        }
    }

    @Test
    void theGradesOfStainingLeaveNoGapBetweenThePrintedHundredths() {
        for (Row bound : of(BOUNDS, "method", "A04")) {
            double from = bound.number("from");
            assertEquals(bound.text("grade"), stainingOf(from + 0.001), bound::toString);
            assertEquals(bound.text("grade"), stainingOf(bound.number("below")), bound::toString);
            // 4.745 is printed nowhere: what is not yet 4.75 is 4-5.
            assertEquals(bound.text("grade"), stainingOf(StrictMath.min(5, bound.number("below") + 0.009)));
        }
    }

    @Test
    void noDifferenceIsGradeFive() {
        for (Lab colour : List.of(new Lab(0, 0, 0), new Lab(37, 24, 21), new Lab(95, 0, 3), new Lab(35, 5, -30))) {
            assertEquals("5", GreyScale.change(colour, colour).toString());
            assertEquals("5", GreyScale.staining(colour, colour).toString());
            assertEquals(5, GreyScale.changeValue(colour, colour));
            assertEquals(5, GreyScale.stainingValue(colour, colour));
        }
    }

    @Test
    void theWorstIsGradeOneAndNeverBelow() {
        Lab black = new Lab(0, 0, 0);
        Lab white = new Lab(100, 0, 0);
        assertEquals("1", GreyScale.change(black, white).toString());
        assertEquals(1, GreyScale.changeValue(black, white));
        assertEquals("1", GreyScale.staining(white, black).toString());
        assertEquals(0, GreyScale.stainingValue(white, black));
    }

    /** With half the hues' difference in place of their mean, blues such as the ninth and tenth case miss. */
    @Test
    void theMeanHueIsAMean() {
        Lab blue = colour(35, 30, 280);
        // Both hues are 280: D = ΔC·CM/100, all of it, by hand.
        Lab paler = colour(35, 20, 280);
        double shared = -10 * 25 / 100.0;
        double chroma = (-10 - shared) / (1 + 0.5 * 0.5);
        double hue = (0 - shared) / (1 + 0.25 * 0.25);
        assertEquals(StrictMath.sqrt(chroma * chroma + hue * hue), GreyScale.changeDifference(blue, paler), 1e-9);
    }

    /** The sign of ΔH and the mean hue both turn round where the hues lie more than half a circle apart. */
    @Test
    void nothingJumpsWhereAHueStepsOverTheFullCircle() {
        Lab original = colour(40, 30, 190);
        double before = GreyScale.changeDifference(original, colour(40, 15, 359.9999));
        double after = GreyScale.changeDifference(original, colour(40, 15, 0.0001));
        assertEquals(before, after, 1e-4);
        // And the other way round the circle.
        Lab mirrored = colour(40, 30, 10);
        assertEquals(
                GreyScale.changeDifference(mirrored, colour(40, 15, 189.9999)),
                GreyScale.changeDifference(colour(40, 15, 189.9999), mirrored),
                1e-9);
        assertEquals(
                GreyScale.changeDifference(colour(40, 15, 359.9999), original),
                GreyScale.changeDifference(colour(40, 15, 0.0001), original),
                1e-4);
    }

    /** Of two ways round, the sign of ΔH goes by the shorter; by hand for hues 190 and 5. */
    @Test
    void theSignOfTheHueDifferenceGoesByTheShorterWay() {
        Lab one = colour(40, 30, 190);
        Lab other = colour(40, 15, 5);
        double meanHue = (190 + 5) / 2.0 + 180;
        double turns = (meanHue - 280) / 30;
        double shared = -15 * 22.5 * StrictMath.exp(-turns * turns) / 100;
        double length = 2 * StrictMath.sqrt(30 * 15.0) * StrictMath.sin(StrictMath.toRadians(185.0 / 2));
        double chroma = (-15 - shared) / (1 + 0.45 * 0.45);
        double hue = (length - shared) / (1 + 0.225 * 0.225);
        assertEquals(StrictMath.sqrt(chroma * chroma + hue * hue), GreyScale.changeDifference(one, other), 1e-9);
    }

    @Test
    void aGreyBorrowsTheHueOfTheOther() {
        Lab grey = new Lab(40, 0, 0);
        double fromGrey = GreyScale.changeDifference(grey, colour(40, 20, 280));
        assertEquals(fromGrey, GreyScale.changeDifference(colour(40, 20, 280), grey), 1e-9);
        assertEquals(GreyScale.changeDifference(colour(40, 1e-7, 280), colour(40, 20, 280)), fromGrey, 1e-6);
    }

    @Test
    void coloursOfOneHueHaveNoHueDifferenceAndNoRootOfLessThanNothing() {
        for (int hue = 0; hue < 360; hue++) {
            double difference = GreyScale.changeDifference(colour(50, 20, hue), colour(50, 20.5, hue));
            assertTrue(Double.isFinite(difference) && difference < 1, "hue " + hue + ": " + difference);
        }
    }

    @Test
    void gradesAreComparedAndRead() {
        assertEquals("4-5", Grade.read("4-5").orElseThrow().toString());
        assertTrue(Grade.read("4.5").isEmpty());
        assertTrue(Grade.read("5").orElseThrow().compareTo(Grade.read("4-5").orElseThrow()) > 0);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Grade(1)).getMessage().contains("0.5"));
    }

    private static String greyChange(double difference) {
        return GreyScale.change(new Lab(50, 0, 0), new Lab(50 + difference, 0, 0)).toString();
    }

    /** The grade of greys whose SSR is this: the formulas turned round. */
    private static String stainingOf(double value) {
        double difference = value > 4 ? (5 - value) / 0.23 : StrictMath.exp((6.1 - value) / 1.45);
        Lab white = new Lab(95, 0, 0);
        Lab stained = new Lab(95 - difference, 0, 0);
        assertEquals(value, GreyScale.stainingValue(white, stained), 1e-9);
        return GreyScale.staining(white, stained).toString();
    }

    private static Lab colour(double lightness, double chroma, double hue) {
        double angle = StrictMath.toRadians(hue);
        return new Lab(lightness, chroma * StrictMath.cos(angle), chroma * StrictMath.sin(angle));
    }

    private static double figure(Row chip) {
        return Grade.read(chip.text("grade")).orElseThrow().halves() / 2.0;
    }

    private static List<Row> of(List<Row> rows, String column, String value) {
        return rows.stream().filter(row -> row.text(column).equals(value)).toList();
    }

    private static Lab one(Row row) {
        return row.lab("L1", "a1", "b1");
    }

    private static Lab other(Row row) {
        return row.lab("L2", "a2", "b2");
    }
}
