package fascicle.bath;

/**
 * At what temperature water boils at a height.
 *
 * <p>The pressure is that of the standard atmosphere (ICAO Doc 7488, ISO 2533:1975): with 101 325 Pa and 288.15 K at
 * sea level and 6.5 K less each kilometre, p = 101 325 · (1 − 2.25577·10⁻⁵·h)^5.25588. From it follows the temperature
 * by the Antoine equation of water, log₁₀ p = A − B/(C + t), with A 8.07131, B 1730.63 and C 233.426 for mmHg and °C
 * (1 to 100 °C; at a height below the sea it is carried on by less than two degrees).
 *
 * <p>The weather moves it by about a degree, and salt raises it a little.
 */
public final class BoilingPoint {

    /** The lowest height that is reckoned with, in m. */
    public static final double LOWEST = -500;

    /** The greatest height that is reckoned with, in m. */
    public static final double HIGHEST = 9000;

    private static final double SEA_LEVEL_PASCALS = 101_325;
    private static final double PASCALS_IN_MMHG = 133.322387415;
    private static final double LAPSE = 2.25577e-5;
    private static final double EXPONENT = 5.25588;
    private static final double A = 8.07131;
    private static final double B = 1730.63;
    private static final double C = 233.426;

    private BoilingPoint() {}

    /**
     * Where water boils in an open pot.
     *
     * @param metres above the sea, −500 to 9000
     * @return in °C
     * @throws IllegalArgumentException if the height is outside that
     */
    public static double celsius(double metres) {
        return B / (A - StrictMath.log10(pascals(metres) / PASCALS_IN_MMHG)) - C;
    }

    /**
     * The pressure of the standard atmosphere.
     *
     * @param metres above the sea, −500 to 9000
     * @return in Pa
     * @throws IllegalArgumentException if the height is outside that
     */
    public static double pascals(double metres) {
        if (!(metres >= LOWEST && metres <= HIGHEST)) {
            throw new IllegalArgumentException("no boiling point is known at " + metres + " m");
        }
        return SEA_LEVEL_PASCALS * StrictMath.pow(1 - LAPSE * metres, EXPONENT);
    }
}
