package fascicle.book.page;

import java.util.List;

/**
 * The list of all groups of a kind.
 *
 * @param frame what stands round it
 * @param rows the groups
 */
public record GroupsPage(Frame frame, List<GroupRow> rows) implements Page {

    @Override
    public String template() {
        return "groups.ftlh";
    }
}
