package fascicle.book.calendar;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Something in a calendar.
 *
 * @param uid what it is known by, the same whenever it is written again
 * @param start when it begins, by the clock on the wall wherever that hangs
 * @param end when it is over; nothing for a moment
 * @param summary what it is, in a line
 * @param description more of it; empty for nothing
 * @param rings whether an alarm rings when it begins
 */
public record Event(String uid, LocalDateTime start, Optional<LocalDateTime> end, String summary, String description,
        boolean rings) {

    /**
     * An event.
     *
     * @throws IllegalArgumentException if it ends before it begins
     */
    public Event {
        if (end.filter(start::isAfter).isPresent()) {
            throw new IllegalArgumentException("over before it begins: " + start + " to " + end.get());
        }
    }
}
