package fascicle.book.compose;

import fascicle.book.batch.BatchWords;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.Measuring;
import fascicle.workings.plan.PotGroup;

/** What is in pots of a plan, in a line. */
final class PotLine {

    private final BatchWords batches;
    private final Words words;
    private final Figures figures;

    PotLine(Measuring measuring, Words words) {
        this.batches = new BatchWords(measuring, words);
        this.words = words;
        this.figures = new Figures(words);
    }

    /** So many pots of a kind. */
    String of(PotGroup group) {
        String in = batches.pots(group.scaled()).orElse(words.say("plan.no-vessel"));
        String grams = figures.amount(group.scaled().needlesGrams(), "g", false);
        return group.bundles() == 0 ? words.say("plan.pot-of-a-part", group.pots(), in, grams)
                : words.say("plan.pot-of", group.pots(), in, words.say("plan.bundles", group.bundles()), grams);
    }

    /** One of them. */
    String ofOne(PotGroup group) {
        return of(new PotGroup(1, group.bundles(), group.scaled()));
    }
}
