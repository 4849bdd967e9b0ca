package fascicle.notebook;

import java.util.Comparator;

/**
 * Where something stands in the notebook.
 *
 * @param file path relative to the notebook, with {@code /}
 * @param line line of the file, from 1
 * @param column character of the line, from 1; a character beyond the basic plane counts as one
 */
public record Place(String file, int line, int column) implements Comparable<Place> {

    private static final Comparator<Place> ORDER =
            Comparator.comparing(Place::file).thenComparingInt(Place::line).thenComparingInt(Place::column);

    /** Checks that line and column count from 1. */
    public Place {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("lines and columns count from 1: " + line + ":" + column);
        }
    }

    /**
     * The place of a whole file.
     *
     * @param file path relative to the notebook
     * @return its first character
     */
    public static Place of(String file) {
        return new Place(file, 1, 1);
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }

    /** The form that editors jump to: {@code days/2026-05-09/brick.md:12:9}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
