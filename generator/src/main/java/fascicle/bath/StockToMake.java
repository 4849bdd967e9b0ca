package fascicle.bath;

import java.util.Optional;

/**
 * A stock solution that is made because the balance is too coarse for what a pot needs: a weight that the balance can
 * tell is dissolved, and a measured volume of that goes into the pot.
 *
 * <p>Below ten steps of the balance a weight may be off by more than a twentieth. A stock of one per cent is what
 * dyers keep; where less than 5 mL of it would do, a weaker one is measured better ({@code common practice, no
 * source}).
 *
 * @param percent its strength, g in 100 mL
 * @param millilitres how much of it the pot needs
 */
public record StockToMake(double percent, double millilitres) {

    /** Weights of fewer steps of the balance than this are not weighed. */
    public static final int STEPS = 10;

    /** The strength of the stock that dyers keep, g in 100 mL. */
    public static final double USUAL_PERCENT = 1;

    /** The strength of the one that is made where less than {@link #LEAST_MILLILITRES} of that would do. */
    public static final double WEAK_PERCENT = 0.1;

    /** Less than this of a stock is not measured well, mL. */
    public static final double LEAST_MILLILITRES = 5;

    /**
     * What is weighed for it: ten steps of the balance, which is as little as that tells.
     *
     * @param step the balance's smallest step, g
     * @return in g; filled up to {@link #fillMillilitres}
     */
    public static double weighGrams(double step) {
        return STEPS * step;
    }

    /**
     * What those ten steps are filled up to.
     *
     * @param percent the stock's strength
     * @param step the balance's smallest step, g
     * @return in mL
     */
    public static double fillMillilitres(double percent, double step) {
        return new Stock(percent).millilitres(weighGrams(step));
    }

    /**
     * The stock to make for a weight, where it is one that the balance cannot tell.
     *
     * @param grams of the thing; 0 or more
     * @param step the balance's smallest step, g; above 0
     * @return the stock; nothing where the balance is fine enough, or nothing is asked for
     */
    public static Optional<StockToMake> of(double grams, double step) {
        if (!(grams > 0) || grams >= STEPS * step) {
            return Optional.empty();
        }
        double usual = new Stock(USUAL_PERCENT).millilitres(grams);
        return Optional.of(usual >= LEAST_MILLILITRES ? new StockToMake(USUAL_PERCENT, usual)
                : new StockToMake(WEAK_PERCENT, new Stock(WEAK_PERCENT).millilitres(grams)));
    }
}
