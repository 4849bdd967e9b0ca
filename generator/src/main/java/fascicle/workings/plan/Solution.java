package fascicle.workings.plan;

import fascicle.bath.Stock;
import fascicle.workings.PartFigures;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A solution that the teacher makes ahead, so that nobody in the class handles a powder.
 *
 * <p>It is made as weak as leaves it at most a tenth of its bath's liquor: of 1, 2, 5 or 10 g in 100 mL; of 1 where the
 * liquor is not known ({@code common practice, no source}). It counts as liquor, so that so much less water is poured.
 *
 * @param part what it is a solution of
 * @param grams of the thing, for the whole batch
 * @param percent its strength, g in 100 mL
 * @param millilitres of it, for the whole batch
 */
public record Solution(PartFigures part, double grams, double percent, double millilitres) {

    private static final double[] STRENGTHS = {1, 2, 5, 10};
    private static final double MOST_OF_LIQUOR = 0.1;

    /** The solution of a part whose mass is known, for a bath of so many mL, where that is known. */
    static Solution of(PartFigures part, double grams, OptionalDouble liquor) {
        double most = MOST_OF_LIQUOR * liquor.orElse(Double.POSITIVE_INFINITY);
        double percent = DoubleStream.of(STRENGTHS).filter(strength -> new Stock(strength).millilitres(grams) <= most)
                .findFirst().orElse(STRENGTHS[STRENGTHS.length - 1]);
        return new Solution(part, grams, percent, new Stock(percent).millilitres(grams));
    }
}
