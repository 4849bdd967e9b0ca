package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The liquor of a bath. The lab dip and its stock formulas: "Dyeing calculation in lab dip" (Textile Calculation,
 * 2015-01); the twin that cannot be was computed from it by hand.
 */
class LiquorTest {

    private static final Magnitude NEEDLES = Magnitude.of(45);
    private static final Dose UNMEASURED_SPLASH = new Dose(Basis.BATCH, Magnitude.UNKNOWN, Magnitude.UNKNOWN, true);

    @Test
    void aLabDipAtOneToTenLeavesTwelveAndAHalfMillilitresToPour() {
        Liquor liquor = Liquor.filled(Magnitude.of(50), Magnitude.ZERO, Magnitude.of(5), List.of(liquid(7.5),
                liquid(2.5), liquid(10), liquid(5), liquid(10), liquid(2.5)));
        assertEquals(Magnitude.of(37.5), liquor.liquidParts());
        assertEquals(Magnitude.of(12.5), liquor.water());
        assertFalse(liquor.impossible());
    }

    @Test
    void atOneToFiveTheSameDipFits() {
        Liquor liquor = Liquor.filled(Magnitude.of(25), Magnitude.ZERO, Magnitude.of(5), List.of(liquid(7.5), liquid(15)));
        assertEquals(Magnitude.of(2.5), liquor.water());
    }

    @Test
    void twiceTheDyeAtOneToFiveCannotBe() {
        Liquor liquor = Liquor.filled(Magnitude.of(25), Magnitude.ZERO, Magnitude.of(5), List.of(liquid(15), liquid(15)));
        assertTrue(liquor.impossible());
        assertEquals(Magnitude.of(30), liquor.liquidParts());
        assertEquals(Magnitude.of(25), liquor.total());
        assertFalse(liquor.water().known(), "no water could be poured");
    }

    @Test
    void stockThatFillsTheBathToTheBrimLeavesNoWater() {
        Liquor liquor = Liquor.filled(Magnitude.of(0.3), Magnitude.ZERO, NEEDLES, List.of(liquid(0.1), liquid(0.2)));
        assertFalse(liquor.impossible(), "0.1 + 0.2 is more than 0.3 in doubles only");
        assertEquals(Magnitude.ZERO, liquor.water());
    }

    @Test
    void liquidsThatFollowNeedlesAndBathSolveOneLinearEquation() {
        Dose perGram = new Dose(Basis.NEEDLES, Magnitude.UNKNOWN, Magnitude.of(2), true);
        Dose perMillilitre = new Dose(Basis.BATH, Magnitude.UNKNOWN, Magnitude.of(0.2), true);
        Liquor liquor = Liquor.poured(Magnitude.of(300), Magnitude.ZERO, NEEDLES, List.of(liquid(10), perGram, perMillilitre));
        // (300 + 10 + 2 · 45) / (1 − 0.2) = 500, of which a fifth is 100.
        assertEquals(500, liquor.total().orThrow(), 1e-9);
        assertEquals(200, liquor.liquidParts().orThrow(), 1e-9);
    }

    @Test
    void aLiquidThatIsMoreThanEveryLitreCannotBe() {
        Dose perMillilitre = new Dose(Basis.BATH, Magnitude.of(1.2), Magnitude.of(1.2), true);
        assertTrue(Liquor.poured(Magnitude.of(300), Magnitude.ZERO, NEEDLES, List.of(perMillilitre)).impossible());
    }

    @Test
    void aSplashIsNotCountedButMakesTheLiquorRough() {
        Liquor liquor = Liquor.poured(Magnitude.of(300), Magnitude.ZERO, NEEDLES, List.of(UNMEASURED_SPLASH));
        assertEquals(Magnitude.of(300, true), liquor.total());
        assertTrue(liquor.about());
    }

    @Test
    void powderTakesNoRoom() {
        Dose powder = new Dose(Basis.BATCH, Magnitude.of(40), Magnitude.of(30), false);
        assertEquals(Magnitude.of(300), Liquor.poured(Magnitude.of(300), Magnitude.ZERO, NEEDLES, List.of(powder)).total());
    }

    @Test
    void aStandingBathIsPartOfTheLiquor() {
        Liquor topped = Liquor.poured(Magnitude.of(500), Magnitude.of(2000), NEEDLES, List.of(liquid(60)));
        assertEquals(Magnitude.of(2560), topped.total());
        Liquor filled = Liquor.filled(Magnitude.of(2560), Magnitude.of(2000), NEEDLES, List.of(liquid(60)));
        assertEquals(Magnitude.of(500), filled.water());
        Liquor tooMuchLeft = Liquor.filled(Magnitude.of(1000), Magnitude.of(2000), NEEDLES, List.of(liquid(60)));
        assertEquals(Magnitude.ZERO, tooMuchLeft.water(), "one takes no more of it than there is room for");
    }

    @Test
    void withoutWaterThereIsNoLiquor() {
        assertFalse(Liquor.poured(Magnitude.UNKNOWN, Magnitude.ZERO, NEEDLES, List.of(liquid(60))).total().known());
        assertFalse(Liquor.filled(Magnitude.UNKNOWN, Magnitude.ZERO, NEEDLES, List.of(liquid(60))).water().known());
    }

    private static Dose liquid(double millilitres) {
        return new Dose(Basis.BATCH, Magnitude.UNKNOWN, Magnitude.of(millilitres), true);
    }
}
