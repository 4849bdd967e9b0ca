package fascicle.book.page;

import java.util.List;

/**
 * The list of all entries.
 *
 * @param frame what stands round it
 * @param rows the entries, newest first
 */
public record EntriesPage(Frame frame, List<EntryRow> rows) implements Page {

    @Override
    public String template() {
        return "entries.ftlh";
    }
}
