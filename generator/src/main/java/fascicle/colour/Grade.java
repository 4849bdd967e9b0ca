package fascicle.colour;

import java.util.List;
import java.util.Optional;

/**
 * A grade of the grey scales of ISO 105, from 1 (much changed) to 5 (unchanged), with halves between.
 *
 * @param halves the grade in halves: 2 for grade 1, 9 for grade 4-5, 10 for grade 5
 */
public record Grade(int halves) implements Comparable<Grade> {

    private static final List<String> WRITTEN = List.of("1", "1-2", "2", "2-3", "3", "3-4", "4", "4-5", "5");

    /**
     * A grade.
     *
     * @throws IllegalArgumentException if it lies outside 1 to 5
     */
    public Grade {
        if (halves < 2 || halves > 10) {
            throw new IllegalArgumentException("not a grade: " + halves / 2.0);
        }
    }

    /**
     * Reads {@code 4} or {@code 4-5}.
     *
     * @param text the grade as the standard writes it
     * @return the grade, or nothing where the text is none
     */
    public static Optional<Grade> read(String text) {
        int place = WRITTEN.indexOf(text);
        return place < 0 ? Optional.empty() : Optional.of(new Grade(place + 2));
    }

    /** The grade as the standard writes it: {@code 4}, {@code 4-5}. */
    @Override
    public String toString() {
        return WRITTEN.get(halves - 2);
    }

    @Override
    public int compareTo(Grade other) {
        return Integer.compare(halves, other.halves);
    }
}
