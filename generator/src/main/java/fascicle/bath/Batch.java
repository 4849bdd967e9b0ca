package fascicle.bath;

/**
 * What amounts follow: the needles and the liquor of one bath.
 *
 * @param needles weight of the dry needles, g
 * @param liquor all the liquid in the bath, mL
 */
public record Batch(Magnitude needles, Magnitude liquor) {

    /** A ton of needles, g, beyond which nobody dyes and figures lose their sense. */
    public static final double MOST_NEEDLES = 1_000_000;

    /** More pots than these nobody fills in a day, be there a whole class ({@code common practice, no source}). */
    public static final int MOST_POTS = 60;

    /**
     * How much there is of what an amount follows.
     *
     * @param basis what an amount follows
     * @return g of needles, mL of liquor, or one batch
     */
    public Magnitude size(Basis basis) {
        return switch (basis) {
            case NEEDLES -> needles;
            case BATH -> liquor;
            case BATCH -> Magnitude.ONE;
        };
    }
}
