package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MagnitudeTest {

    private static final Magnitude ABOUT_45 = Magnitude.of(45, true);

    @Test
    void whatRestsOnSomethingRoughIsRough() {
        assertEquals(Magnitude.of(0.9, true), ABOUT_45.times(0.02));
        assertTrue(Magnitude.of(3260).over(ABOUT_45).about());
        assertTrue(Magnitude.ONE.plus(ABOUT_45).about());
        assertTrue(Magnitude.ONE.minus(ABOUT_45).about());
        assertFalse(Magnitude.ONE.plus(Magnitude.ONE).about());
    }

    @Test
    void whatRestsOnSomethingUnknownIsUnknown() {
        assertEquals(Magnitude.UNKNOWN, ABOUT_45.times(Magnitude.UNKNOWN));
        assertEquals(Magnitude.UNKNOWN, Magnitude.UNKNOWN.plus(ABOUT_45));
        assertEquals(Magnitude.UNKNOWN, Magnitude.UNKNOWN.over(ABOUT_45));
        assertEquals(Magnitude.UNKNOWN, Magnitude.UNKNOWN.about(true), "nothing is known of it, not even roughly");
    }

    @Test
    void nothingCanBeSaidForOneOfNothing() {
        assertEquals(Magnitude.UNKNOWN, ABOUT_45.over(Magnitude.ZERO));
    }

    @Test
    void noSizeIsInfinite() {
        assertThrows(IllegalArgumentException.class, () -> Magnitude.of(Double.POSITIVE_INFINITY));
    }
}
