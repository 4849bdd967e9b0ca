package fascicle.book.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ticks against examples worked by hand: steps of 1, 2 or 5, at most six of them. */
class TicksTest {

    @Test
    void stepsAreRoundAndTheFinestThatFit() {
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0), Ticks.round(0.7, 25.8, 20).at());
        assertEquals(List.of(0.0, 10.0, 20.0, 30.0, 40.0), Ticks.round(4, 31.2, 20).at());
        assertEquals(List.of(-20.0, -10.0, 0.0, 10.0, 20.0, 30.0, 40.0), Ticks.round(-19.9, 30.2, 20).at());
        assertEquals(List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6), Ticks.round(0.1, 0.55, 0.1).at());
    }

    @Test
    void valuesThatLieCloseStandInTheMiddleOfTheLeastSpan() {
        assertEquals(List.of(5.0, 10.0, 15.0, 20.0, 25.0, 30.0), Ticks.round(17.1, 19.1, 20).at());
        assertEquals(List.of(-10.0, -5.0, 0.0, 5.0, 10.0), Ticks.round(0, 0, 20).at());
    }

    @Test
    void anAxisFromNoughtReachesAtLeastSoFar() {
        assertEquals(List.of(0.0, 1.0, 2.0, 3.0, 4.0, 5.0), Ticks.fromNought(1.3, 5).at());
        assertEquals(List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0), Ticks.fromNought(26, 1).at());
    }

    @Test
    void depthsDouble() {
        assertEquals(List.of("0.5", "1", "2", "4"), Ticks.depths(0.5, 4).labels());
        assertEquals(List.of("0.25", "0.5", "1", "2", "4"), Ticks.depths(0.26, 3.4).labels());
        assertEquals(List.of("2", "4"), Ticks.depths(2, 2).labels());
    }

    @Test
    void greatDepthsGoByOneTwoFive() {
        assertEquals(List.of("20", "50", "100", "200"), Ticks.depths(27, 150).labels());
        assertEquals(List.of("5", "10", "20", "50"), Ticks.depths(9, 20.5).labels());
        assertEquals(List.of("0.5", "1", "2", "5", "10", "20", "50", "100"), Ticks.depths(0.5, 100).labels());
        assertEquals(List.of("0.5", "2", "10", "50", "200"), Ticks.depths(0.5, 200).labels(), "of many, every second");
        assertEquals(List.of("100", "200"), Ticks.depths(100, 100).labels());
    }

    @Test
    void anyValuesLieWithinFewRoundTicks() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double from = (random.nextDouble() - .5) * StrictMath.exp(random.nextDouble() * 12);
            double to = from + random.nextDouble() * StrictMath.exp(random.nextDouble() * 12);
            Ticks ticks = Ticks.round(from, to, 20);
            assertTrue(ticks.low() <= from && to <= ticks.high()
                    && ticks.high() - ticks.low() >= 20, ticks + " " + from);
            assertTrue(ticks.steps() >= 2 && ticks.steps() <= 6, ticks.toString());
            double least = StrictMath.exp(random.nextDouble() * 16 - 10);
            double most = least * StrictMath.exp(random.nextDouble() * 10);
            Ticks depths = Ticks.depths(least, most);
            assertTrue(depths.low() <= least && most <= depths.high() && depths.at().size() <= 8,
                    depths + " " + least + " " + most);
        }
    }

    @Test
    void widenedOnBothSides() {
        assertEquals(List.of(-10.0, 0.0, 10.0, 20.0, 30.0), new Ticks(List.of(0.0, 10.0, 20.0)).widenedTo(4).at());
        assertThrows(IllegalArgumentException.class, () -> new Ticks(List.of(0.0, 10.0, 20.0)).widenedTo(1));
    }

    @Test
    void whatIsNoAxisIsAMistake() {
        assertThrows(IllegalArgumentException.class, () -> Ticks.round(2, 1, 20));
        assertThrows(IllegalArgumentException.class, () -> Ticks.round(Double.NaN, 1, 20));
        assertThrows(IllegalArgumentException.class, () -> Ticks.round(0, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Ticks.depths(0, 1));
        assertThrows(IllegalArgumentException.class, () -> Ticks.fromNought(-1, 5));
        assertThrows(IllegalArgumentException.class, () -> new Ticks(List.of(1.0)));
        assertThrows(IllegalArgumentException.class, () -> new Ticks(List.of(1.0, 1.0)));
    }

    @Test
    void scalesPutValuesInTheirPlaces() {
        Scale even = Scale.even(new Ticks(List.of(0.0, 20.0, 40.0)), 50, 250);
        assertEquals(50, even.at(0), 1e-9);
        assertEquals(100, even.at(10), 1e-9);
        assertEquals(250, even.at(40), 1e-9);
        Scale doubling = Scale.logarithmic(new Ticks(List.of(0.5, 1.0, 2.0, 4.0)), 0, 300);
        assertEquals(100, doubling.at(1), 1e-9);
        assertEquals(200, doubling.at(2), 1e-9);
        assertEquals(150, doubling.at(StrictMath.sqrt(2)), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new Scale(0, 1, 0, 1, true));
        assertThrows(IllegalArgumentException.class, () -> new Scale(1, 1, 0, 1, false));
    }
}
