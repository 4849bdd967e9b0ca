package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.EntriesPage;
import fascicle.book.page.EntryRow;
import fascicle.book.page.GroupsPage;
import fascicle.book.page.Link;
import fascicle.workings.EntryWorking;
import fascicle.workings.grid.SampleString;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The lists. */
public final class ListComposer {

    private final Materials materials;
    private final Ways ways;

    /**
     * Composes lists.
     *
     * @param materials what pages are made from
     */
    public ListComposer(Materials materials) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
    }

    /**
     * The list of all entries.
     *
     * @return what the page says, newest entry first
     */
    public EntriesPage entries() {
        EntryComposer entries = new EntryComposer(materials, ways);
        List<EntryWorking> newestFirst = new ArrayList<>(materials.workings().entries());
        Collections.reverse(newestFirst);
        List<EntryRow> rows = newestFirst.stream().map(entries::row).toList();
        return new EntriesPage(ways.frame(ways.allEntries().text()), rows);
    }

    /**
     * The list of all groups of a kind.
     *
     * @param shelf the list
     * @return what the page says
     */
    public GroupsPage groups(Shelf shelf) {
        GroupComposer groups = new GroupComposer(materials, ways);
        return new GroupsPage(ways.frame(ways.list(shelf).text()),
                materials.addresses().leaves(shelf).stream().map(leaf -> groups.row(shelf, leaf)).toList(),
                sideBySide(shelf));
    }

    /** Where the swatches of a list's things lie side by side. */
    private List<Link> sideBySide(Shelf shelf) {
        Link grid = ways.top(materials.words().say("grid.title"), "grid.html");
        Link ladders = ways.top(materials.words().say("ladder.title"), "ladders.html");
        Link repeats = ways.top(materials.words().say("repeats.title"), "repeats.html");
        return switch (shelf) {
            case DYES -> List.of(grid, ladders);
            case CONDITIONS -> List.of(grid);
            case METHODS, LOTS -> List.of(repeats);
            case FAMILIES -> List.of(ways.top(materials.words().say("string.title"),
                    StringComposer.address(SampleString.HUE)));
            case YEARS -> List.of(ways.top(materials.words().say("string.title-by-year"),
                    StringComposer.address(SampleString.YEAR)));
            case DAYS -> List.of();
        };
    }
}
