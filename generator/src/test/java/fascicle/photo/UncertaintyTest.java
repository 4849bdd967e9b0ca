package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What things of known colour teach. */
class UncertaintyTest {

    /** The 95 % point of chi-squared with three degrees of freedom is 7.815 (NIST/SEMATECH e-Handbook 1.3.6.7.4). */
    @Test
    void alikeDifferencesAreWidenedByAFixedShare() {
        assertEquals(2 * StrictMath.sqrt(7.815 / 3), Uncertainty.of(List.of(2.0, 2.0, 2.0)), 1e-12);
    }

    /** Errors drawn as they are supposed to fall: nineteen of twenty are within the figure. */
    @Test
    void nineteenOfTwentyLieWithin() {
        Random random = new Random(7);
        List<Double> differences = new ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            differences.add(ColourDifference.cielab(new Lab(50, 0, 0), new Lab(50 + 2 * random.nextGaussian(),
                    2 * random.nextGaussian(), 2 * random.nextGaussian())));
        }
        double within = Uncertainty.of(differences);
        assertEquals(0.95, differences.stream().filter(one -> one <= within).count() / 4000.0, 0.01);
    }

    @Test
    void itIsNeverSurerThanTheMeterThatReadTheThings() {
        assertEquals(1, Uncertainty.of(List.of(0.1, 0.2)));
    }

    @Test
    void nothingIsLearntFromNothing() {
        assertThrows(IllegalArgumentException.class, () -> Uncertainty.of(List.of()));
    }
}
