package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the balance cannot weigh is measured out of a solution. */
class StockToMakeTest {

    /**
     * mL of stock = g × 100 / % stock, as in "Dyes and chemicals measuring formula for laboratory" (Textile Calculation,
     * 2014-12); that ten steps of the balance are too few, and which strengths are kept: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({
        "0.8, 0.1, 1, 80", "0.99, 0.1, 1, 99", "0.05, 0.1, 1, 5", "0.04, 0.1, 0.1, 40", "4, 1, 1, 400", "0.09, 0.01, 1, 9"
    })
    void aSolutionIsMadeBelowTenStepsOfTheBalance(double grams, double step, double percent, double millilitres) {
        StockToMake stock = StockToMake.of(grams, step).orElseThrow();
        assertEquals(percent, stock.percent());
        assertEquals(millilitres, stock.millilitres(), 1e-9);
        assertEquals(grams, new Stock(stock.percent()).grams(stock.millilitres()), 1e-12, "it holds what the pot needs");
    }

    @ParameterizedTest
    @CsvSource({"1, 0.1", "45, 0.1", "0, 0.1", "10, 1"})
    void whatTheBalanceTellsIsWeighed(double grams, double step) {
        assertEquals(Optional.empty(), StockToMake.of(grams, step));
    }
}
