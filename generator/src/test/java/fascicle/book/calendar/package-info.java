/** Tests of calendars. */
@org.jspecify.annotations.NullMarked
package fascicle.book.calendar;
