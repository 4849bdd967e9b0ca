package fascicle.book.compose;

import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.page.CoverPage;
import fascicle.book.page.Hanging;
import fascicle.book.words.Words;
import fascicle.notebook.Missing;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.grid.SampleString;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The book's first page. */
public final class CoverComposer {

    private static final int NEWEST_DAYS = 6;
    private static final int MOST_ON_THE_STRING = 72;
    private static final int MOST_OF_A_DAY = 12;

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final CellComposer cells;
    private final Outcomes outcomes;

    /**
     * Composes the cover.
     *
     * @param materials what pages are made from
     */
    public CoverComposer(Materials materials) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
        this.words = materials.words();
        this.cells = new CellComposer(materials, ways);
        this.outcomes = new Outcomes(materials.words());
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
                string(), StringComposer.ways(materials, ways), asks(), doors(entries), newest(),
                materials.workings().notebook().missing().stream().map(this::absent).toList());
    }

    /** What worked, in order of hue; where that is too much for a cover, every so-manieth of it. */
    private List<Hanging> string() {
        List<EntryWorking> worked = materials.workings().entries().stream()
                .filter(EntryWorking::worked).toList();
        List<EntryWorking> hung = SampleString.HUE.of(worked);
        return cells.someOf(hung, MOST_ON_THE_STRING);
    }

    /** The ways into the look-up: the maker's first question is about her needles. */
    private List<CoverPage.ListDoor> asks() {
        return materials.addresses().leaves(Shelf.CONDITIONS).stream()
                .map(leaf -> new CoverPage.ListDoor(
                        ways.lookUp(leaf.title(), "condition", leaf.id()),
                        materials.index().group(Shelf.CONDITIONS, leaf.id()).map(Group::entries).map(List::size)))
                .toList();
    }

    private List<CoverPage.ListDoor> doors(int entries) {
        List<CoverPage.ListDoor> doors = new ArrayList<>();
        doors.add(new CoverPage.ListDoor(ways.allEntries(), Optional.of(entries)));
        for (Shelf shelf : Shelf.values()) {
            doors.add(new CoverPage.ListDoor(ways.list(shelf),
                    Optional.of(materials.addresses().leaves(shelf).size())));
        }
        ways.sideBySide().forEach(page -> doors.add(new CoverPage.ListDoor(page, Optional.empty())));
        ways.shelf().ifPresent(page -> doors.add(new CoverPage.ListDoor(page, Optional.empty())));
        return List.copyOf(doors);
    }

    private List<CoverPage.DyeDay> newest() {
        List<Leaf> days = new ArrayList<>(materials.addresses().leaves(Shelf.DAYS));
        Collections.sort(days, (one, other) -> other.id().compareTo(one.id()));
        return days.stream().limit(NEWEST_DAYS).map(this::dyeDay).toList();
    }

    private CoverPage.DyeDay dyeDay(Leaf day) {
        List<EntryWorking> pots = materials.index().group(Shelf.DAYS, day.id()).map(Group::entries).orElse(List.of())
                .stream().limit(MOST_OF_A_DAY).toList();
        return new CoverPage.DyeDay(ways.leaf(day), pots.stream().map(cells::hanging).toList(),
                pots.stream().map(pot -> new CoverPage.Pot(ways.entry(pot), outcomes.verdict(pot.entry()))).toList());
    }

    /** Only the maker reads what is wrong: the words of a finding may quote what others must not see. */
    private CoverPage.Absent absent(Missing missing) {
        return new CoverPage.Absent(missing.what(),
                materials.isStudio() ? missing.why() : List.of(words.say("missing.errors")));
    }
}
