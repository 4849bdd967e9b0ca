package fascicle.book.page;

import java.util.List;

/**
 * The list of all groups of a kind.
 *
 * @param frame what stands round it
 * @param rows the groups
 * @param sideBySide where their swatches lie side by side
 */
public record GroupsPage(Frame frame, List<GroupRow> rows, List<Link> sideBySide) implements Page {

    @Override
    public String template() {
        return "groups.ftlh";
    }
}
