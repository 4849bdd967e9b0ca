package fascicle.book.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.gist.Doings;
import fascicle.book.words.Words;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.Workings;
import fascicle.workings.clock.Clock;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Work;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a dyer's phone tells her. */
class ScheduledEventsTest {

    @TempDir
    private Path folder;

    @Test
    void everythingThatPotsAskForAtOneTimeIsOneEvent() {
        Schedule schedule = Schedule.of(pots(), LocalDateTime.parse("2026-06-13T09:00"));
        assertEquals(List.of("09:00 Brick: Needles into the presoak (to 2026-06-13T10:00) rings",
                        "10:00 Brick: Make up the bath. Out of the presoak. Bath on the stove, needles in. Heat to 88 °C (to 2026-06-13T10:30) rings",
                        "10:20 Brick: Add Table salt, 20 min after the start of the heating rings",
                        "10:30 Brick: Hold at 88 °C (to 2026-06-13T12:30) rings",
                        "12:30 Brick: Heat off. Leave to cool in the bath rings",
                        "08:00 Brick: Out of the bath. Rinse. Dry rings",
                        "08:00 Brick: If any needles are still damp: use them now, or dry them rings"),
                events(schedule).stream().map(ScheduledEventsTest::said).toList());
    }

    @Test
    void theHeatIsTurnedUpWhenItsTimeComes() {
        Schedule schedule = Schedule.of(pots("""
                presoak: {for: overnight}
                bath: {water: 3 L, extract: {of: 50 g, water: 2 L, heat: [{to: simmer, over: 30 min, hold: 1 h}]}}
                heat: [{to: 60 °C, over: 20 min, hold: 40 min}, {to: 90 °C, over: 15 min, hold: 1 h}]
                cool: overnight
                """), LocalDateTime.parse("2026-06-13T09:00"));
        List<String> said = events(schedule).stream().map(ScheduledEventsTest::said).toList();
        assertEquals("09:00 Brick: Needles into the presoak. The plant on the stove in its water. Heat to a simmer "
                + "(to 2026-06-13T09:30) rings", said.get(0), "needles that soak until morning do not keep the stove");
        assertTrue(said.contains("09:00 Brick: Heat to 90 °C (to 2026-06-14T09:15) rings"), said.toString());
    }

    @Test
    void writtenAgainTheyKeepTheirIds() {
        Schedule schedule = Schedule.of(pots(), LocalDateTime.parse("2026-06-13T09:00"));
        List<String> ids = events(schedule).stream().map(Event::uid).toList();
        assertEquals(ids, events(schedule).stream().map(Event::uid).toList());
        assertEquals(ids.size(), ids.stream().distinct().count());
    }

    @Test
    void withoutAStartNothingStandsInACalendar() {
        assertEquals(List.of(), events(Schedule.of(pots())));
    }

    private List<Schedule.Pot> pots() {
        return pots("""
                presoak: {for: 1 h}
                bath: {water: 3 L, assistants: [{is: salt, amount: 40 g, at: 20 min}]}
                heat: [{to: 88 °C, over: 30 min, hold: 2 h}]
                cool: overnight
                rinse: before-drying
                dry: 1 day
                """);
    }

    private List<Schedule.Pot> pots(String recipe) {
        NotebookReader.Result read = WrittenNotebook.small(folder)
                .with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: metric\ndamp-keeps: 3 days\n")
                .with("methods/simmer.md", "---\ntitle: Simmer\nfor: 50 g\n" + recipe + "---\n").read();
        Workings workings = Workings.of(read.notebook());
        return List.of(new Schedule.Pot("Brick",
                Clock.of(Work.of(workings.method("simmer").orElseThrow(), read.notebook().cover()))));
    }

    private static List<Event> events(Schedule schedule) {
        return ScheduledEvents.of(schedule, pot -> pot, new Doings(Words.shipped(), id -> id.equals("salt") ? "Table salt" : id),
                "simmer");
    }

    private static String said(Event event) {
        return event.start().toLocalTime() + " " + event.summary().replace('\u202f', ' ')
                + event.end().map(end -> " (to " + end + ")").orElse("") + (event.rings() ? " rings" : "");
    }
}
