package fascicle.book.compose;

import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.page.CoverPage;
import fascicle.book.page.GroupRow;
import fascicle.book.words.Words;
import fascicle.notebook.Missing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The book's first page. */
public final class CoverComposer {

    private static final int NEWEST_DAYS = 5;

    private final Materials materials;
    private final Ways ways;
    private final Words words;

    /**
     * Composes the cover.
     *
     * @param materials what pages are made from
     */
    public CoverComposer(Materials materials) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
        this.words = materials.words();
    }

    /**
     * The cover.
     *
     * @return what the page says
     */
    public CoverPage page() {
        int entries = materials.workings().entries().size();
        int days = materials.addresses().leaves(Shelf.DAYS).size();
        return new CoverPage(ways.cover(), materials.workings().notebook().cover().maker(),
                words.say("cover.counts", words.say("count.entries", entries), words.say("count.days", days)),
                doors(entries), newest(), materials.workings().notebook().missing().stream().map(this::absent).toList());
    }

    private List<CoverPage.ListDoor> doors(int entries) {
        List<CoverPage.ListDoor> doors = new ArrayList<>();
        doors.add(new CoverPage.ListDoor(ways.allEntries(), entries));
        for (Shelf shelf : Shelf.values()) {
            doors.add(new CoverPage.ListDoor(ways.list(shelf), materials.addresses().leaves(shelf).size()));
        }
        return List.copyOf(doors);
    }

    private List<GroupRow> newest() {
        List<Leaf> days = new ArrayList<>(materials.addresses().leaves(Shelf.DAYS));
        Collections.sort(days, (one, other) -> other.id().compareTo(one.id()));
        GroupComposer groups = new GroupComposer(materials, ways);
        return days.stream().limit(NEWEST_DAYS).map(day -> groups.row(Shelf.DAYS, day)).toList();
    }

    /** Only the maker reads what is wrong: the words of a finding may quote what others must not see. */
    private CoverPage.Absent absent(Missing missing) {
        return new CoverPage.Absent(missing.what(),
                materials.isStudio() ? missing.why() : List.of(words.say("missing.errors")));
    }
}
