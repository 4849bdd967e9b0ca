package fascicle.workings;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures in the words of a finding. */
public final class Say {

    private static final MathContext FOUR_FIGURES = new MathContext(4);

    private Say() {}

    /**
     * A figure to four digits.
     *
     * @param value any finite number
     * @return with a point, whatever the machine's language
     */
    public static String figure(double value) {
        return new BigDecimal(value).round(FOUR_FIGURES).stripTrailingZeros().toPlainString();
    }

    /**
     * A volume to four digits.
     *
     * @param millilitres how much
     * @return in mL, or from a litre on in L
     */
    public static String volume(double millilitres) {
        return millilitres < 1000 ? figure(millilitres) + " mL" : figure(millilitres / 1000) + " L";
    }

    /**
     * A weight to four digits.
     *
     * @param grams how much
     * @return in g, or from a kilogram on in kg
     */
    public static String weight(double grams) {
        return grams < 1000 ? figure(grams) + " g" : figure(grams / 1000) + " kg";
    }
}
