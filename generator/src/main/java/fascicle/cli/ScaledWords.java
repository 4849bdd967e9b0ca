package fascicle.cli;

import fascicle.book.batch.BatchSheet;
import fascicle.book.batch.BatchWords;
import fascicle.book.compose.AcidityComposer;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.acidity.AcidityFigures;
import java.util.ArrayList;
import java.util.List;

/** Says a recipe for another weight in lines for a person at the stove. */
final class ScaledWords {

    private final Scaled scaled;
    private final Measuring measuring;
    private final Words words = Words.shipped();
    private final List<String> lines = new ArrayList<>();

    private ScaledWords(Scaled scaled, Measuring measuring) {
        this.scaled = scaled;
        this.measuring = measuring;
    }

    /**
     * The lines.
     *
     * @param title what the recipe is called
     */
    static List<String> of(Scaled scaled, String title, Measuring measuring, AcidityFigures acidity,
            List<String> remarks, List<String> cautions) {
        ScaledWords said = new ScaledWords(scaled, measuring);
        said.say(title);
        if (!scaled.parts().isEmpty()) {
            said.lines.add(said.words.say("fact.ph-estimate") + ": " + new AcidityComposer(said.words).said(acidity));
        }
        said.list("Mind", remarks);
        said.list("Caution", cautions);
        return said.lines;
    }

    private void list(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            lines.add(heading);
            sentences.forEach(sentence -> lines.add("  " + sentence));
        }
    }

    private void say(String title) {
        lines.add(title + ", for " + new Figures(words).amount(scaled.needlesGrams(), "g", false) + " of dry needles");
        BatchWords said = new BatchWords(measuring, words);
        lines.add("Bath" + said.pots(scaled).map(pots -> ", in " + pots).orElse(""));
        BatchSheet.of(scaled, measuring, words).dyebathFirst().forEach(bath -> {
            bath.title().ifPresent(lines::add);
            bath.rows().forEach(row -> lines.add("  " + row.thing() + ": " + said.amount(row)));
        });
    }
}
