package fascicle.workings.plan;

import fascicle.bath.Stock;
import fascicle.workings.PartFigures;

/**
 * A solution that the teacher makes ahead, so that nobody in the class handles a powder.
 *
 * <p>It is made as weak as leaves it at most a tenth of the liquor: of 1, 2, 5 or 10 g in 100 mL ({@code common
 * practice, no source}). It counts as liquor, so that so much less water is poured.
 *
 * @param part what it is a solution of
 * @param grams of the thing, for the whole batch
 * @param percent its strength, g in 100 mL
 * @param millilitres of it, for the whole batch
 */
public record Solution(PartFigures part, double grams, double percent, double millilitres) {

    private static final double[] STRENGTHS = {1, 2, 5, 10};
    private static final double MOST_OF_LIQUOR = 0.1;

    /** The solution of a part whose mass is known, for a bath of so many mL. */
    static Solution of(PartFigures part, double grams, double liquor) {
        double percent = STRENGTHS[STRENGTHS.length - 1];
        for (int i = STRENGTHS.length - 1; i >= 0; i--) {
            if (new Stock(STRENGTHS[i]).millilitres(grams) <= MOST_OF_LIQUOR * liquor) {
                percent = STRENGTHS[i];
            }
        }
        return new Solution(part, grams, percent, new Stock(percent).millilitres(grams));
    }
}
