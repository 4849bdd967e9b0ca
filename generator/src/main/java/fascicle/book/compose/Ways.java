package fascicle.book.compose;

import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.page.Frame;
import fascicle.book.page.Link;
import fascicle.notebook.Cover;
import fascicle.notebook.Origin;
import fascicle.workings.EntryWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ways from one page to others, and what stands round it. */
final class Ways {

    private static final String HOME = "index.html";
    private static final String ENTRIES = "entries";
    private static final String LOOK_UP = "look-up.html";

    private final Materials materials;
    private final String root;

    private Ways(Materials materials, String root) {
        this.materials = materials;
        this.root = root;
    }

    /** Ways from a page at the book's top. */
    static Ways fromTop(Materials materials) {
        return new Ways(materials, "");
    }

    /** Ways from a page in a list's folder. */
    static Ways fromFolder(Materials materials) {
        return new Ways(materials, "../");
    }

    /** The way to the book's top: nothing, or {@code ../}. */
    String root() {
        return root;
    }

    Link entry(EntryWorking working) {
        return entry(working.id());
    }

    /** An entry by its id; its id alone where this edition does not show it. */
    Link entry(String id) {
        return materials.addresses().entry(id).map(this::leaf).orElse(Link.plain(id));
    }

    /** A page of a list; the id alone where the book has no such page. */
    Link to(Shelf shelf, String id) {
        return materials.addresses().leaf(shelf, id).map(this::leaf).orElse(Link.plain(id));
    }

    /** A condition; its words alone where no entry has it. */
    Link condition(String id) {
        return materials.addresses().leaf(Shelf.CONDITIONS, id).map(this::leaf)
                .orElseGet(() -> Link.plain(materials.index().condition(id)));
    }

    Link leaf(Leaf leaf) {
        return new Link(leaf.title(), Optional.of(root + leaf.link()));
    }

    Link list(Shelf shelf) {
        return new Link(materials.words().say("list." + shelf.word()), Optional.of(root + shelf.address()));
    }

    Link allEntries() {
        return new Link(materials.words().say("list.entries"), Optional.of(root + ENTRIES + ".html"));
    }

    /** The page on which entries are looked up. */
    Link lookUp() {
        return new Link(materials.words().say("list.look-up"), Optional.of(root + LOOK_UP));
    }

    /** The look-up with something chosen. */
    Link lookUp(String text, String key, String value) {
        return new Link(text, Optional.of(root + LOOK_UP + "#" + key + "=" + Leaf.asLink(value)));
    }

    /** The look-up with a dye and a condition chosen. */
    Link lookUp(String dye, String condition) {
        String asked = "dye=" + Leaf.asLink(dye) + "&condition=" + Leaf.asLink(condition);
        return new Link(dye, Optional.of(root + LOOK_UP + "#" + asked));
    }

    /** The way to a page at the book's top. */
    Link top(String text, String address) {
        return new Link(text, Optional.of(root + address));
    }

    /** The pages on which swatches lie side by side. */
    List<Link> sideBySide() {
        return List.of(side("string"), side("grid"), top(materials.words().say("ladder.title"), "ladders.html"),
                side("repeats"));
    }

    /** The page of what is left, which is the studio's alone. */
    Optional<Link> shelf() {
        return materials.isStudio() ? Optional.of(side("shelf")) : Optional.empty();
    }

    private Link side(String word) {
        return top(materials.words().say(word + ".title"), word + ".html");
    }

    /** Whose a value is, where it was not written for this very thing. */
    Optional<Link> whence(Origin origin) {
        if (origin instanceof Origin.Method method) {
            Link to = to(Shelf.METHODS, method.method());
            return Optional.of(new Link(materials.words().say("whence.method", to.text()), to.href()));
        }
        return origin instanceof Origin.Shared
                ? Optional.of(Link.plain(materials.words().say("whence.shared"))) : Optional.empty();
    }

    /** The frame of a page behind a list. */
    Frame frame(Link list, String title) {
        return frame(title, list, List.of(list, Link.plain(title)));
    }

    /** The frame of a list, or of a page that belongs to none. */
    Frame frame(String title) {
        return frame(title, Link.plain(title), List.of(Link.plain(title)));
    }

    /** The frame of the cover. */
    Frame cover() {
        return frame(materials.workings().notebook().cover().title(), Link.plain(""), List.of());
    }

    private Frame frame(String title, Link here, List<Link> inner) {
        Cover cover = materials.workings().notebook().cover();
        List<Link> trail = new ArrayList<>();
        if (!inner.isEmpty()) {
            trail.add(new Link(cover.title(), Optional.of(root + HOME)));
            trail.addAll(inner);
        }
        List<Frame.Door> doors = new ArrayList<>();
        doors.add(door(lookUp(), here));
        doors.add(door(allEntries(), here));
        for (Shelf shelf : Shelf.values()) {
            doors.add(door(list(shelf), here));
        }
        sideBySide().forEach(page -> doors.add(door(page, here)));
        shelf().ifPresent(page -> doors.add(door(page, here)));
        return new Frame(cover.language(), title, cover.title(),
                materials.words().say("edition." + materials.edition().word()), root + HOME, root + "about.html",
                root + materials.style(), root + LOOK_UP,
                List.copyOf(doors), List.copyOf(trail));
    }

    private static Frame.Door door(Link list, Link here) {
        return new Frame.Door(list.text(), list.href().orElse(""), list.text().equals(here.text()));
    }
}
