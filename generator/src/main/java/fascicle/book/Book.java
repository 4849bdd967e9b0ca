package fascicle.book;

import fascicle.book.address.Addresses;
import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.compose.AboutComposer;
import fascicle.book.compose.CoverComposer;
import fascicle.book.compose.EntryComposer;
import fascicle.book.compose.GridComposer;
import fascicle.book.compose.GroupComposer;
import fascicle.book.compose.LadderComposer;
import fascicle.book.compose.ListComposer;
import fascicle.book.compose.LookUpComposer;
import fascicle.book.compose.Materials;
import fascicle.book.compose.RepeatsComposer;
import fascicle.book.compose.ShelfComposer;
import fascicle.book.compose.StringComposer;
import fascicle.book.data.BatchScript;
import fascicle.book.data.EntriesCsv;
import fascicle.book.data.JsonBook;
import fascicle.book.figures.Figures;
import fascicle.book.gallery.Gallery;
import fascicle.book.ledger.Ledger;
import fascicle.book.lookup.IndexFile;
import fascicle.book.lookup.Lookup;
import fascicle.book.page.Page;
import fascicle.book.prose.PicturesNamed;
import fascicle.book.prose.TakenOut;
import fascicle.book.theme.Theme;
import fascicle.book.words.Words;
import fascicle.notebook.Day;
import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Note;
import fascicle.notebook.Missing;
import fascicle.notebook.Notebook;
import fascicle.notebook.Place;
import fascicle.photo.Darkroom;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import fascicle.workings.grid.SampleString;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A book: its addresses, and the bytes of each, made on demand and on their own.
 *
 * <p>The same workings, edition and theme give the same bytes in any order, on any machine. Safe for use from several
 * threads.
 */
public final class Book {

    private final Map<String, Supplier<byte[]>> files = new TreeMap<>();

    private Book(Ledger ledger, Theme theme, Gallery gallery) {
        Workings workings = ledger.workings();
        Words words = Words.shipped();
        Addresses addresses = new Addresses(workings, new Figures(words));
        Materials materials = new Materials(ledger, addresses, gallery, words, theme.styleAddress());
        page("index.html", theme, () -> new CoverComposer(materials).page());
        page("about.html", theme, () -> new AboutComposer(materials).page());
        page("look-up.html", theme, () -> new LookUpComposer(materials).page());
        page("entries.html", theme, () -> new ListComposer(materials).entries());
        page("grid.html", theme, () -> new GridComposer(materials).page());
        page("ladders.html", theme, () -> new LadderComposer(materials).page());
        page("repeats.html", theme, () -> new RepeatsComposer(materials).page());
        ledger.stock().ifPresent(stock ->
                page(ShelfComposer.ADDRESS, theme, () -> new ShelfComposer(materials, stock).page()));
        for (SampleString order : SampleString.values()) {
            page(StringComposer.address(order), theme, () -> new StringComposer(materials).page(order));
        }
        for (EntryWorking working : workings.entries()) {
            addresses.entry(working.id()).ifPresent(leaf ->
                    page(leaf.address(), theme, () -> new EntryComposer(materials).page(working)));
        }
        for (Shelf shelf : Shelf.values()) {
            page(shelf.address(), theme, () -> new ListComposer(materials).groups(shelf));
            for (Leaf leaf : addresses.leaves(shelf)) {
                page(leaf.address(), theme, () -> new GroupComposer(materials).page(shelf, leaf));
            }
        }
        files.put(theme.styleAddress(), theme::style);
        theme.besideStyle().forEach(address -> files.put(address, () -> theme.fileBesideStyle(address)));
        files.put("scripts/look-up.js", () -> Scripts.bytes("look-up.js"));
        gallery.addresses().forEach(address -> files.put(address, () -> gallery.bytes(address)));
        files.put("scripts/open.js", () -> Scripts.bytes("open.js"));
        files.put("scripts/batch.js", () -> Scripts.bytes("batch.js"));
        files.put(BatchScript.ADDRESS, () -> BatchScript.bytes(workings, words));
        files.put("data/book.json", () -> JsonBook.bytes(ledger));
        files.put("data/entries.csv", () -> EntriesCsv.bytes(ledger));
        files.put(IndexFile.ADDRESS, () -> IndexFile.bytes(Lookup.of(workings, words), workings, addresses, words));
        files.put("scripts/engine.js", () -> Scripts.bytes("engine.js"));
    }

    /**
     * The book of an edition.
     *
     * @param workings of the edition's notebook
     * @param edition who the book is for
     * @param theme how it looks
     * @param gallery its photographs
     * @return the book
     */
    public static Book of(Workings workings, Edition edition, Theme theme, Gallery gallery) {
        return new Book(Ledger.of(workings, edition), theme, gallery);
    }

    /**
     * The photographs of an edition: those its readings were taken from, and those its notes show.
     *
     * @param notebook the edition's notebook
     * @param edition who the book is for
     * @param root the notebook's folder
     * @param darkroom what makes the copies
     * @return the gallery
     */
    public static Gallery gallery(Notebook notebook, Edition edition, Path root, Darkroom darkroom) {
        Set<String> named = notes(notebook).map(PicturesNamed::in).flatMap(Collection::stream)
                .collect(Collectors.toSet());
        return Gallery.of(notebook, edition, named, root, darkroom);
    }

    private void page(String address, Theme theme, Supplier<? extends Page> page) {
        files.put(address, () -> theme.render(page.get()));
    }

    /**
     * Every file of the book: pages, the style, scripts, data.
     *
     * @return addresses relative to the book's folder, in order
     */
    public List<String> addresses() {
        return List.copyOf(files.keySet());
    }

    /**
     * Makes one file of the book.
     *
     * @param address one of {@link #addresses}
     * @return its bytes
     * @throws IllegalArgumentException if the book has no such address
     * @throws fascicle.book.theme.ThemeBroken.WhileRendering if the theme fails on this page
     */
    public byte[] bytes(String address) {
        Supplier<byte[]> file = files.get(address);
        if (file == null) {
            throw new IllegalArgumentException("the book has no such address: " + address);
        }
        return file.get();
    }

    /**
     * What the cleaner takes out of the maker's words; no page is made to learn it.
     *
     * @param notebook any notebook
     * @param gallery its photographs
     * @return warnings, in order of file and line
     */
    public static List<Finding> takenOutOf(Notebook notebook, Gallery gallery) {
        Findings findings = new Findings();
        Set<String> files = files(notebook);
        notes(notebook).map(note -> TakenOut.of(note, files, gallery)).forEach(findings::addAll);
        return findings.sorted();
    }

    private static Set<String> files(Notebook notebook) {
        return Stream.of(notebook.lots().stream().map(NeedleLot::place), notebook.dyes().stream().map(Dye::place),
                        notebook.methods().stream().map(Method::place), notebook.entries().stream().map(Entry::place),
                        notebook.missing().stream().map(Missing::place))
                .flatMap(places -> places).map(Place::file).collect(Collectors.toSet());
    }

    private static Stream<Note> notes(Notebook notebook) {
        return Stream.of(notebook.lots().stream().map(NeedleLot::notes), notebook.dyes().stream().map(Dye::notes),
                        notebook.methods().stream().map(Method::notes), notebook.days().stream().map(Day::notes),
                        notebook.entries().stream().map(Entry::notes))
                .flatMap(notes -> notes).flatMap(Collection::stream);
    }
}
