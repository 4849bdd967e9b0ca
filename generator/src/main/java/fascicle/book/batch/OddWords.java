package fascicle.book.batch;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.BatchRemark;
import fascicle.workings.Beyond;
import fascicle.workings.Excess;

/** What someone should check about a recipe before it is done, in sentences. */
public final class OddWords {

    private final Words words;
    private final Figures figures;

    /**
     * Words for odd recipes.
     *
     * @param words the book's words
     */
    public OddWords(Words words) {
        this.words = words;
        this.figures = new Figures(words);
    }

    /**
     * What is odd.
     *
     * @param odd about a recipe
     * @return a sentence
     */
    public String said(BatchRemark.Odd odd) {
        if (odd instanceof BatchRemark.Absurd absurd) {
            return said(absurd.called(), absurd.excess());
        }
        return said(((BatchRemark.Heat) odd).beyond());
    }

    /**
     * What nobody heats to or waits for.
     *
     * @param beyond what is asked for
     * @return a sentence
     */
    public String said(Beyond beyond) {
        if (beyond instanceof Beyond.TooHot hot) {
            return words.say("batch.too-hot", figures.measured(hot.asked().value()),
                    figures.temperature(hot.boil(), hot.asked().value().unit(), false));
        }
        if (beyond instanceof Beyond.Ice ice) {
            return words.say("batch.ice", figures.measured(ice.asked().value()));
        }
        Beyond.TooLong time = (Beyond.TooLong) beyond;
        return words.say("batch.too-much-time", time.asked().written(), figures.lasting(time.most()));
    }

    private String said(String thing, Excess excess) {
        if (excess instanceof Excess.OnNeedles much) {
            return words.say("batch.absurd", thing, amount(much.owf(), "percent"), amount(much.most(), "percent"));
        }
        if (excess instanceof Excess.InALitre much) {
            return words.say("batch.absurd-litre", thing, amount(much.grams(), "g"), amount(much.most(), "g"));
        }
        if (excess instanceof Excess.InAPot much) {
            return words.say("batch.absurd-pot", thing, amount(much.grams(), "g"), amount(much.most(), "g"));
        }
        if (excess instanceof Excess.Liquid much) {
            String unit = much.weighed() ? "g" : "ml";
            return words.say("batch.absurd-liquid", thing, amount(much.toAGram(), unit), amount(much.most(), unit));
        }
        if (excess instanceof Excess.InStock much) {
            return words.say("batch.absurd-stock", thing, amount(much.percent(), "percent"),
                    amount(much.most(), "percent"));
        }
        Excess.OverWater much = (Excess.OverWater) excess;
        return words.say("batch.absurd-bin", thing, amount(much.millilitres(), "ml"), amount(much.water(), "ml"));
    }

    private String amount(double amount, String unit) {
        return figures.amount(amount, unit, false);
    }
}
