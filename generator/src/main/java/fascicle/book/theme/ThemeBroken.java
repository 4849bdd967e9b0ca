package fascicle.book.theme;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A theme that cannot be used, in words for whoever made it: everything that is wrong with it, as far as it was seen.
 */
public final class ThemeBroken extends Exception {

    private static final long serialVersionUID = 1L;

    private final List<Fault> faults;

    /**
     * Something that is wrong with a theme.
     *
     * @param file its name in the theme
     * @param line its line, from 1
     * @param column its column, from 1
     * @param message what was found and what was expected
     */
    public record Fault(String file, int line, int column, String message)
            implements Comparable<Fault>, java.io.Serializable {

        /** A fault of a whole file. */
        static Fault of(String file, String message) {
            return new Fault(file, 1, 1, message);
        }

        @Override
        public int compareTo(Fault other) {
            int byFile = file.compareTo(other.file);
            int byLine = byFile != 0 ? byFile : Integer.compare(line, other.line);
            int byColumn = byLine != 0 ? byLine : Integer.compare(column, other.column);
            return byColumn != 0 ? byColumn : message.compareTo(other.message);
        }

        /** The GNU form of findings, {@code file:line:column: error: message}, in one line. */
        @Override
        public String toString() {
            return file + ":" + line + ":" + column + ": error: " + message.replaceAll("[\\p{Cc}\\s]+", " ").strip();
        }
    }

    /**
     * A theme that cannot be used.
     *
     * @param faults what is wrong with it, at least one thing; the same thing may be named twice
     */
    public ThemeBroken(List<Fault> faults) {
        super(faults.stream().sorted().distinct().map(Fault::toString).collect(Collectors.joining("\n")));
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("a broken theme has a fault");
        }
        this.faults = faults.stream().sorted().distinct().toList();
    }

    /**
     * Everything that is wrong.
     *
     * @return in order of file and place, each once, at least one
     */
    public List<Fault> faults() {
        return faults;
    }

    /** Thrown where a page is made, and no caller can mend a theme. */
    public static final class WhileRendering extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final Fault fault;

        /**
         * Tells of a template that fails on a page.
         *
         * @param fault what is wrong
         */
        public WhileRendering(Fault fault) {
            super(fault.toString());
            this.fault = fault;
        }

        /**
         * What is wrong.
         *
         * @return the fault that the page met first
         */
        public Fault fault() {
            return fault;
        }
    }
}
