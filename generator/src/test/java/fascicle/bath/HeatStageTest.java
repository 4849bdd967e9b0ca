package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Minutes above 80 °C, worked by hand. */
class HeatStageTest {

    @ParameterizedTest
    @CsvSource({
        // A rise of 68 degrees in 34 min passes 80 °C after 30 min.
        "20, 88, 34, 120, 124",
        // Falling back the same way: hot for the first 4 min, and not while it is held.
        "88, 20, 34, 120, 4",
        "85, 95, 10, 5, 15",
        "20, 80, 30, 60, 0",
        "80, 80, 30, 60, 0",
        "80, 90, 30, 0, 30",
        "90, 90, 30, 60, 90",
        "20, 90, 0, 60, 60"})
    void minutesAreCountedAlongStraightLines(double from, double to, double over, double hold, double above) {
        assertEquals(above, new HeatStage(from, to, over, hold).minutesAbove(80), 1e-12);
    }

    @Test
    void aTimeBelowNothingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new HeatStage(20, 88, -1, 0));
    }
}
