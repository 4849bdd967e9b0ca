package fascicle.cli;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Notebook;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Says a recipe for another weight in lines for a person at the stove. */
final class ScaledWords {

    private static final String UNKNOWN = "not known";

    private final Figures figures = new Figures(Words.shipped());
    private final List<String> lines = new ArrayList<>();

    private ScaledWords() {}

    /** The lines. */
    static List<String> of(Scaled scaled, Notebook notebook) {
        ScaledWords words = new ScaledWords();
        words.say(scaled, notebook);
        return words.lines;
    }

    /** The cautions, under their heading. */
    static List<String> cautions(List<String> cautions) {
        return cautions.isEmpty() ? List.of() : Stream.concat(Stream.of(Words.shipped().say("heading.caution")),
                cautions.stream().map(caution -> "  " + caution)).toList();
    }

    private void say(Scaled scaled, Notebook notebook) {
        String title = notebook.entry(scaled.of()).map(entry -> entry.called())
                .or(() -> notebook.method(scaled.of()).map(method -> method.called())).orElse(scaled.of());
        lines.add(title + ", for " + figures.amount(scaled.needlesGrams(), "g", false) + " of dry needles");
        scaled.presoak().ifPresent(presoak -> soak("Presoak", presoak));
        scaled.before().forEach(treatment -> soak("Before" + purpose(treatment.as()), treatment));
        lines.add("Bath" + scaled.vessel().map(vessel -> ", in " + vessel).orElse(""));
        line("liquor", amount(scaled.liquorMl(), "ml", false));
        line("water", amount(scaled.waterMl(), "ml", false));
        scaled.parts().forEach(this::part);
        scaled.after().forEach(treatment -> soak("After" + purpose(treatment.as()), treatment));
        if (!scaled.finish().isEmpty()) {
            lines.add("Finish");
            scaled.finish().forEach(this::part);
        }
    }

    private static String purpose(Optional<String> as) {
        return as.map(purpose -> ": " + purpose).orElse("");
    }

    private void soak(String heading, SoakFigures soak) {
        lines.add(heading);
        line("water", amount(soak.waterMl(), "ml", soak.about()));
        soak.with().forEach(this::part);
    }

    private void part(PartFigures part) {
        boolean about = part.about() || part.spooned();
        Optional<String> grams = figures.amount(part.grams(), "g", about);
        Optional<String> millilitres = figures.amount(part.ml(), "ml", about);
        if (part.stockPercent().isPresent()) {
            String stock = Figures.atMost(part.stockPercent().getAsDouble(), 2) + " % stock";
            line(part.called(), millilitres.map(ml -> ml + " of ").orElse("") + stock + inBrackets(grams));
        } else if (grams.isPresent()) {
            line(part.called(), grams.get() + inBrackets(millilitres));
        } else {
            line(part.called(), millilitres.orElseGet(() -> UNKNOWN
                    + inBrackets(part.asWritten().map(text -> "“" + text + "”"))));
        }
    }

    private static String inBrackets(Optional<String> words) {
        return words.map(found -> " (" + found + ")").orElse("");
    }

    private String amount(OptionalDouble amount, String unit, boolean about) {
        return figures.amount(amount, unit, about).orElse(UNKNOWN);
    }

    private void line(String name, String amount) {
        lines.add("  " + name + ": " + amount);
    }
}
