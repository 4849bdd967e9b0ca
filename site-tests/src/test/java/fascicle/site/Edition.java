package fascicle.site;

import java.util.Locale;
import java.util.stream.Stream;

/** Who a book is for, from the most private edition to the least. */
enum Edition {
    STUDIO,
    STUDENTS,
    OPEN;

    /** The word of the notebook and of the commands. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a thing shared with {@code others} is in this edition's book. */
    boolean shows(Edition others) {
        return ordinal() <= others.ordinal();
    }

    /** The edition of this word. */
    static Edition of(String word) {
        return Stream.of(values())
                .filter(edition -> edition.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No edition: " + word));
    }
}
