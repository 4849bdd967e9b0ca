package fascicle.book.lookup;

import java.util.Locale;

/** What entries may be chosen by; one of several ids of a trait is enough, and every trait asked for must fit. */
public enum Trait {
    /** The condition of the needles. */
    CONDITION,
    /** Whether it worked. */
    VERDICT,
    /** The year. */
    YEAR,
    /** The colour family of the result. */
    FAMILY,
    /** The needle lot. */
    LOT,
    /** A dye or assistant that was used. */
    DYE,
    /** The method followed, itself or through another. */
    METHOD;

    /**
     * The trait in words of the data.
     *
     * @return lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
