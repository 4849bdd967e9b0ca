package fascicle.book.data;

import fascicle.book.lookup.Answer;
import fascicle.notebook.Edition;
import fascicle.notebook.Finding;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What commands answer as data, in the same figures as the book's. */
public final class Answers {

    private final Json json = new Json();

    private Answers() {}

    /**
     * Findings.
     *
     * @param findings in order
     * @return {@code {findings [{file, line, column, level, message}]}}
     */
    public static String findings(List<Finding> findings) {
        Answers answers = new Answers();
        answers.json.object(() -> answers.json.items("findings", findings, answers::finding));
        return answers.json.finished().stripTrailing();
    }

    /**
     * Entries that were looked up.
     *
     * @param found the entries in order
     * @param workings what they are of
     * @param edition what is shown of them
     * @return {@code {entries [{id, …, de00}]}}, each entry as in {@code data/book.json}
     */
    public static String recalled(List<Answer.Found> found, Workings workings, Edition edition) {
        Answers answers = new Answers();
        JsonEntry entries = new JsonEntry(answers.json, workings, edition);
        answers.json.object(() -> answers.json.items("entries", found, one -> {
            entries.write(one.entry());
            answers.json.figure("de00", one.de00());
        }));
        return answers.json.finished().stripTrailing();
    }

    private void finding(Finding finding) {
        json.text("file", finding.place().file());
        json.number("line", finding.place().line());
        json.number("column", finding.place().column());
        json.text("level", finding.level().word());
        json.text("message", finding.message());
    }

    /**
     * A recipe for another weight.
     *
     * @param scaled the quantities
     * @return {@code {of, needles_g, liquor_ml, water_ml, vessel, pots, parts, cautions}}, parts being totals of the
     *     batch, and the baths beside the dyebath
     */
    public static String scaled(Scaled scaled) {
        Answers answers = new Answers();
        answers.json.object(() -> answers.members(scaled));
        return answers.json.finished().stripTrailing();
    }

    private void members(Scaled scaled) {
        json.text("of", scaled.of());
        json.figure("needles_g", OptionalDouble.of(scaled.needlesGrams()));
        json.figure("liquor_ml", scaled.liquorMl());
        json.figure("water_ml", scaled.waterMl());
        json.text("vessel", scaled.vessel());
        json.unknown("pots");
        json.items("parts", scaled.parts(), this::part);
        json.object("presoak", scaled.presoak(), this::soak);
        json.items("before", scaled.before(), this::treatment);
        json.items("after", scaled.after(), this::treatment);
        json.items("finish", scaled.finish(), this::part);
        json.texts("cautions", List.of());
    }

    private void treatment(SoakFigures treatment) {
        json.text("as", treatment.as());
        soak(treatment);
    }

    private void soak(SoakFigures soak) {
        json.figure("water_ml", soak.waterMl());
        json.figure("liquor_ml", soak.liquorMl());
        json.items("with", soak.with(), this::part);
    }

    private void part(PartFigures part) {
        json.text("is", part.is());
        json.figure("g", part.grams());
        json.figure("ml", part.ml());
        json.text("by", part.by().name().toLowerCase(Locale.ROOT));
        json.yes("about", part.about());
        json.unknown("spoons");
        json.unknown("spoons_error_percent");
        json.object("stock", part.stockPercent().isPresent() ? Optional.of(part) : Optional.empty(), stock -> {
            json.figure("percent", stock.stockPercent());
            json.figure("ml", stock.ml());
        });
    }
}
