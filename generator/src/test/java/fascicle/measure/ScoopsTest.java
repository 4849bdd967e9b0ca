package fascicle.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Volumes in the fewest scoops of a kitchen's set. */
class ScoopsTest {

    /** Sizes of spoons and cups: NIST Handbook 44, Appendix C; the metric ones as sold (see units.csv). */
    @ParameterizedTest
    @CsvSource({
        "US, 2.464460796875, 1/2 tsp, 0",
        "US, 7.393382390625, 1 tsp + 1/2 tsp, 0",
        "US, 59.147059125, 1/4 cup, 0",
        "US, 19.715686375, 1 tbsp + 1 tsp, 0",
        "US, 236.5882365, 1 cup, 0",
        "US, 1182.9411825, 5 cups, 0",
        "METRIC, 20, 1 tbsp + 1 tsp, 0",
        "METRIC, 10, 2 tsp, 0",
        "METRIC, 7.3, 1 tsp + 1/2 tsp, 2.739726",
        "METRIC, 166.66666666666666, 2 × 1/3 cup, 0",
        "METRIC, 0.625, 1/8 tsp, 0",
        "METRIC, 0.5, 1/8 tsp, 25",
        "IMPERIAL, 284.130625, 1 cup, 0",
        "METRIC, 3120, 12 cups, -3.846154"
    })
    void asFewScoopsAsComeNear(Kitchen kitchen, double millilitres, String text, double error) {
        Scoops scoops = Scoops.of(millilitres, kitchen).orElseThrow();
        assertEquals(text, scoops.text());
        assertEquals(error, scoops.errorPercent(), 1e-6);
    }

    @ParameterizedTest
    @EnumSource(Kitchen.class)
    void neverFartherOffThanATwentiethFromAQuarterTeaspoonOn(Kitchen kitchen) {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            double wanted = 1.3 * StrictMath.exp(random.nextDouble() * 8);
            Scoops scoops = Scoops.of(wanted, kitchen).orElseThrow();
            assertTrue(StrictMath.abs(scoops.errorPercent()) <= Scoops.NEAR_ENOUGH_PERCENT
                    || wanted < 8, wanted + " mL: " + scoops);
            assertEquals(scoops.millilitres(), wanted * (1 + scoops.errorPercent() / 100), 1e-9);
        }
    }

    @Test
    void aScoopThatHoldsTwiceTheAmountSaysNothing() {
        assertEquals(Optional.empty(), Scoops.of(0.3, Kitchen.METRIC));
        assertEquals(Optional.empty(), Scoops.of(0, Kitchen.METRIC));
    }

    @Test
    void itsTextIsWhatTheScoopsHold() throws UnreadableQuantity {
        Scoops scoops = Scoops.of(97, Kitchen.METRIC).orElseThrow();
        double sum = 0;
        for (String scoop : scoops.text().split(" \\+ ")) {
            String[] times = scoop.split(" × ");
            sum += (times.length == 2 ? Double.parseDouble(times[0]) : 1)
                    * Quantity.read(times[times.length - 1], Dimension.VOLUME, Kitchen.METRIC).value();
        }
        assertEquals(scoops.millilitres(), sum, 1e-9);
    }
}
