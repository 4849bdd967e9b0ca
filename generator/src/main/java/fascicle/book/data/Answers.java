package fascicle.book.data;

import fascicle.book.ledger.Ledger;
import fascicle.book.lookup.Answer;
import fascicle.notebook.Edition;
import fascicle.notebook.Finding;
import fascicle.photo.Caution;
import fascicle.photo.Sample;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import fascicle.workings.acidity.AcidityFigures;
import java.util.List;
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
        JsonEntry entries = new JsonEntry(answers.json, Ledger.of(workings, edition));
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
     * @param measuring what things are measured out with
     * @param acidity how sour its bath is
     * @param cautions what to heed, in sentences
     * @return {@code {of, needles_g, liquor_ml, water_ml, standing_ml, ratio, about, vessel, pots, filled_percent,
     *     depth_cm, parts, extract, presoak, before, after, finish, each_pot, ph_estimate, ph_after_heating,
     *     ph_estimate_why, cautions}}, parts being totals of the batch, and the baths beside the dyebath. Where the
     *     batch is shared out to equal pots, {@code each_pot [{pots, quantities}]} tells, as a plan does, what goes
     *     into one: its parts have the {@code stock} that the balance asks for there, be it that the total could be
     *     weighed. The other baths are one for all pots and stand with the totals alone; where there is one pot, or
     *     nobody knows how many, the list is empty
     */
    public static String scaled(Scaled scaled, Measuring measuring, AcidityFigures acidity, List<String> cautions) {
        Answers answers = new Answers();
        BatchJson batch = new BatchJson(answers.json, measuring);
        answers.json.object(() -> {
            batch.write(scaled);
            List<Scaled> each = scaled.pots().orElse(1) > 1 ? List.of(scaled.ofOnePot()) : List.of();
            answers.json.items("each_pot", each, pot -> {
                answers.json.count("pots", scaled.pots());
                answers.json.object("quantities", () -> batch.write(pot));
            });
            answers.json.figure("ph_estimate", acidity.cold());
            answers.json.figure("ph_after_heating", acidity.heated());
            answers.json.text("ph_estimate_why", acidity.why().map(AcidityFigures.Why::word));
            answers.json.texts("cautions", cautions);
        });
        return answers.json.finished().stripTrailing();
    }
}
