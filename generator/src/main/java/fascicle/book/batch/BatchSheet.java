package fascicle.book.batch;

import fascicle.book.words.Words;
import fascicle.notebook.Part;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
     * @param thing what is measured out, and when, where it is added later
     * @param whole how much of it for the whole batch, each way to measure it by itself; none where unknown
     * @param each how much of it for each pot, where there are several; the same as {@code whole} where there is one
     * @param written the maker's words, where that is all there is
     */
    public record Row(Kind kind, Optional<Part> part, String thing, List<String> whole, List<String> each,
            Optional<String> written) {

        /**
         * Whether it is shared out to several pots.
         *
         * @return false where there is one pot, where all pots have one bath together, or where nothing is known
         */
        public boolean isShared() {
            return !whole.isEmpty() && !each.equals(whole);
        }

        /**
         * What is told of it.
         *
         * @param words the book's words
         * @return how much of it for the whole batch; what the maker wrote where that is all; else nothing
         */
        public List<String> told(Words words) {
            return whole.isEmpty() ? written.map(text -> words.say("batch.unsized", text)).stream().toList() : whole;
        }
    }

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
        return new BatchSheetWriter(scaled, parts, words).sheet();
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
}
