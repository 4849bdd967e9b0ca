package fascicle.book.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * Writes events as iCalendar (RFC 5545), with floating local times: 9:00 is nine o'clock in the workshop (§ 3.3.5, form
 * 1). The same events and stamp give the same bytes.
 */
public final class Calendar {

    private static final String PRODUCT = "-//Fascicle//Fascicle//EN";
    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

    /** § 3.1: a line holds no more octets than these, its line break not counted. */
    private static final int LONGEST_LINE = 75;

    private final StringBuilder text = new StringBuilder();

    private Calendar() {}

    /**
     * A calendar.
     *
     * @param events what is in it
     * @param stamp when the events were last written, as the form demands ({@code DTSTAMP}); the same for the same
     *     notebook
     * @return the file's text, to be written as UTF-8 with the ending {@code .ics}
     */
    public static String of(List<Event> events, Instant stamp) {
        Calendar calendar = new Calendar();
        calendar.line("BEGIN", "VCALENDAR").line("VERSION", "2.0").line("PRODID", PRODUCT)
                .line("CALSCALE", "GREGORIAN");
        events.forEach(event -> calendar.event(event, stamp));
        calendar.line("END", "VCALENDAR");
        return calendar.text.toString();
    }

    private void event(Event event, Instant stamp) {
        line("BEGIN", "VEVENT").line("UID", escaped(event.uid()))
                .line("DTSTAMP", local(LocalDateTime.ofInstant(stamp, ZoneOffset.UTC)) + "Z")
                .line("DTSTART", local(event.start()));
        event.end().filter(event.start()::isBefore).ifPresent(end -> line("DTEND", local(end)));
        line("SUMMARY", escaped(event.summary()));
        if (!event.description().isEmpty()) {
            line("DESCRIPTION", escaped(event.description()));
        }
        if (event.rings()) {
            line("BEGIN", "VALARM").line("ACTION", "DISPLAY").line("DESCRIPTION", escaped(event.summary()))
                    .line("TRIGGER;RELATED=START", "PT0S").line("END", "VALARM");
        }
        line("END", "VEVENT");
    }

    private static String local(LocalDateTime time) {
        return LOCAL.format(time);
    }

    /** § 3.3.11: backslash, semicolon, comma and line breaks; other control characters have no place in a text. */
    private static String escaped(String value) {
        return value.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replaceAll("\\R", "\\\\n")
                .replaceAll("[\\p{Cntrl}&&[^\t]]", "");
    }

    private Calendar line(String name, String value) {
        int room = LONGEST_LINE;
        for (int sign : (name + ":" + value).codePoints().toArray()) {
            String written = Character.toString(sign);
            int octets = written.getBytes(StandardCharsets.UTF_8).length;
            if (octets > room) {
                text.append("\r\n ");
                room = LONGEST_LINE - 1;
            }
            text.append(written);
            room -= octets;
        }
        text.append("\r\n");
        return this;
    }
}
