package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * Entries that have something in common, and what is known of that: a day, a method, a lot, a dye, a condition, a
 * colour family or a year.
 *
 * @param frame what stands round it
 * @param word what the entries have in common, by which a theme may tell them apart: {@code method}, {@code lot} …
 * @param share on how many of its days something worked, in a sentence
 * @param lookUp the way to the look-up with this group chosen
 * @param cautions what may hurt someone, gravest first, in sentences
 * @param heed the gravest of them in a line that leads to them; nothing where there are none
 * @param facts what is known of the thing itself
 * @param swatch a lot's bare needles
 * @param photographs the photographs a lot's colours were read off
 * @param start the recipe to start from
 * @param best the entries to look at first
 * @param parted its entries by something else that they have in common
 * @param grids its swatches in rows and columns
 * @param colours the colours of what worked
 * @param plot a family's colours, or a dye's depths, against figures
 * @param steps what a method does
 * @param heating how hot a method's bath is, and for how long
 * @param clock a method's steps by the clock
 * @param scaling a method for other weights
 * @param notes the maker's words
 * @param counts its entries and their dye days by verdict
 * @param sheaves the entries
 */
public record GroupPage(Frame frame, String word, Optional<String> share, Optional<Link> lookUp,
        List<String> cautions, Optional<String> heed, List<Fact> facts, Optional<Markup> swatch,
        List<Photograph> photographs, Optional<Start> start, List<EntryNote> best, List<Parted> parted,
        List<Grid> grids, Optional<Colours> colours, Optional<Plot> plot, List<Step> steps, Optional<Plot> heating,
        Optional<Timetable> clock, Optional<Scaling> scaling, List<Markup> notes, List<Fact> counts,
        List<Sheaf> sheaves) implements Page {

    @Override
    public String template() {
        return "group.ftlh";
    }

    /**
     * The recipe to start from.
     *
     * @param entry the entry that shows it
     * @param days on how many dye days it worked, in words
     */
    public record Start(EntryNote entry, String days) {}

    /**
     * The entries by something else that they have in common.
     *
     * @param title what the table is about
     * @param by what the parts have in common, over their column
     * @param parts the parts that have entries
     */
    public record Parted(String title, String by, List<Part> parts) {}

    /**
     * One part.
     *
     * @param swatch the median colour of what worked, small
     * @param part the way to the whole group of that name
     * @param share on how many of its days something worked, in words
     * @param best the entry to look at first
     * @param start the entry that shows the recipe to start from
     * @param gist what was done in that
     * @param days on how many dye days that worked, in words
     */
    public record Part(Markup swatch, Link part, String share, Optional<Link> best, Optional<Link> start,
            Optional<String> gist, Optional<String> days) {}

    /**
     * The colours that came of it, in order of hue.
     *
     * @param colours what hangs on the string
     * @param more the way to the rest
     */
    public record Colours(List<Hanging> colours, Optional<Link> more) {}

    /**
     * Entries under a heading.
     *
     * @param place the heading's place on the page
     * @param title the heading; nothing where all entries stand together
     * @param share on how many of their days something worked, in a sentence
     * @param rows the entries, newest day first
     */
    public record Sheaf(String place, Optional<String> title, Optional<String> share, List<EntryRow> rows) {}
}
