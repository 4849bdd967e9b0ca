package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * One line of what is known.
 *
 * @param label what it is about
 * @param values what is known
 * @param whence where it comes from, when it was not written for this very thing
 */
public record Fact(String label, List<Link> values, Optional<Link> whence) {

    /**
     * A fact in words alone.
     *
     * @param label what it is about
     * @param text what is known
     * @return the fact
     */
    public static Fact of(String label, String text) {
        return of(label, Link.plain(text));
    }

    /**
     * A fact that leads somewhere.
     *
     * @param label what it is about
     * @param value what is known
     * @return the fact
     */
    public static Fact of(String label, Link value) {
        return new Fact(label, List.of(value), Optional.empty());
    }
}
