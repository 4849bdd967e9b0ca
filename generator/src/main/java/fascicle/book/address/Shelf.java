package fascicle.book.address;

import fascicle.workings.Group;
import java.util.Locale;

/** The lists of a book, in the order in which they are offered. */
public enum Shelf {
    /** Dye days. */
    DAYS(Group.Kind.DAY),
    /** Methods. */
    METHODS(Group.Kind.METHOD),
    /** Needle lots. */
    LOTS(Group.Kind.LOT),
    /** Dyes and assistants. */
    DYES(Group.Kind.DYE),
    /** Conditions of the needles. */
    CONDITIONS(Group.Kind.CONDITION),
    /** Colour families. */
    FAMILIES(Group.Kind.FAMILY),
    /** Years. */
    YEARS(Group.Kind.YEAR);

    private final Group.Kind kind;

    Shelf(Group.Kind kind) {
        this.kind = kind;
    }

    /**
     * What the entries of a page of this list have in common.
     *
     * @return the kind of group
     */
    public Group.Kind kind() {
        return kind;
    }

    /**
     * The list's folder, and the name of its page and words.
     *
     * @return such as {@code methods}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The list's page.
     *
     * @return its address
     */
    public String address() {
        return word() + ".html";
    }
}
