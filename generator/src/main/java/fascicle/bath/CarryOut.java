package fascicle.bath;

/**
 * What wet needles carry out of a bath. Salt and acid do not go into needles as dye does; they leave the bath only with
 * the liquid that clings.
 */
public final class CarryOut {

    /**
     * Liquid that clings to a gram of dry needles when they are lifted out, mL ({@code common practice, no source}).
     */
    private static final double MILLILITRES_PER_GRAM = 1;

    private CarryOut() {}

    /**
     * What clings to the needles.
     *
     * @param needles their dry weight, g
     * @return in mL
     */
    public static Magnitude clinging(Magnitude needles) {
        return needles.times(MILLILITRES_PER_GRAM);
    }

    /**
     * The share of salt and acid that stays in the pot: V₁/(V₁ + h), whatever boiled off.
     *
     * @param left V₁, what is left in the pot, mL
     * @param needles dry weight of the needles that were lifted out, g
     * @return 0 to 1
     */
    public static Magnitude stays(Magnitude left, Magnitude needles) {
        return left.over(left.plus(clinging(needles)));
    }
}
