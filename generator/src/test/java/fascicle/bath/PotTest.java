package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What a pot takes, and how many it takes. */
class PotTest {

    private static final Pot BOX = new Pot(new Basin.Rectangular(40, 25), 20);

    @Test
    void aLitreIsACubicDecimetre() {
        // Resolution 6 of the 12th CGPM (1964): 1 L is 1 dm³.
        assertEquals(1000, new Pot(new Basin.Rectangular(10, 10), 10).brim(), 1e-12);
    }

    /** By hand: 20 L to the brim, so 15 L with the needles in; 100 g of needles take 200 mL. */
    @ParameterizedTest
    @CsvSource({"14800, 100, 1", "14801, 100, 2", "29600, 200, 2", "29601, 200, 3", "1, 0.1, 1", "59200, 400, 4"})
    void aBatchIsSharedOutWhereItFillsMoreThanThreeQuarters(double liquor, double needles, int pots) {
        assertEquals(OptionalInt.of(pots), BOX.potsFor(liquor, needles, 0));
    }

    @Test
    void eachPotIsFilledToTheDepthThatCoversItsNeedles() {
        // By hand: 14 L cover the needles, which leaves 1 L of room, and so 500 g for each pot.
        assertEquals(OptionalInt.of(1), BOX.potsFor(5000, 500, 14_000));
        assertEquals(OptionalInt.of(2), BOX.potsFor(5000, 501, 14_000));
    }

    @Test
    void whereTheDepthLeavesNoRoomNoNumberOfPotsHelps() {
        assertEquals(OptionalInt.empty(), BOX.potsFor(5000, 10, 15_000));
    }

    @Test
    void needlesTakeRoomToo() {
        assertEquals(0.75, BOX.filledBy(14_800, 100), 1e-12);
        assertTrue(BOX.filledBy(20_000, 10) > 1, "it runs over");
        assertEquals(7, BOX.depthOf(7000), 1e-12);
    }

    /** Longest needles by species: see needles.csv. By hand: 31.1 cm is the diagonal of a tin of 26 by 17 cm. */
    @ParameterizedTest(name = "{0}: {1} cm")
    @CsvFileSource(resources = "needles.csv", useHeadersInDisplayName = true)
    void theLongestNeedlesLieFlatOnlyInALongVessel(String species, double longest, String source, String status) {
        boolean long45 = Set.of("Pinus palustris", "Pinus roxburghii", "Pinus ponderosa").contains(species);
        assertEquals(!long45, longest <= new Basin.Rectangular(26, 17).longestLine(), species);
        assertTrue(longest <= new Basin.Oval(52, 16).longestLine(), "a fish kettle takes all of them");
    }

    @ParameterizedTest
    @CsvSource({"0", "-3", "NaN", "Infinity"})
    void aPotHasAHeight(double height) {
        assertThrows(IllegalArgumentException.class, () -> new Pot(new Basin.Round(20), height));
    }
}
