package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * Entries that have something in common, and what is known of that: a day, a method, a lot, a dye, a condition, a
 * colour family or a year.
 *
 * @param frame what stands round it
 * @param kind what the entries have in common, in words
 * @param caution what may hurt someone
 * @param facts what is known of the thing itself
 * @param counts its entries and their dye days by verdict
 * @param swatch the median colour of what worked, or the bare lot's colour
 * @param start the recipe to start from
 * @param steps what a method does
 * @param scaling a method for other weights
 * @param notes the maker's words
 * @param rows the entries
 */
public record GroupPage(Frame frame, String kind, Optional<String> caution, List<Fact> facts, List<Fact> counts,
        Optional<Markup> swatch, Optional<Start> start, List<Step> steps, Optional<Scaling> scaling,
        List<Markup> notes, List<EntryRow> rows) implements Page {

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
    public record Start(Link entry, String days) {}
}
