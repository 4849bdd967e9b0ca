package fascicle.workings;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures in the words of a finding. */
final class Say {

    private static final MathContext FOUR_FIGURES = new MathContext(4);

    private Say() {}

    /** A figure to four digits, with a point whatever the machine's language. */
    static String figure(double value) {
        return new BigDecimal(value).round(FOUR_FIGURES).stripTrailingZeros().toPlainString();
    }

    /** A volume, in mL or from a litre on in L. */
    static String volume(double millilitres) {
        return millilitres < 1000 ? figure(millilitres) + " mL" : figure(millilitres / 1000) + " L";
    }

    /** A weight, in g or from a kilogram on in kg. */
    static String weight(double grams) {
        return grams < 1000 ? figure(grams) + " g" : figure(grams / 1000) + " kg";
    }
}
