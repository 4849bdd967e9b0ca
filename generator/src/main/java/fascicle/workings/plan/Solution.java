package fascicle.workings.plan;

import fascicle.bath.Stock;
import fascicle.bath.StockToMake;
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

    /** Bottles and jugs are marked in such steps, mL. */
    private static final double MARK = 50;

    /** What a quotient of doubles may add. */
    private static final double ROUNDING = 1e-9;

    /**
     * How much of it is made: at least what the baths take, at least what needs ten steps of the balance, and as much
     * as makes a whole number of its steps and a mark on the jug.
     *
     * @param step the balance's smallest step, g; nothing where that is not known
     * @return in mL
     */
    public double making(OptionalDouble step) {
        Stock stock = new Stock(percent);
        double finest = StrictMath.max(MARK, step.isPresent() ? stock.millilitres(step.getAsDouble()) : 0);
        double least = StrictMath.max(millilitres,
                step.isPresent() ? StockToMake.fillMillilitres(percent, step.getAsDouble()) : 0);
        return StrictMath.ceil(least / finest - ROUNDING) * finest;
    }

    /**
     * What is weighed for that.
     *
     * @param step the balance's smallest step, g; nothing where that is not known
     * @return in g
     */
    public double weighing(OptionalDouble step) {
        return new Stock(percent).grams(making(step));
    }


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
