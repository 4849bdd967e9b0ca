package fascicle.workings.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several pots on a stove with room for two (common practice, no source), with times reckoned by hand. */
class ScheduleTest {

    private static final LocalDateTime SATURDAY = LocalDateTime.parse("2026-06-13T09:00");
    private static final String BATH = "bath: {water: 3 L, dye: [{is: brick, amount: 1 g}]}";

    @TempDir
    private Path folder;

    private Kitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new Kitchen(folder)
                .method("hour", "presoak: {for: 1 h}", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h")
                .method("long", "presoak: {for: 1 h}", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 2 h}]", "cool: 1 h")
                .method("night", "presoak: {for: overnight}", BATH, "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]",
                        "cool: 1 h")
                .method("unknown", "presoak: {for: 1 h}", "bath: {dye: [{is: brick, amount: 1 g}]}",
                        "heat: [{to: 88 °C, hold: 1 h}]", "cool: 1 h");
    }

    @Test
    void twoPotsStandSideBySide() {
        Schedule schedule = schedule("hour", "long");
        assertEquals("0 0", starts(schedule, Stage.Kind.SOAK));
        assertEquals("60 60", starts(schedule, Stage.Kind.ON));
        assertEquals(List.of(new Schedule.Together("1 hour", "2 long", 60, OptionalDouble.of(150))), schedule.together());
        assertEquals(Optional.of(SATURDAY.plusHours(1)), schedule.at(60));
    }

    /** The first of two pots goes off 90 minutes after it went on, and the third pot with its soak waits for that. */
    @Test
    void aThirdPotWaitsAndItsNeedlesDoNot() {
        Schedule schedule = schedule("hour", "long", "hour");
        assertEquals("0 0 90", starts(schedule, Stage.Kind.SOAK));
        assertEquals("60 60 150", starts(schedule, Stage.Kind.ON));
        assertEquals(List.of(new Schedule.Together("1 hour", "2 long", 60, OptionalDouble.of(150)),
                new Schedule.Together("2 long", "3 hour", 150, OptionalDouble.of(210))), schedule.together());
    }

    @Test
    void fivePotsNeverStandThreeAtOnce() {
        Schedule schedule = schedule("hour", "long", "hour", "hour", "long");
        for (double minute = 0; minute < 1440; minute++) {
            double now = minute;
            long on = Stream.of("1 hour", "2 long", "3 hour", "4 hour", "5 long").filter(pot ->
                    first(schedule, pot, Stage.Kind.ON) <= now && now < first(schedule, pot, Stage.Kind.OFF)).count();
            assertEquals(true, on <= 2, "at " + minute);
        }
        assertEquals("60 60 150 210 240", starts(schedule, Stage.Kind.ON));
    }

    /** However late they begin, a night ends at eight; so the third goes on later in the morning. */
    @Test
    void afterANightTheThirdPotWaitsInTheMorning() {
        Schedule schedule = schedule("night", "night", "night");
        assertEquals("0 0 0", starts(schedule, Stage.Kind.SOAK));
        assertEquals("1380 1380 1470", starts(schedule, Stage.Kind.ON));
        assertEquals(Optional.of(LocalDateTime.parse("2026-06-14T08:00")), schedule.at(1380));
    }

    @Test
    void aPotOfUnknownLengthComesLastAndThatIsSaid() {
        Schedule schedule = schedule("unknown", "hour", "long");
        assertEquals(List.of("1 unknown"), schedule.last());
        assertEquals(List.of(), schedule.unplaced());
        assertEquals(150, first(schedule, "1 unknown", Stage.Kind.ON), "beside the one that stays");
        assertEquals(60, first(schedule, "2 hour", Stage.Kind.ON));
    }

    @Test
    void aThirdPotOfUnknownLengthHasNoPlaceUntilOneGoesOff() {
        Schedule schedule = schedule("unknown", "unknown", "unknown");
        assertEquals(List.of("3 unknown"), schedule.unplaced());
        assertEquals(3, schedule.last().size());
        assertEquals(List.of(OptionalDouble.empty()), schedule.due().stream().filter(due -> due.pot().equals("3 unknown"))
                .map(Schedule.Due::from).distinct().toList());
        assertEquals("3 unknown", schedule.due().get(schedule.due().size() - 1).pot());
    }

    @Test
    void everythingStandsInTheOrderOfTime() {
        Schedule schedule = schedule("hour", "long", "hour");
        double[] times = schedule.due().stream().filter(due -> due.from().isPresent()).mapToDouble(due ->
                due.from().orElseThrow()).toArray();
        double[] sorted = times.clone();
        java.util.Arrays.sort(sorted);
        assertEquals(List.of(java.util.Arrays.toString(sorted)), List.of(java.util.Arrays.toString(times)));
    }

    /** The pot that soaks overnight was begun first, and its needles are out a day later, so they keep a day longer. */
    @Test
    void whatKeepsStandsInTheOrderOfTheDaysItKeepsTo() {
        kitchen.cover("damp-keeps: 3 days");
        Schedule schedule = schedule("night", "hour");
        assertEquals(List.of("2 hour", "1 night"), schedule.due().stream()
                .filter(due -> due.stage().kind() == Stage.Kind.KEEP).map(Schedule.Due::pot).toList());
    }

    @Test
    void withoutAStartThereAreMinutesAndNoHours() {
        Schedule schedule = Schedule.of(List.of(new Schedule.Pot("night", kitchen.clock("night"))));
        assertEquals(Optional.empty(), schedule.at(60));
        assertEquals("1380", starts(schedule, Stage.Kind.ON), "from nine to eight");
        assertEquals(List.of(), Schedule.of(List.of()).due());
    }

    private Schedule schedule(String... methods) {
        List<Schedule.Pot> pots = new java.util.ArrayList<>();
        for (String method : methods) {
            pots.add(new Schedule.Pot(pots.size() + 1 + " " + method, kitchen.clock(method)));
        }
        return Schedule.of(pots, SATURDAY);
    }

    /** When each pot comes to something, in the order of the pots' names. */
    private static String starts(Schedule schedule, Stage.Kind kind) {
        return schedule.due().stream().filter(due -> due.stage().kind() == kind)
                .sorted(java.util.Comparator.comparing(Schedule.Due::pot))
                .map(due -> String.valueOf((long) due.from().orElse(-1))).collect(Collectors.joining(" "));
    }

    private static double first(Schedule schedule, String pot, Stage.Kind kind) {
        return schedule.due().stream().filter(due -> due.pot().equals(pot) && due.stage().kind() == kind).findFirst()
                .orElseThrow().from().orElseThrow();
    }
}
