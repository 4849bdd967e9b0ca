package fascicle.notebook;

import java.util.Comparator;
import java.util.Locale;

/**
 * A problem in the notebook, in words for its maker.
 *
 * @param place where it stands
 * @param level how grave it is
 * @param message what was found, what was expected, and how to mend it
 */
public record Finding(Place place, Level level, String message) implements Comparable<Finding> {

    private static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::place).thenComparing(Finding::level).thenComparing(Finding::message);

    /** How grave a finding is. */
    public enum Level {
        /** The notebook cannot be read as it was meant; a book is not published unless the maker insists. */
        ERROR,
        /** Something a maker may want to know; it never stops a book. */
        WARNING;

        /**
         * The word printed and published.
         *
         * @return {@code error} or {@code warning}
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }

    /** The GNU form, {@code file:line:column: level: message}, in one line whatever names and values hold. */
    @Override
    public String toString() {
        return (place + ": " + level.word() + ": " + message).replaceAll("\\p{Cc}", "\uFFFD");
    }
}
