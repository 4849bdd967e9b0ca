package fascicle.book.address;

import fascicle.book.figures.Figures;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Place;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.Workings;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Where the pages of one book are. Values do not change; safe for use from several threads. */
public final class Addresses {

    private final Map<String, Leaf> entries = new LinkedHashMap<>();
    private final Map<Shelf, Map<String, Leaf>> shelves = new EnumMap<>(Shelf.class);
    private final Map<String, Leaf> files = new HashMap<>();

    /**
     * Gives every page of a book its place.
     *
     * @param workings what the book is about
     * @param figures how dates are written
     */
    public Addresses(Workings workings, Figures figures) {
        for (EntryWorking working : workings.entries()) {
            Entry entry = working.entry();
            entries.put(Ids.key(entry.id()), new Leaf(entry.id(), address("entries", entry.id()), entry.called()));
        }
        for (Method method : workings.notebook().methods()) {
            thing(Shelf.METHODS, method.id(), method.called(), method.place());
        }
        for (NeedleLot lot : workings.notebook().lots()) {
            thing(Shelf.LOTS, lot.id(), lot.called(), lot.place());
        }
        for (Dye dye : workings.notebook().dyes()) {
            thing(Shelf.DYES, dye.id(), dye.called(), dye.place());
        }
        for (Shelf shelf : Shelf.values()) {
            for (Group group : workings.groups(shelf.kind())) {
                add(shelf, group.id(), title(shelf, group, figures));
            }
        }
        for (EntryWorking working : workings.entries()) {
            file(working.entry());
        }
    }

    /** A thing has its page whether entries use it or not. */
    private void thing(Shelf shelf, String id, String title, Place place) {
        files.put(Ids.key(place.file()), add(shelf, id, title));
    }

    private Leaf add(Shelf shelf, String id, String title) {
        return shelves.computeIfAbsent(shelf, unused -> new LinkedHashMap<>())
                .computeIfAbsent(Ids.key(id), unused -> new Leaf(id, address(shelf.word(), id), title));
    }

    /** A file with one pot leads to its entry, a file with several to their day. */
    private void file(Entry entry) {
        String file = entry.place().file();
        boolean onePot = Ids.same(file, "days/" + entry.date() + "/" + entry.name() + ".md");
        Optional<Leaf> leaf = onePot ? entry(entry.id()) : leaf(Shelf.DAYS, entry.date().toString());
        leaf.ifPresent(found -> files.put(Ids.key(file), found));
    }

    private static String address(String folder, String id) {
        return folder + "/" + FileNames.of(id) + ".html";
    }

    private static String title(Shelf shelf, Group group, Figures figures) {
        return shelf == Shelf.DAYS ? figures.date(LocalDate.parse(group.id())) : group.title();
    }

    /**
     * An entry's page.
     *
     * @param id the entry's id, in any case
     * @return the page, if the book has it
     */
    public Optional<Leaf> entry(String id) {
        return Optional.ofNullable(entries.get(Ids.key(id)));
    }

    /**
     * All entries' pages.
     *
     * @return the pages, oldest entry first
     */
    public Collection<Leaf> entries() {
        return entries.values();
    }

    /**
     * A group's page.
     *
     * @param shelf the list it stands on
     * @param id the group's id, in any case
     * @return the page, if the book has it
     */
    public Optional<Leaf> leaf(Shelf shelf, String id) {
        return Optional.ofNullable(shelves.getOrDefault(shelf, Map.of()).get(Ids.key(id)));
    }

    /**
     * All pages of a list.
     *
     * @param shelf the list
     * @return its pages, in order
     */
    public Collection<Leaf> leaves(Shelf shelf) {
        return shelves.getOrDefault(shelf, Map.of()).values();
    }

    /**
     * The way to the page of a notebook file.
     *
     * @param path the file's path in the notebook
     * @return the way from the book's top, if the book has the page
     */
    public Optional<String> ofFile(String path) {
        return Optional.ofNullable(files.get(Ids.key(path))).map(Leaf::link);
    }
}
