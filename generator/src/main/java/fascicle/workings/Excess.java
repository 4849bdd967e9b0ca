package fascicle.workings;

/** How an amount is more than anyone weighs out or pours. */
public sealed interface Excess {

    /** What the most that one expects on the needles is the most of. */
    enum Of {
        /** A dye. */
        DYE,
        /** Anything else of which the needles or a known liquor take so much. */
        ANYTHING,
        /** What goes by the litre, where nobody knows how many litres there are. */
        ANY_LITRES
    }

    /**
     * Too much for the needles.
     *
     * @param owf what it comes to, % on the weight of the dry needles
     * @param most what one expects at most, % owf
     * @param of of what that is the most
     */
    record OnNeedles(double owf, double most, Of of) implements Excess {}

    /**
     * Too much for a litre, where nobody knows the needles.
     *
     * @param grams what it comes to, g/L
     * @param most what one expects at most, g/L
     */
    record InALitre(double grams, double most) implements Excess {}

    /**
     * Too much for any pot, where nobody knows its needles or its liquor.
     *
     * @param grams how much it is, g
     * @param most what one expects at most, g
     */
    record InAPot(double grams, double most) implements Excess {}

    /**
     * Too much of a liquid for the needles.
     *
     * @param toAGram how much of it there is to a gram of needles
     * @param most how much one expects at most
     * @param weighed whether both are in g, since nobody knows its density; else they are in mL
     * @param dye whether it is taken for a liquid dye
     */
    record Liquid(double toAGram, double most, boolean weighed, boolean dye) implements Excess {}

    /**
     * More of a liquid than of water in a bin that pots share.
     *
     * @param millilitres of the liquid
     * @param water in the bin, mL
     */
    record OverWater(double millilitres, double water) implements Excess {}

    /**
     * More in a stock solution than there is room for.
     *
     * @param percent its strength as written, g in 100 mL
     * @param most the strongest that one expects, g in 100 mL
     */
    record InStock(double percent, double most) implements Excess {}
}
