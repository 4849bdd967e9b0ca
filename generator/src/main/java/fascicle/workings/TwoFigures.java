package fascicle.workings;

import java.math.BigDecimal;
import java.math.MathContext;

/** Amounts as a dyer compares them: to two significant figures. */
public final class TwoFigures {

    /** What arithmetic on doubles may have added is taken off first. */
    private static final MathContext WITHOUT_NOISE = new MathContext(12);

    private static final MathContext TWO = new MathContext(2);

    private TwoFigures() {}

    /**
     * A number to two significant figures, half up.
     *
     * @param value any finite number
     * @return the number, equal to any other of the same two figures
     */
    public static BigDecimal of(double value) {
        return new BigDecimal(value).round(WITHOUT_NOISE).round(TWO).stripTrailingZeros();
    }
}
