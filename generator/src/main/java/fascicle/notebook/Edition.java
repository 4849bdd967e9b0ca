package fascicle.notebook;

import java.util.Locale;
import java.util.Optional;

/** Who a book is for, and so how private a thing is: from the maker alone to anyone. */
public enum Edition {
    /** The maker's own book: everything. */
    STUDIO,
    /** For the maker's students. */
    STUDENTS,
    /** For anyone. */
    OPEN;

    /**
     * Reads an edition's name.
     *
     * @param text {@code studio}, {@code students} or {@code open}, in any case
     * @return the edition, or nothing
     */
    public static Optional<Edition> named(String text) {
        for (Edition edition : values()) {
            if (edition.word().equals(text.toLowerCase(Locale.ROOT))) {
                return Optional.of(edition);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether this edition shows what is shared up to another.
     *
     * @param share how far a thing is shared
     * @return true where it appears in this edition
     */
    public boolean shows(Edition share) {
        return share.compareTo(this) >= 0;
    }

    /**
     * The more private of the two.
     *
     * @param other another edition
     * @return the one fewer people see
     */
    public Edition morePrivate(Edition other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /**
     * The word written in notebooks.
     *
     * @return {@code studio}, {@code students} or {@code open}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
