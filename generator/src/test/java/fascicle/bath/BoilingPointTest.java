package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoilingPointTest {

    /** The plan's check, and water at sea level. */
    @Test
    void whereThePlanSays() {
        assertEquals(95.4, BoilingPoint.celsius(1400), 0.05);
        assertEquals(100.0, BoilingPoint.celsius(0), 0.05);
    }

    /** The standard atmosphere's own table, ISO 2533:1975 (from memory). */
    @ParameterizedTest
    @CsvSource({"-500, 107478", "0, 101325", "500, 95461", "1000, 89875", "2000, 79495", "3000, 70109", "5000, 54020",
        "8000, 35600", "9000, 30742"})
    void thePressureOfTheStandardAtmosphere(double metres, double pascals) {
        assertEquals(pascals, BoilingPoint.pascals(metres), pascals * 2e-4);
    }

    /** Saturation pressures of water in kPa, as steam tables give them (CRC Handbook; from memory): 80 °C to 100 °C. */
    @ParameterizedTest
    @CsvSource({"80, 47.41", "85, 57.87", "90, 70.18", "95, 84.61", "98, 94.39"})
    void steamTablesAgree(double celsius, double kilopascals) {
        double low = BoilingPoint.LOWEST;
        double high = BoilingPoint.HIGHEST;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (BoilingPoint.pascals(middle) > kilopascals * 1000) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(celsius, BoilingPoint.celsius(low), 0.1);
    }

    /** What cooks' and hikers' tables say, to the degree: Denver's mile, Mexico City, the top of Mont Blanc (from memory). */
    @ParameterizedTest
    @CsvSource({"1609, 95", "2240, 93", "4807, 84"})
    void knownPlaces(double metres, double celsius) {
        assertEquals(celsius, BoilingPoint.celsius(metres), 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-501, 9001, Double.NaN, Double.POSITIVE_INFINITY})
    void noWorkshopStandsThere(double metres) {
        assertThrows(IllegalArgumentException.class, () -> BoilingPoint.celsius(metres));
    }
}
