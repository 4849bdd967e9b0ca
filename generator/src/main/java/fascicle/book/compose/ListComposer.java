package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.EntriesPage;
import fascicle.book.page.EntryRow;
import fascicle.book.page.GroupsPage;
import fascicle.workings.EntryWorking;
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
                materials.addresses().leaves(shelf).stream().map(leaf -> groups.row(shelf, leaf)).toList());
    }
}
