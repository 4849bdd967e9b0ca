package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The hours of a planned day, on a stove with room for two pots. Worked by hand throughout. */
class PlannedClockTest {

    @TempDir
    private Path folder;

    private DyeSchool school;

    @BeforeEach
    void write() {
        school = DyeSchool.withAClass(folder);
    }

    @Test
    void byTheClock() {
        JsonNode clock = school.planned("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00")
                .get("clock");
        List<String> told = clock.valueStream().map(due -> due.get("kind").asString() + " " + due.get("at").asString())
                .toList();
        assertEquals(List.of("soak 2026-06-13T09:00", "make 2026-06-13T10:00", "out 2026-06-13T10:00", "on 2026-06-13T10:00",
                "rise 2026-06-13T10:00", "hold 2026-06-13T10:30", "off 2026-06-13T12:30", "cool 2026-06-13T12:30",
                "out 2026-06-13T15:30", "rinse 2026-06-13T15:30", "dry 2026-06-13T15:30"), told.subList(0, 11));
    }

    @Test
    void whenTheDayEnds() {
        String plan = school.plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00").out();
        assertTrue(plan.contains("The stove is free again 13 June 2026, 12:30"), plan);
        assertTrue(plan.contains("The last needles come out of a bath 13 June 2026, 15:30"), plan);
    }

    @Test
    void aPlanThatDoesNotFitADaySaysSo() {
        assertTrue(school.plan("class-brick", "--each", "30 g", "--people", "26", "--start", "2026-06-13T14:00").ends(0).out()
                .contains("This does not fit a day"));
        assertFalse(school.plan("class-brick", "--each", "15 g", "--people", "8", "--start", "2026-06-13T09:00").out()
                .contains("This does not fit a day"));
    }

    /** Work that begins at 9:00: 1 h of soaking, 2 h 30 min of heat and 3 h of cooling end at 15:30; a day is for drying. */
    @Test
    void withoutAStartTheDaysOfTheWorkAreNumbered() {
        String told = school.plan("class-brick", "--each", "15g", "--people", "8").out();
        assertTrue(told.contains("By the clock, for work that begins at 9:00"), told);
        assertTrue(told.contains("day 1, 9:00  A: Needles into the presoak."), told);
        assertTrue(told.contains("The last needles come out of a bath day 1, 15:30"), told);
        assertTrue(told.contains("day 4, 15:30  A: If any needles are still damp"), told);
    }

    /** After 28 days of soaking it is day 29; after three of cooling and 35 of drying, day 67. */
    @Test
    void theDaysOfLongWorkAreNumberedOn() {
        school.with("methods/slow.md", """
                ---
                title: Slow
                for: 50 g
                presoak: {water: 5 L, for: 28 days}
                bath: {vessel: wide-pan, water: 3 L, dye: [{is: brick, amount: 2 % owf}]}
                heat: [{to: 88 °C, over: 10 min, hold: 20 min}]
                cool: 3 days
                dry: 35 days
                rinse: after-drying
                ---
                """);
        String told = school.plan("slow", "--each", "15g", "--people", "2").out();
        assertTrue(told.contains("day 29, 9:00  A: Make up the bath."), told);
        assertTrue(told.contains("day 32, 9:30  A: Out of the bath."), told);
        assertTrue(told.contains("day 67, about 9:30  A: Rinse."), told);
    }

    @Test
    void dampNeedlesKeepAboutAsLongAsIsWritten() {
        school.with("notebook.yaml",
                "form: 1\ntitle: A school of dyeing\nkitchen: metric\ndamp-keeps: about 3 days\n");
        String plan = school.plan("class-brick", "--each", "15g", "--people", "8", "--start", "2026-06-13T09:00").out();
        assertTrue(plan.contains("about 15:30"), plan);
    }
}
