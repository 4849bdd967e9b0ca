package fascicle.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues;
import fascicle.colour.CheckValues.Row;
import org.junit.jupiter.api.Test;

class AcidityTest {

    private static final double TABLESPOON = 14.78676478125;

    /** A litre of pure water with an acid in it. */
    private static Dissolved acid(String acid, double moles) {
        return switch (acid) {
            case "acetic" -> new Dissolved(moles, 0, 0, 0);
            case "citric" -> new Dissolved(0, moles, 0, 0);
            case "carbonic" -> new Dissolved(0, 0, 0, moles);
            default -> throw new IllegalArgumentException(acid);
        };
    }

    @Test
    void acidsInPureWaterReadAsInHandbooks() {
        for (Row row : CheckValues.rows("/fascicle/bath/acid-in-water.csv")) {
            double ph = Acidity.of(acid(row.text("acid"), row.number("mol_per_litre")), 1).cold();
            assertEquals(row.number("ph"), ph, row.number("tolerance"), () -> row.toString());
        }
    }

    /** Dissociated of 1.0, 0.1, 0.01 and 0.001 mol/L acetic acid: 0.418, 1.316, 4.101 and 12.395 %, in exact arithmetic. */
    @Test
    void thinAceticAcidFallsApartMore() {
        double[][] known = {{1, 0.418}, {0.1, 1.316}, {0.01, 4.101}, {0.001, 12.395}};
        for (double[] row : known) {
            double hydrogen = StrictMath.pow(10, -Acidity.of(acid("acetic", row[0]), 1).cold());
            assertEquals(row[1], 100 * hydrogen / row[0], 0.0006);
        }
    }

    @Test
    void tapWaterAnswersASpoonOfVinegar() {
        for (Row row : CheckValues.rows("/fascicle/bath/vinegar-in-tap-water.csv")) {
            double litres = row.number("litres");
            Dissolved bath = Dissolved.water(litres, row.number("alkalinity_mg_per_litre"), Dissolved.PH_OF_WATER)
                    .plus(Dissolved.acetic(TABLESPOON * 0.05));
            Acidity acidity = Acidity.of(bath, litres + TABLESPOON / 1000);
            assertEquals(row.number("closed"), acidity.cold(), 0.001, () -> row.toString());
            if (!row.text("escaped").isEmpty()) {
                assertEquals(row.number("escaped"), acidity.heated(), 0.001, () -> row.toString());
            }
        }
    }

    /** 2.40 mL of 5 % vinegar answer the alkalinity of a litre at 100 mg/L: 1.9983 meq/L over 0.8326 mol/L. */
    @Test
    void vinegarThatNeutralisesALitre() {
        double charge = Dissolved.water(1, 100, 7.5).alkalinity();
        assertEquals(1.9983e-3, charge, 5e-8);
        assertEquals(charge, Dissolved.acetic(2.40 * 0.05).acetic(), 2e-6);
    }

    @Test
    void waterAloneKeepsThePhItCameWith() {
        assertEquals(7.4, Acidity.of(Dissolved.water(3, 90, 7.4), 3).cold(), 1e-9);
        assertEquals(8.1, Acidity.of(Dissolved.water(3, 250, 8.1), 3).cold(), 1e-9);
    }

    /** Rain in equilibrium with the air's carbon dioxide: pH 5.6, a textbook's figure (from memory). */
    @Test
    void rainIsATrifleSour() {
        Acidity rain = Acidity.of(Dissolved.rain(5), 5);
        assertEquals(5.6, rain.cold(), 0.05);
        assertEquals(rain.cold(), rain.heated(), 1e-9);
    }

    /**
     * A thousandth of a mole of bicarbonate to the litre, open to the air. By hand, with bicarbonate alone: pH = pK₁ + pK
     * of Henry − log p + log [HCO₃⁻] = 6.352 + 1.47 + 3.377 − 3 = 8.199 (textbooks' 8.3 is for air of 330 ppm).
     */
    @Test
    void boiledTapWaterDoesNotRunAway() {
        assertEquals(8.199, Acidity.of(Dissolved.water(1, 50.0436, 7.5), 1).heated(), 0.01);
        assertTrue(Acidity.of(Dissolved.water(1, 400, 7.5), 1).heated() < 9.2);
    }

    /** The soft water of a still is neutral, and has no carbon dioxide to lose: heating takes none in. */
    @Test
    void heatingNeverMakesABathSourer() {
        assertEquals(6.9975, Acidity.of(Dissolved.water(2, 0, 7.5), 2).heated(), 1e-4, "half of pKw 13.995");
        for (double alkalinity : new double[] {0, 1, 5, 20, 50, 200}) {
            for (double vinegar : new double[] {0, 0.001, 0.05, 1}) {
                Acidity bath = Acidity.of(Dissolved.water(1, alkalinity, 7.5).plus(Dissolved.acetic(vinegar)), 1);
                assertTrue(bath.heated() >= bath.cold() - 1e-9, alkalinity + " mg/L, " + vinegar + " g: " + bath);
            }
        }
    }

    @Test
    void moreVinegarIsNeverSweeter() {
        double before = 14;
        for (int spoons = 0; spoons < 60; spoons++) {
            double ph = Acidity.of(Dissolved.water(3, 180, 7.5).plus(Dissolved.acetic(spoons * 0.25)), 3).cold();
            assertTrue(ph < before, spoons + " spoons: " + ph);
            before = ph;
        }
    }

    @Test
    void aBathIsTheSumOfWhatIsPouredTogether() {
        Dissolved twice = Dissolved.water(2, 90, 7.4).plus(Dissolved.citric(4));
        Dissolved poured = Dissolved.water(1, 90, 7.4).plus(Dissolved.citric(2));
        assertEquals(Acidity.of(poured, 1).cold(), Acidity.of(twice, 2).cold(), 1e-9);
        assertEquals(Acidity.of(poured, 1).cold(), Acidity.of(poured.plus(poured), 2).cold(), 1e-9);
    }

    @Test
    void aBathWithoutLiquorIsACallersMistake() {
        assertThrows(IllegalArgumentException.class, () -> Acidity.of(Dissolved.NOTHING, 0));
        assertThrows(IllegalArgumentException.class, () -> Dissolved.acetic(-1));
    }
}
