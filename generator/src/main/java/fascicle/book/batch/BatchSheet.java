package fascicle.book.batch;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Part;
import fascicle.workings.Measuring;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What to measure out for a batch, bath by bath.
 *
 * @param baths the baths in the order of the work; the same ones with the same rows for any weight of the same recipe
 */
public record BatchSheet(List<Bath> baths) {

    /**
     * A bath. No two of a sheet have the same title.
     *
     * @param title what it is called; nothing for the dyebath
     * @param rows what it is made of
     */
    public record Bath(Optional<String> title, List<Row> rows) {

        /**
         * What is really poured and added: without the sum of it, which a hurried hand pours too.
         *
         * @return the other rows
         */
        public List<Row> poured() {
            return rows.stream().filter(row -> row.kind() == Kind.POURED).toList();
        }
    }

    /** What a row is. */
    public enum Kind {
        /** Something that goes into the bath. */
        POURED,
        /** What some of the others come to. */
        SUM
    }

    /**
     * One row.
     *
     * @param kind what it is
     * @param part the line of the recipe that it comes from; nothing for water and the like
     * @param thing what is measured out
     * @param whole how much of it for the whole batch, each way to measure it by itself; none where unknown
     * @param each how much of it for each pot, where there are several; the same as {@code whole} where there is one
     * @param written the maker's words, where that is all there is
     */
    public record Row(Kind kind, Optional<Part> part, String thing, List<String> whole, List<String> each,
            Optional<String> written) {}

    /**
     * A row, and the bath it belongs to.
     *
     * @param bath the bath's title; nothing for the dyebath
     * @param row the row
     */
    public record Line(Optional<String> bath, Row row) {

        /**
         * What is measured out, and for which bath.
         *
         * @param words the book's words
         * @return such as {@code Water, Presoak}
         */
        public String thing(Words words) {
            return bath.map(title -> words.say("scaling.in", row.thing(), title)).orElse(row.thing());
        }
    }

    /**
     * The sheet for a batch.
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
     * The sheet for a batch, its parts in given words.
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
     * The baths as they are read in one table: the dyebath, which most recipes are about, before the others.
     *
     * @return each of them once
     */
    public List<Bath> dyebathFirst() {
        return baths.stream().sorted(Comparator.comparing(bath -> bath.title().isPresent())).toList();
    }

    /**
     * All rows as they are read in one table.
     *
     * @return the dyebath's rows, then those of the other baths in the order of the work
     */
    public List<Line> lines() {
        return dyebathFirst().stream().flatMap(bath -> bath.rows().stream().map(row -> new Line(bath.title(), row)))
                .toList();
    }

    private static final class Writer {

        private final Scaled scaled;
        private final int pots;
        private final PartWords parts;
        private final Words words;
        private final Figures figures;

        Writer(Scaled scaled, PartWords parts, Words words) {
            this.scaled = scaled;
            this.pots = scaled.pots().orElse(1);
            this.parts = parts;
            this.words = words;
            this.figures = new Figures(words);
        }

        BatchSheet sheet() {
            StepNames names = StepNames.of(purposes(scaled.before()), purposes(scaled.after()), words);
            List<Bath> baths = new ArrayList<>();
            scaled.presoak().ifPresent(soak -> baths.add(soak(words.say("step.presoak"), soak)));
            soaks(baths, names.before(), scaled.before());
            baths.add(new Bath(Optional.empty(), dyebath()));
            soaks(baths, names.after(), scaled.after());
            if (!scaled.finish().isEmpty()) {
                baths.add(new Bath(Optional.of(words.say("step.finish")),
                        scaled.finish().stream().map(part -> part(part, 1)).toList()));
            }
            return new BatchSheet(List.copyOf(baths));
        }

        private static List<Optional<String>> purposes(List<SoakFigures> soaks) {
            return soaks.stream().map(SoakFigures::as).toList();
        }

        private List<Row> dyebath() {
            List<Row> rows = new ArrayList<>();
            rows.add(liquid("fact.water", scaled.waterMl(), scaled.about(), pots));
            rows.add(row(Kind.SUM, "batch.liquor", scaled.liquorMl(), "ml", scaled.about(), pots));
            if (scaled.reused()) {
                rows.add(liquid("batch.standing", scaled.standingMl(), scaled.about(), pots));
            }
            scaled.parts().forEach(part -> rows.add(part(part, pots)));
            scaled.extract().ifPresent(plant -> {
                rows.add(row(Kind.POURED, "batch.extract-plant", plant.plantGrams(), "g", plant.about(), pots));
                rows.add(liquid("batch.extract-water", plant.waterMl(), plant.about(), pots));
            });
            return List.copyOf(rows);
        }

        private void soaks(List<Bath> baths, List<String> names, List<SoakFigures> soaks) {
            for (int i = 0; i < soaks.size(); i++) {
                baths.add(soak(names.get(i), soaks.get(i)));
            }
        }

        private Bath soak(String name, SoakFigures soak) {
            return new Bath(Optional.of(name), Stream.concat(
                    Stream.of(liquid("fact.water", soak.waterMl(), soak.about(), 1)),
                    soak.with().stream().map(part -> part(part, 1))).toList());
        }

        private Row liquid(String key, OptionalDouble ml, boolean about, int shares) {
            return row(Kind.POURED, key, ml, "ml", about, shares);
        }

        private Row row(Kind kind, String key, OptionalDouble size, String unit, boolean about, int shares) {
            return new Row(kind, Optional.empty(), words.say(key), figures.amount(size, unit, about).stream().toList(),
                    size.stream().mapToObj(whole -> figures.amount(whole / shares, unit, about)).toList(),
                    Optional.empty());
        }

        private Row part(PartFigures part, int shares) {
            return new Row(Kind.POURED, Optional.of(part.part()), part.called(), parts.ways(part),
                    parts.ways(part.sharedBy(shares)), part.asWritten());
        }
    }
}
