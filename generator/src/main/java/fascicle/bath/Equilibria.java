package fascicle.bath;

import java.util.function.DoubleUnaryOperator;

/**
 * The equilibria of weak acids in water at 25 °C, as if every ion were alone (no activities): below a tenth of a mole
 * to the litre this moves a pH by hundredths.
 */
final class Equilibria {

    /** Acetic acid: Harned and Ehlers (1933), as in the CRC Handbook of Chemistry and Physics ({@code from memory}). */
    private static final double ACETIC = constant(4.756);

    /**
     * Citric acid's three steps at I = 0: Bates and Pinching (1949), as in the CRC Handbook of Chemistry and Physics
     * ({@code from memory}); measured again as 3.127, 4.759 and 6.397 (“Dissociation Quotients for Citric Acid in
     * Aqueous Sodium Chloride Media to 150 °C”, Journal of Solution Chemistry, doi 10.1023/A:1024437112335).
     */
    private static final double CITRIC_FIRST = constant(3.128);
    private static final double CITRIC_SECOND = constant(4.761);
    private static final double CITRIC_THIRD = constant(6.396);

    /** Carbonic acid's two steps: Plummer and Busenberg (1982), as in PHREEQC's phreeqc.dat. */
    private static final double CARBONIC_FIRST = constant(6.352);
    private static final double CARBONIC_SECOND = constant(10.329);

    /** Water: the analytic expression of PHREEQC's phreeqc.dat at 25 °C. */
    private static final double WATER = constant(13.995);

    /** Carbon dioxide over water open to the air, mol/L: Henry's pK of 1.47 at 420 ppm ({@code from memory}). */
    private static final double CARBON_DIOXIDE = constant(1.47) * 420e-6;

    private static final double LOWEST = -2;
    private static final double HIGHEST = 16;
    private static final double CLOSE = 1e-12;

    private Equilibria() {}

    private static double constant(double exponent) {
        return StrictMath.pow(10, -exponent);
    }

    /** The pH of a litre that keeps its carbon. */
    static double phClosed(Dissolved inALitre) {
        return ph(inALitre, hydrogen -> inALitre.carbon() * carbonateCharge(hydrogen));
    }

    /** The pH of a litre open to the air, over which carbon dioxide stays the same. */
    static double phOpen(Dissolved inALitre) {
        return ph(inALitre, hydrogen -> CARBON_DIOXIDE * (CARBONIC_FIRST / hydrogen
                + 2 * CARBONIC_FIRST * CARBONIC_SECOND / (hydrogen * hydrogen)));
    }

    /** Carbon in a litre open to the air, mol. */
    static double carbonOpen(double ph) {
        double hydrogen = constant(ph);
        return CARBON_DIOXIDE * (1 + CARBONIC_FIRST / hydrogen
                + CARBONIC_FIRST * CARBONIC_SECOND / (hydrogen * hydrogen));
    }

    /**
     * Carbon in a litre of water of known alkalinity and pH, mol; none where the pH alone asks for more than all of it.
     */
    static double carbon(double alkalinity, double ph) {
        double hydrogen = constant(ph);
        double charge = alkalinity - WATER / hydrogen + hydrogen;
        return StrictMath.max(0, charge / carbonateCharge(hydrogen));
    }

    /**
     * Where charges balance: alkalinity + [H⁺] = [OH⁻] + carbonates + acetate + citrates. The left less the right grows
     * with [H⁺], so halving the span always finds the one root.
     */
    private static double ph(Dissolved inALitre, DoubleUnaryOperator carbonates) {
        double sour = LOWEST;
        double sweet = HIGHEST;
        while (sweet - sour > CLOSE) {
            double middle = (sour + sweet) / 2;
            double hydrogen = constant(middle);
            double balance = inALitre.alkalinity() + hydrogen - WATER / hydrogen - carbonates.applyAsDouble(hydrogen)
                    - inALitre.acetic() * ACETIC / (ACETIC + hydrogen)
                    - inALitre.citric() * citrateCharge(hydrogen);
            if (balance > 0) {
                sour = middle;
            } else {
                sweet = middle;
            }
        }
        return (sour + sweet) / 2;
    }

    /** Charges of a molecule of dissolved carbon. */
    private static double carbonateCharge(double hydrogen) {
        double first = CARBONIC_FIRST / hydrogen;
        double second = first * CARBONIC_SECOND / hydrogen;
        return (first + 2 * second) / (1 + first + second);
    }

    /** Charges of a molecule of citric acid. */
    private static double citrateCharge(double hydrogen) {
        double first = CITRIC_FIRST / hydrogen;
        double second = first * CITRIC_SECOND / hydrogen;
        double third = second * CITRIC_THIRD / hydrogen;
        return (first + 2 * second + 3 * third) / (1 + first + second + third);
    }
}
