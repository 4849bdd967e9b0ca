package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fascicle.colour.CheckValues.Row;
import java.util.List;
import org.junit.jupiter.api.Test;

class UnlevelnessTest {

    private static final List<Row> ROWS = CheckValues.rows("unlevelness.csv");
    private static final List<Lab> READINGS = ROWS.stream().map(row -> row.lab("L", "a", "b")).toList();

    @Test
    void theWorkedExampleOfFiveReadings() {
        assertEquals(0.3413, Unlevelness.of(READINGS), 5e-5);
    }

    @Test
    void theReadingsLieAsFarFromTheirMeanAsWorkedOut() {
        Lab mean = Lab.mean(READINGS);
        assertEquals(0, ColourDifference.cielab(new Lab(45.16, 22.30, 30.18), mean), 1e-9);
        double sum = 0;
        for (Row row : ROWS) {
            double difference = ColourDifference.cielab(mean, row.lab("L", "a", "b"));
            assertEquals(row.number("de76_from_mean"), difference, 5e-5);
            sum += difference;
        }
        assertEquals(0.4363, sum / ROWS.size(), 5e-5);
    }

    @Test
    void oneReadingIsLevelAndNoneIsAMistake() {
        assertEquals(0, Unlevelness.of(READINGS.subList(0, 1)));
        assertThrows(IllegalArgumentException.class, () -> Unlevelness.of(List.of()));
    }
}
