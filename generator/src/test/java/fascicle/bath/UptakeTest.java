package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Uptake.Glasses;
import fascicle.bath.Uptake.Why;
import fascicle.colour.LinearRgb;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Beer and Lambert's law: A 0.301 lets half the light through, 1 a tenth, 2 a hundredth (IUPAC Gold Book, from memory). */
class UptakeTest {

    private static final OptionalDouble LITRE = OptionalDouble.of(1000);
    private static final OptionalDouble UNSAID = OptionalDouble.empty();

    /** A bath that takes light from green alone, and of that so much is left. */
    private static LinearRgb green(double light) {
        return new LinearRgb(1, light, 1);
    }

    private static Glasses seen(LinearRgb before, LinearRgb after) {
        return seen(1, before, after);
    }

    private static Glasses seen(double plain, LinearRgb before, LinearRgb after) {
        return new Glasses(Optional.of(new LinearRgb(plain, plain, plain)), before, after, 1, 1, 0.05);
    }

    private static double percent(Uptake uptake) {
        return uptake.percent().orElseThrow();
    }

    /** Half the dye takes half of A: from 50 % of the light to √50 % = 70.71 %. */
    @Test
    void aBathThatGaveUpHalfItsDye() {
        assertEquals(50, percent(Uptake.of(seen(green(0.5), green(StrictMath.sqrt(0.5))), LITRE, LITRE)), 1e-9);
    }

    /** A from 1 (a tenth of the light) to 0.301 (half of it): E = 1 − 0.301/1. */
    @Test
    void exhaustionIsOneLessTheQuotientOfAbsorbances() {
        assertEquals(69.9, percent(Uptake.of(seen(green(0.1), green(0.5)), LITRE, LITRE)), 0.01);
    }

    /** The same half of A in 800 of 1000 mL: 1 − 0.5 · 0.8 = 60 %. */
    @Test
    void whatBoiledOffIsNotTakenForDye() {
        assertEquals(60, percent(Uptake.of(seen(green(0.5), green(StrictMath.sqrt(0.5))), LITRE,
                OptionalDouble.of(800))), 1e-9);
    }

    /** Ten times diluted before and twice after, half of A: 1 − 0.5 · 2/10 = 90 %. */
    @Test
    void eachGlassMayBeDilutedByItself() {
        Glasses diluted = new Glasses(Optional.of(green(1)), green(0.5), green(StrictMath.sqrt(0.5)), 10, 2, 0.05);
        assertEquals(90, percent(Uptake.of(diluted, LITRE, LITRE)), 1e-9);
    }

    /** Everything read in a dimmer light: only the quotient to plain water counts. */
    @Test
    void theLightItselfDoesNotCount() {
        LinearRgb before = new LinearRgb(0.4, 0.2, 0.4);
        LinearRgb after = new LinearRgb(0.4, 0.4 * StrictMath.sqrt(0.5), 0.4);
        assertEquals(50, percent(Uptake.of(seen(0.4, before, after), LITRE, LITRE)), 1e-9);
    }

    /** Red lets a hundredth through (A = 2, too dark) and blue 90 % (too pale): green tells, at A from 0.6 to 0.3. */
    @Test
    void theChannelIsOneThatIsNeitherTooDarkNorTooPale() {
        LinearRgb before = new LinearRgb(0.01, 0.25, 0.9);
        LinearRgb after = new LinearRgb(0.9, 0.5, 0.01);
        assertEquals(50, percent(Uptake.of(seen(before, after), LITRE, LITRE)), 1e-9);
    }

    @Test
    void ofSeveralTheOneWithTheMostColour() {
        LinearRgb before = new LinearRgb(0.25, 0.5, 1);
        LinearRgb after = new LinearRgb(0.5, 0.5, 1);
        assertEquals(50, percent(Uptake.of(seen(before, after), LITRE, LITRE)), 1e-9);
    }

    /** The margin, by moving one intensity at a time by its error and adding the squares of what comes of it. */
    @Test
    void theMarginIsThatOfThreeErrorsTogether() {
        double tiny = 1e-6;
        double plain = 0.9;
        double before = 0.3;
        double after = 0.6;
        double here = share(plain, before, after);
        double squares = StrictMath.pow(share(plain * (1 + tiny), before, after) - here, 2)
                + StrictMath.pow(share(plain, before * (1 + tiny), after) - here, 2)
                + StrictMath.pow(share(plain, before, after * (1 + tiny)) - here, 2);
        double margin = StrictMath.sqrt(squares) / tiny * 0.05;
        Uptake uptake = Uptake.of(seen(plain, grey(before), grey(after)), LITRE, OptionalDouble.of(900));
        assertEquals(here - margin, uptake.low().orElseThrow(), 0.001);
        assertEquals(here + margin, uptake.high().orElseThrow(), 0.001);
    }

    private static double share(double plain, double before, double after) {
        return percent(Uptake.of(seen(plain, grey(before), grey(after)), LITRE, OptionalDouble.of(900)));
    }

    private static LinearRgb grey(double light) {
        return new LinearRgb(light, light, light);
    }

    @Test
    void aClearLastGlassIsAnEmptyBath() {
        Uptake uptake = Uptake.of(seen(0.95, grey(0.5), grey(0.96)), LITRE, LITRE);
        assertEquals(100, percent(uptake));
        assertEquals(100, uptake.high().orElseThrow());
    }

    @Test
    void tooDarkAndTooPaleGlassesTellNothing() {
        assertEquals(Optional.of(Why.TOO_DARK), Uptake.of(seen(grey(0.05), grey(0.5)), LITRE, LITRE).why());
        assertEquals(Optional.of(Why.TOO_DARK), Uptake.of(seen(grey(0), grey(0.5)), LITRE, LITRE).why());
        assertEquals(Optional.of(Why.TOO_PALE), Uptake.of(seen(grey(0.9), grey(0.95)), LITRE, LITRE).why());
    }

    @Test
    void aBathThatGrewDarkerIsNoUptake() {
        Uptake darker = Uptake.of(seen(grey(0.5), grey(0.3)), LITRE, LITRE);
        assertEquals(Optional.of(Why.DARKER), darker.why());
        assertTrue(darker.low().isEmpty());
        assertEquals(Optional.of(Why.DARKER), Uptake.of(seen(grey(0.5), grey(-0.01)), LITRE, LITRE).why());
    }

    /** As if nothing had boiled off, half of A is left at most: half is taken up at least, but for the margin. */
    @Test
    void withoutVolumesThereIsARange() {
        Uptake uptake = Uptake.of(seen(green(0.5), green(StrictMath.sqrt(0.5))), LITRE, UNSAID);
        assertEquals(Optional.of(Why.NO_VOLUMES), uptake.why());
        assertTrue(uptake.percent().isEmpty());
        assertTrue(uptake.low().orElseThrow() < 50 && uptake.low().orElseThrow() > 35);
        assertEquals(100, uptake.high().orElseThrow());
        assertEquals(Optional.of(Why.NO_VOLUMES), Uptake.of(seen(grey(0.5), grey(0.3)), LITRE, UNSAID).why(),
                "the bath may have boiled down");
    }

    /** Plain water is as bright as white at most: A from 0.301 to 0.1505, half is taken up at least. */
    @Test
    void withoutPlainWaterThereIsARange() {
        Glasses two = new Glasses(Optional.empty(), green(0.5), green(StrictMath.sqrt(0.5)), 1, 1, 0.05);
        Uptake uptake = Uptake.of(two, LITRE, LITRE);
        assertEquals(Optional.of(Why.NO_PLAIN_WATER), uptake.why());
        assertEquals(50, uptake.low().orElseThrow(), 1e-9);
        assertEquals(100, uptake.high().orElseThrow());
        for (double plain = StrictMath.sqrt(0.5); plain <= 1; plain += 0.01) {
            assertTrue(percent(Uptake.of(seen(plain, new LinearRgb(1, 0.4, 1), green(StrictMath.sqrt(0.5))), LITRE,
                    LITRE)) >= uptake.low().orElseThrow() - 1e-9, "whatever the water, it lies in the range");
        }
    }

    @Test
    void plainWaterDarkerThanTheBathIsNoPlainWater() {
        assertEquals(Optional.of(Why.DARK_PLAIN_WATER), Uptake.of(seen(0.4, green(0.5), green(0.9)), LITRE, LITRE).why());
        assertEquals(Optional.of(Why.DARK_PLAIN_WATER), Uptake.of(seen(0, green(0.5), green(0.9)), LITRE, LITRE).why());
    }

    /** Two readings of the same water differ by their errors, 5 % each; and a bath may let all of one colour through. */
    @Test
    void aBathAsPaleAsWaterIsTooPale() {
        LinearRgb water = new LinearRgb(0.95, 0.95, 0.95);
        assertEquals(Optional.of(Why.TOO_PALE), Uptake.of(seen(0.9, water, water), LITRE, LITRE).why());
        assertEquals(Optional.of(Why.TOO_PALE), Uptake.of(seen(0.8, green(0.7), green(0.75)), LITRE, LITRE).why());
    }
}
