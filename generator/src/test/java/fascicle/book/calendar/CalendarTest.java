package fascicle.book.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Calendars as RFC 5545 has them, with Biweekly, a general iCalendar library, as a second opinion. */
class CalendarTest {

    private static final Instant STAMP = Instant.parse("2026-06-13T00:00:00Z");
    private static final LocalDateTime NINE = LocalDateTime.parse("2026-06-13T09:00");

    @Test
    void anEventAsTheStandardWritesIt() {
        String written = Calendar.of(List.of(new Event("a@fascicle", NINE, Optional.of(NINE.plusHours(1)), "Soak", "", true)),
                STAMP);
        assertEquals(String.join("\r\n", "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Fascicle//Fascicle//EN",
                "CALSCALE:GREGORIAN", "BEGIN:VEVENT", "UID:a@fascicle", "DTSTAMP:20260613T000000Z",
                "DTSTART:20260613T090000", "DTEND:20260613T100000", "SUMMARY:Soak", "BEGIN:VALARM", "ACTION:DISPLAY",
                "DESCRIPTION:Soak", "TRIGGER;RELATED=START:PT0S", "END:VALARM", "END:VEVENT", "END:VCALENDAR", ""), written);
    }

    /** The example of a text value in RFC 5545, section 3.3.11. */
    @Test
    void theStandardsExampleOfAText() {
        String written = Calendar.of(List.of(event("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")), STAMP);
        assertTrue(unfolded(written).contains(
                "\r\nSUMMARY:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.\r\n"), written);
    }

    /** RFC 5545, section 3.1: at most 75 octets a line, continued by CRLF and a space; no character is cut in two. */
    @Test
    void longLinesAreFoldedBetweenCharacters() {
        String summary = "Über das Färben: ".repeat(9) + "松葉を煮る 🌲".repeat(30);
        String written = Calendar.of(List.of(event(summary)), STAMP);
        for (String line : written.split("\r\n")) {
            byte[] octets = line.getBytes(StandardCharsets.UTF_8);
            assertTrue(octets.length <= 75, line);
            assertEquals(line, new String(octets, StandardCharsets.UTF_8));
        }
        assertFalse(written.replace("\r\n", "").contains("\n"), "every line ends with both");
        assertEquals(summary, parsed(written).get(0).getSummary().getValue());
    }

    @Test
    void whatAnotherLibraryReadsIsWhatWasMeant() {
        List<Event> events = List.of(
                new Event("one@fascicle", NINE, Optional.of(NINE.plusMinutes(90)), "Brick; rust, moss: \\ C:\\pots", "Two\nlines",
                        true),
                new Event("two@fascicle", NINE.plusDays(1), Optional.empty(), "Out of the bath", "", false));
        List<VEvent> read = parsed(Calendar.of(events, STAMP));
        assertEquals(2, read.size());
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            VEvent other = read.get(i);
            assertEquals(event.uid(), other.getUid().getValue());
            assertEquals(event.summary(), other.getSummary().getValue());
            assertEquals(event.start(), local(other.getDateStart().getValue()));
            assertEquals(event.end(), Optional.ofNullable(other.getDateEnd()).map(end -> local(end.getValue())));
            assertEquals(STAMP, other.getDateTimeStamp().getValue().toInstant());
            assertEquals(event.rings() ? 1 : 0, other.getAlarms().size());
        }
        assertEquals("Two\nlines", read.get(0).getDescription().getValue());
    }

    @Test
    void anotherLibraryFindsNothingWrong() {
        ICalendar calendar = Biweekly.parse(Calendar.of(List.of(event("Rinse")), STAMP)).first();
        assertEquals("", calendar.validate(biweekly.ICalVersion.V2_0).toString());
    }

    @Test
    void signsThatNoTextHasFallAway() {
        assertEquals("Bell and tab\t.", parsed(Calendar.of(List.of(event("Bell\u0007 and tab\t.")), STAMP)).get(0).getSummary()
                .getValue());
    }

    @Test
    void nothingIsOverBeforeItBegins() {
        assertThrows(IllegalArgumentException.class,
                () -> new Event("a", NINE, Optional.of(NINE.minusMinutes(1)), "", "", false));
    }

    private static Event event(String summary) {
        return new Event("a@fascicle", NINE, Optional.empty(), summary, "", true);
    }

    private static List<VEvent> parsed(String written) {
        return Biweekly.parse(written).first().getEvents();
    }

    private static String unfolded(String written) {
        return written.replace("\r\n ", "");
    }

    /** A floating time, which that library takes to be in the machine's own zone. */
    private static LocalDateTime local(java.util.Date date) {
        return LocalDateTime.ofInstant(date.toInstant(), ZoneId.systemDefault());
    }
}
