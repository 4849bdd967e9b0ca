package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stock solutions, against worked figures of the trade. */
class StockTest {

    /**
     * "Dyes and chemicals measuring formula for laboratory" (Textile Calculation, 2014-12); "How to calculate 0.5 %
     * dyeing shade in fabric" (2015-04); "Dyeing calculation in lab dip" (2015-01).
     */
    @ParameterizedTest
    @CsvSource({"5, 2, 0.5, 20", "5, 0.5, 1, 2.5", "5, 1.5, 1, 7.5"})
    void dyeIsPipettedOnTheWeightOfTheFibre(double fibre, double owf, double stock, double millilitres) {
        assertEquals(millilitres, new Stock(stock).millilitres(fibre * owf / 100), 1e-12);
    }

    /** Glauber's salt 40 g/L from 20 % stock, salt 25 g/L from 20 % and 20 g/L from 25 %: the same pages. */
    @ParameterizedTest
    @CsvSource({"50, 40, 20, 10", "50, 25, 20, 6.25", "50, 20, 25, 4"})
    void saltIsPipettedOnTheLiquor(double liquor, double perLitre, double stock, double millilitres) {
        assertEquals(millilitres, new Stock(stock).millilitres(liquor * perLitre / 1000), 1e-12);
        assertEquals(liquor * perLitre / 1000, new Stock(stock).grams(millilitres), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSolutionOfNothingIsNoStock(double percent) {
        assertThrows(IllegalArgumentException.class, () -> new Stock(percent));
    }
}
