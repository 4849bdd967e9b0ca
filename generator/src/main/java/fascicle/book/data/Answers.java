package fascicle.book.data;

import fascicle.book.lookup.Answer;
import fascicle.notebook.Edition;
import fascicle.notebook.Finding;
import fascicle.photo.Caution;
import fascicle.photo.Sample;
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

    /**
     * A colour read off a photograph.
     *
     * @param sample the colour
     * @return {@code {lab, hex, pixels, unlevelness_de00, uncertainty_de00, by_eye, left_over_de00, cautions}}; the
     *     uncertainty of a judgement by eye is unknown
     */
    public static String sampled(Sample sample) {
        Answers answers = new Answers();
        Json json = answers.json;
        boolean byEye = sample.against() == Sample.Against.NOTHING;
        json.object(() -> {
            json.lab("lab", Optional.of(sample.lab()));
            json.text("hex", sample.lab().toRgb().hex());
            json.number("pixels", sample.pixels());
            json.figure("unlevelness_de00", OptionalDouble.of(sample.unlevelness()));
            json.figure("uncertainty_de00", byEye ? OptionalDouble.empty() : OptionalDouble.of(sample.uncertainty()));
            json.yes("by_eye", byEye);
            json.figure("left_over_de00", sample.leftOver());
            json.texts("cautions", sample.cautions().stream().map(Caution::words).toList());
        });
        return json.finished().stripTrailing();
    }

    /**
     * What things of known colour teach of photographs.
     *
     * @param differences CIEDE2000 of each thing, as read, from what is known
     * @param uncertainty how far such photographs lie from the truth
     * @param cautions what to heed
     * @return {@code {known [{de00}], uncertainty_de00, cautions}}
     */
    public static String learnt(List<Double> differences, double uncertainty, List<String> cautions) {
        Answers answers = new Answers();
        Json json = answers.json;
        json.object(() -> {
            json.items("known", differences, difference -> json.figure("de00", OptionalDouble.of(difference)));
            json.figure("uncertainty_de00", OptionalDouble.of(uncertainty));
            json.texts("cautions", cautions);
        });
        return json.finished().stripTrailing();
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
     * @param cautions what may hurt someone, in sentences
     * @return {@code {of, needles_g, liquor_ml, water_ml, vessel, pots, parts, cautions}}, parts being totals of the
     *     batch, and the baths beside the dyebath
     */
    public static String scaled(Scaled scaled, List<String> cautions) {
        Answers answers = new Answers();
        answers.json.object(() -> answers.members(scaled, cautions));
        return answers.json.finished().stripTrailing();
    }

    private void members(Scaled scaled, List<String> cautions) {
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
        json.texts("cautions", cautions);
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
