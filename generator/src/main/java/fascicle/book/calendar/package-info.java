/**
 * Calendars that phones and desks read (iCalendar, RFC 5545): what of a schedule becomes an event, and how events are
 * written. Whoever has a schedule and a start brings the words.
 */
@NullMarked
package fascicle.book.calendar;

import org.jspecify.annotations.NullMarked;
