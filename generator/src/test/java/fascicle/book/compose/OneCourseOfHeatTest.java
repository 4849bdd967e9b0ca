package fascicle.book.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.bath.HeatStage;
import fascicle.book.calendar.Event;
import fascicle.book.calendar.ScheduledEvents;
import fascicle.book.gist.Doings;
import fascicle.book.words.Words;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.EntryWorking;
import fascicle.workings.HeatCourse;
import fascicle.workings.Workings;
import fascicle.workings.clock.Clock;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Stage;
import fascicle.workings.clock.Time;
import fascicle.workings.clock.Work;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** However oddly a heat is written: its figures, its plot, its clock and its calendar tell one story, reckoned by hand. */
class OneCourseOfHeatTest {

    private static final LocalDateTime NINE = LocalDateTime.parse("2026-06-13T09:00");

    @TempDir
    private Path folder;

    /**
     * Minutes in all; above 80 °C; drawn; when the heat is over; and how much of that is estimated, for 3 L at 1 kW: from 20
     * to 88 °C 14.2 min, and so 15. Of a rise from 20 to 88 °C, 8/68 lies above 80 °C; of a fall from 88 to 60 °C, 8/28.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {to: 88 °C, over: 30 min, hold: 1 h}, {over: 45 min}                   | 135 | 108.529412 | 135 | 135  | 0
            {over: 45 min}, {to: 88 °C, over: 30 min, hold: 1 h}                   | 135 |            | 0   | 135  | 0
            {from: 85 °C, over: 45 min}                                            | 45  | 45         | 45  | 45   | 0
            {from: 70 °C, to: 90 °C, over: 10 min, hold: 5 min}                    | 15  | 10         | 15  | 15   | 0
            {to: 88 °C, over: 30 min}, {to: 60 °C, over: 30 min}, {hold: 10 min}   | 70  | 12.10084   | 70  | 70   | 0
            {to: 88 °C, hold: 1 h}, {over: 45 min, hold: 15 min}                   | 120 | 120        | 120 | 135  | 15
            {hold: 1 h}, {to: 88 °C, over: 30 min}                                 | 90  |            | 0   | 90   | 0
            {hold: 1 h}, {to: 88 °C, hold: 1 h}                                    | 120 |            | 0   |      |
            {hold: 1 h}, {from: 20 °C, to: 88 °C, hold: 1 h}                       | 120 |            | 0   | 135  | 15
            {to: simmer, over: 30 min, hold: 1 h}, {over: 20 min}                  | 110 |            | 0   | 110  | 0
            {to: 88 °C, over: 30 min, hold: 1 h}, {over: overnight}                |     |            | 90  | 1380 | 0
            {over: 30 min, on: sun}, {hold: 2 h, on: sun}                          | 150 |            | 0   | 150  | 0
            """)
    void asWritten(String heat, Double total, Double above80, double drawn, Double over, Double estimated) {
        WrittenNotebook notebook = WrittenNotebook.small(folder).with("days/2026-05-09/pot.md",
                "---\nneedles: {weight: 50 g}\nbath: {water: 3 L}\nheat: [" + heat + "]\n---\n");
        Workings workings = Workings.of(notebook.read().notebook());
        EntryWorking pot = workings.entry("2026-05-09-pot").orElseThrow();
        assertFigure(total, pot.heat().minutesTotal(), "in all");
        assertFigure(above80, pot.heat().minutesAbove80(), "above 80 °C");

        List<HeatStage> lines = HeatCourse.of(pot.entry().recipe().heat()).known();
        assertEquals(drawn, lines.stream().mapToDouble(HeatStage::minutes).sum(), 1e-9, "drawn");

        Clock clock = Clock.of(Work.of(pot, workings.notebook().cover()), NINE.toLocalTime());
        List<Stage> heated = clock.stages().stream()
                .filter(stage -> stage.kind() == Stage.Kind.RISE || stage.kind() == Stage.Kind.HOLD).toList();
        assertFigure(over, since(clock, heated.get(heated.size() - 1).until()), "by the clock");
        if (estimated != null) {
            assertEquals(estimated, heated.stream().filter(Stage::estimated).mapToDouble(stage ->
                    since(clock, stage.until()).orElseThrow() - since(clock, stage.from()).orElseThrow()).sum(), "estimated");
        }
        if (total != null && over != null) {
            assertEquals(total, over - estimated, 1e-9, "the clock has its estimates besides, and nothing else");
        }

        Schedule schedule = Schedule.of(List.of(new Schedule.Pot("pot", clock)), NINE);
        Optional<Double> rings = ScheduledEvents.of(schedule, name -> name, new Doings(Words.shipped(), id -> id), "pot").stream()
                .filter(event -> event.summary().matches("pot: (Heat off|Out of the bath).*")).findFirst()
                .map(Event::start).map(start -> (double) Duration.between(NINE, start).toMinutes());
        assertEquals(Optional.ofNullable(over), rings, "in the calendar");
    }

    private static OptionalDouble since(Clock clock, Time time) {
        OptionalDouble minutes = clock.sinceMidnight(time);
        return minutes.isPresent() ? OptionalDouble.of(minutes.getAsDouble() - 9 * 60) : minutes;
    }

    private static void assertFigure(Double expected, OptionalDouble found, String what) {
        assertEquals(expected == null, found.isEmpty(), what);
        if (expected != null) {
            assertEquals(expected, found.getAsDouble(), 1e-6, what);
        }
    }
}
