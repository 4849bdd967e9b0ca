package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * The steps of a recipe by the clock.
 *
 * @param rows what is done, in order
 * @param notes what the times rest on, and why some are not known
 */
public record Timetable(List<Row> rows, List<String> notes) {

    /**
     * What is done at one time.
     *
     * @param when after the start, in hours and minutes or in words
     * @param doings what is done, sentence by sentence
     * @param length how long it goes on; nothing for a moment, or where nobody knows
     */
    public record Row(String when, List<String> doings, Optional<String> length) {}
}
