package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues.Row;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ColourDifferenceTest {

    private static final List<Row> PUBLISHED = CheckValues.rows("ciede2000.csv");
    private static final List<Row> RANDOM = CheckValues.rows("de00-random.csv");

    @Test
    void allThePublishedPairsOfCiede2000ComeOutAsPrinted() {
        assertEquals(34, PUBLISHED.size());
        for (Row row : PUBLISHED) {
            assertEquals(row.number("de00_published"), of(row), 1e-4, row::toString);
        }
    }

    @Test
    void thePublishedPairsComeOutToEightDecimalsOfAnotherProgram() {
        for (Row row : PUBLISHED) {
            assertEquals(row.number("de00_full"), of(row), 1e-8, row::toString);
        }
    }

    @Test
    void twoThousandRandomPairsComeOutAsInTwoOtherLibraries() {
        assertEquals(2000, RANDOM.size());
        for (Row row : RANDOM) {
            assertEquals(row.number("de00"), of(row), 1e-7, row::toString);
        }
    }

    @Test
    void theDifferenceIsTheSameBothWays() {
        for (Row row : both()) {
            assertEquals(
                    ColourDifference.ciede2000(one(row), other(row)),
                    ColourDifference.ciede2000(other(row), one(row)),
                    1e-12,
                    row::toString);
        }
    }

    /** Pairs 9 to 12 straddle a hue difference of 180°, where the formula jumps by 0.04: pair 10 lies right on it. */
    @Test
    void exactlyOppositeHuesLieOnTheNearSideOfTheJump() {
        Lab one = new Lab(50, 2.49, -0.001);
        assertEquals(7.1792, ColourDifference.ciede2000(one, new Lab(50, -2.49, 0.001)), 1e-4);
        assertEquals(7.1792, ColourDifference.ciede2000(new Lab(50, -2.49, 0.001), one), 1e-4);
        assertEquals(7.2195, ColourDifference.ciede2000(one, new Lab(50, -2.49, 0.0011)), 1e-4);
    }

    /** Exactly opposite colours have hues 180° apart but for the last bits: those must not decide. */
    @Test
    void oppositeHuesNeverFallOverTheJumpByARoundingError() {
        for (int degrees = 0; degrees < 360; degrees++) {
            double angle = StrictMath.toRadians(degrees + 0.37);
            double a = 20 * StrictMath.cos(angle);
            double b = 20 * StrictMath.sin(angle);
            double opposite = ColourDifference.ciede2000(new Lab(50, a, b), new Lab(50, -a, -b));
            double nearSide = ColourDifference.ciede2000(new Lab(50, a, b), turned(-a, -b, b < 0 ? 1e-7 : -1e-7));
            assertEquals(nearSide, opposite, 1e-5, "hue " + degrees);
        }
    }

    @Test
    void aColourDoesNotDifferFromItself() {
        assertEquals(0, ColourDifference.ciede2000(new Lab(36.2, 27.4, 20.1), new Lab(36.2, 27.4, 20.1)));
        assertEquals(0, ColourDifference.cielab(new Lab(36.2, 27.4, 20.1), new Lab(36.2, 27.4, 20.1)));
    }

    @Test
    void cielabIsTheDistanceInLab() {
        for (Row row : PUBLISHED) {
            assertEquals(row.number("de76"), ColourDifference.cielab(one(row), other(row)), 1e-4, row::toString);
        }
    }

    @Test
    void theCheapLowerBoundNeverExceedsTheDifference() {
        for (Row row : both()) {
            assertBelow(one(row), other(row));
        }
        for (ColourName one : ColourNames.all()) {
            for (ColourName other : ColourNames.all()) {
                assertBelow(one.centroid(), other.centroid());
            }
        }
    }

    @Test
    void theLowerBoundIsCloseEnoughToPassOverDistantColours() {
        Lab rust = new Lab(36.2, 27.4, 20.1);
        Lab gold = new Lab(62.0, 9.0, 48.0);
        assertTrue(ColourDifference.ciede2000AtLeast(rust, gold) > 0.8 * ColourDifference.ciede2000(rust, gold));
    }

    private static void assertBelow(Lab one, Lab other) {
        assertTrue(
                ColourDifference.ciede2000AtLeast(one, other) <= ColourDifference.ciede2000(one, other),
                () -> one + " " + other);
    }

    private static Lab turned(double a, double b, double degrees) {
        double angle = StrictMath.toRadians(degrees);
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return new Lab(50, a * cos - b * sin, a * sin + b * cos);
    }

    private static List<Row> both() {
        return Stream.concat(PUBLISHED.stream(), RANDOM.stream()).toList();
    }

    private static double of(Row row) {
        return ColourDifference.ciede2000(one(row), other(row));
    }

    private static Lab one(Row row) {
        return row.lab("L1", "a1", "b1");
    }

    private static Lab other(Row row) {
        return row.lab("L2", "a2", "b2");
    }
}
