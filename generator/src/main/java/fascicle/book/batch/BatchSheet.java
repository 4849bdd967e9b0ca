package fascicle.book.batch;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.ExtractFigures;
import fascicle.workings.Measuring;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to measure out for a batch, line by line, in the order in which it is read at the stove.
 *
 * @param rows the lines; the same ones, in the same order, for any weight of the same recipe
 */
public record BatchSheet(List<Row> rows) {

    private static final String LIQUOR = "batch.liquor";

    /**
     * One line.
     *
     * @param step the bath it belongs to, where that is not the dyebath
     * @param thing what is measured out
     * @param whole how much of it for the whole batch, each way to measure it by itself; none where unknown
     * @param each how much of it for each pot, where there are several; the same as {@code whole} where there is one
     * @param written the maker's words, where that is all there is
     */
    public record Row(Optional<String> step, String thing, List<String> whole, List<String> each,
            Optional<String> written) {}

    /**
     * The lines for a batch.
     *
     * @param scaled the batch
     * @param measuring what is measured with
     * @param words the book's words
     * @return its sheet
     */
    public static BatchSheet of(Scaled scaled, Measuring measuring, Words words) {
        return of(scaled, new PartWords(measuring, words), words);
    }

    /**
     * The lines for a batch, its parts in given words.
     *
     * @param scaled the batch
     * @param parts the words for parts
     * @param words the book's words
     * @return its sheet
     */
    public static BatchSheet of(Scaled scaled, PartWords parts, Words words) {
        return new Writer(scaled, parts, words).sheet();
    }

    /**
     * The lines of what is really poured and added: without the sum of it, which a hurried hand pours too.
     *
     * @param words the book's words
     * @return the other lines
     */
    public List<Row> poured(Words words) {
        return rows.stream().filter(row -> !row.thing().equals(words.say(LIQUOR))).toList();
    }

    private static final class Writer {

        private final Scaled scaled;
        private final int pots;
        private final PartWords parts;
        private final Words words;
        private final Figures figures;
        private final List<Row> rows = new ArrayList<>();

        Writer(Scaled scaled, PartWords parts, Words words) {
            this.scaled = scaled;
            this.pots = scaled.pots().orElse(1);
            this.parts = parts;
            this.words = words;
            this.figures = new Figures(words);
        }

        BatchSheet sheet() {
            liquid("fact.water", Optional.empty(), scaled.waterMl(), scaled.about(), pots);
            liquid(LIQUOR, Optional.empty(), scaled.liquorMl(), scaled.about(), pots);
            if (scaled.reused()) {
                liquid("batch.standing", Optional.empty(), scaled.standingMl().value(), scaled.standingMl().about(), pots);
            }
            scaled.parts().forEach(part -> part(Optional.empty(), part, pots));
            scaled.extract().ifPresent(this::extract);
            scaled.presoak().ifPresent(soak -> soak(words.say("step.presoak"), soak));
            scaled.before().forEach(soak -> soak(StepNames.treatment(soak.as(), words), soak));
            scaled.after().forEach(soak -> soak(StepNames.treatment(soak.as(), words), soak));
            scaled.finish().forEach(part -> part(Optional.of(words.say("step.finish")), part, 1));
            return new BatchSheet(List.copyOf(rows));
        }

        private void extract(ExtractFigures plant) {
            amount("batch.extract-plant", plant.plantGrams(), "g", plant.about());
            amount("batch.extract-water", plant.waterMl(), "ml", plant.about());
        }

        private void amount(String key, OptionalDouble whole, String unit, boolean about) {
            rows.add(new Row(Optional.empty(), words.say(key), figures.amount(whole, unit, about).stream().toList(),
                    whole.stream().mapToObj(all -> figures.amount(all / pots, unit, about)).toList(), Optional.empty()));
        }

        private void soak(String step, SoakFigures soak) {
            liquid("fact.water", Optional.of(step), soak.waterMl(), soak.about(), 1);
            soak.with().forEach(part -> part(Optional.of(step), part, 1));
        }

        private void liquid(String key, Optional<String> step, OptionalDouble ml, boolean about, int shares) {
            rows.add(new Row(step, words.say(key), figures.amount(ml, "ml", about).stream().toList(),
                    ml.stream().mapToObj(whole -> figures.amount(whole / shares, "ml", about)).toList(),
                    Optional.empty()));
        }

        private void part(Optional<String> step, PartFigures part, int shares) {
            rows.add(new Row(step, part.called(), parts.ways(part), parts.ways(part.sharedBy(shares)),
                    part.asWritten()));
        }
    }
}
