package fascicle.book.batch;

import fascicle.bath.Stock;
import fascicle.bath.StockToMake;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.measure.Scoops;
import fascicle.notebook.Part;
import fascicle.workings.Measuring;
import fascicle.workings.PartFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One part of a batch in the ways a person may measure it: weighed as finely as the balance tells, poured, scooped, or
 * out of a stock solution.
 */
public final class PartWords {

    private final Measuring measuring;
    private final Function<Part, OptionalDouble> solutions;
    private final Words words;
    private final Figures figures;

    /**
     * Words for parts.
     *
     * @param measuring what is measured with
     * @param words the book's words
     */
    public PartWords(Measuring measuring, Words words) {
        this(measuring, part -> OptionalDouble.empty(), words);
    }

    /**
     * Words for parts of which some come as solutions that were made ahead.
     *
     * @param measuring what is measured with
     * @param solutions the strength of the solution that a line of the recipe comes as, g in 100 mL
     * @param words the book's words
     */
    public PartWords(Measuring measuring, Function<Part, OptionalDouble> solutions, Words words) {
        this.measuring = measuring;
        this.solutions = solutions;
        this.words = words;
        this.figures = new Figures(words);
    }

    /**
     * A part's amount, each way to measure it by itself.
     *
     * @param part any part
     * @return the ways, the surest first; none where nothing is known
     */
    public List<String> ways(PartFigures part) {
        List<String> ways = new ArrayList<>();
        OptionalDouble made = solutions.apply(part.part());
        if (made.isPresent() && part.grams().isPresent()) {
            double millilitres = new Stock(made.getAsDouble()).millilitres(part.grams().getAsDouble());
            return List.of(stock(millilitres, made.getAsDouble(), part.mass().about()),
                    dissolved(part));
        }
        if (part.stockPercent().isPresent() && part.ml().isPresent()) {
            ways.add(stock(part.ml().getAsDouble(), part.stockPercent().getAsDouble(), part.mlAbout()));
            part.grams().ifPresent(grams -> ways.add(dissolved(part)));
            return List.copyOf(ways);
        }
        if (part.grams().isPresent()) {
            ways.add(weighed(part));
        }
        figures.amount(part.volume(), "ml").ifPresent(ways::add);
        measuring.scoops(part).map(this::scooped).ifPresent(ways::add);
        toMake(part).ifPresent(stock ->
                ways.add(words.say("batch.or", stock(stock.millilitres(), stock.percent(), part.mass().about()))));
        return List.copyOf(ways);
    }

    /** The stock solution to make for a part that the balance cannot weigh, unless it comes as a solution anyhow. */
    Optional<StockToMake> toMake(PartFigures part) {
        return solutions.apply(part.part()).isPresent() ? Optional.empty() : measuring.stock(part);
    }

    /** How a stock of a strength is made: as much of the thing as the balance tells. */
    String making(double percent) {
        return making("batch.make-stock", percent);
    }

    /** The same in fewer words, for a slip that lies by the pot. */
    String makingAtThePot(double percent) {
        return making("slip.make-stock", percent);
    }

    private String making(String key, double percent) {
        double step = measuring.balance().orElseThrow();
        return words.say(key, Figures.atMost(percent, 2),
                figures.amount(StockToMake.weighGrams(step), "g", false),
                figures.amount(StockToMake.fillMillilitres(percent, step), "ml", false));
    }

    private String weighed(PartFigures part) {
        OptionalDouble step = toMake(part).isPresent() ? OptionalDouble.empty() : measuring.balance();
        return figures.weighed(part.grams().orElseThrow(), step, part.mass().about());
    }

    /** What a solution brings is measured in a jug, so that the balance's steps do not bind it. */
    private String dissolved(PartFigures part) {
        return words.say("batch.in-it",
                figures.amount(part.grams().orElseThrow(), "g", part.mass().about()));
    }

    private String stock(double millilitres, double percent, boolean about) {
        return words.say("batch.stock", figures.amount(millilitres, "ml", about), Figures.atMost(percent, 2));
    }

    private String scooped(Scoops scoops) {
        String error = Figures.atMost(StrictMath.abs(scoops.errorPercent()), 1);
        if (error.equals("0")) {
            return scoops.text();
        }
        return words.say(scoops.errorPercent() > 0 ? "batch.scoops-more" : "batch.scoops-less", scoops.text(), error);
    }
}
