package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.measure.Kitchen;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Heating worked by hand: straight lines from 20 °C, cooling not counted. */
class HeatTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    @Test
    void thePlansExample() {
        // 8 of the 68 degrees lie above 80 °C: 30 · 8/68 min, then 2 h; the look of the next hour has no temperature.
        HeatFigures first = heat(draft -> draft.heat("88 °C", "30 min", "2 h"));
        assertEquals(30 * 8 / 68.0 + 120, known(first.minutesAbove80()), 1e-12);
        assertEquals(150, known(first.minutesTotal()));
        assertEquals(88, known(first.peak()));
        HeatFigures both = heat(draft -> draft.heat("88 °C", "30 min", "2 h").heat("below-simmer", "", "1 h"));
        assertEquals(UNKNOWN, both.minutesAbove80());
        assertEquals(210, known(both.minutesTotal()));
        assertEquals(UNKNOWN, both.peak());
    }

    @Test
    void aStepBeginsWhereTheLastOneEnded() {
        HeatFigures figures = heat(draft -> draft.heat("60 °C", "20 min", "10 min").heat("100 °C", "40 min", "")
                .heat("70 °C", "30 min", "1 h"));
        // Half of the second rise, and two thirds of the fall.
        assertEquals(20 + 20, known(figures.minutesAbove80()), 1e-12);
        assertEquals(160, known(figures.minutesTotal()));
        assertEquals(100, known(figures.peak()));
    }

    @Test
    void aStepMaySayWhereItBegins() {
        HeatFigures figures = heat(draft -> draft.heat("90 °C", "70 °C", "10 min", "5 min"));
        assertEquals(5, known(figures.minutesAbove80()), 1e-12);
        assertEquals(90, known(figures.peak()));
    }

    @Test
    void withoutATimeAStepIsAtOnce() {
        assertEquals(60, known(heat(draft -> draft.heat("190 °F", "", "1 h")).minutesAbove80()));
        assertEquals(90, known(heat(draft -> draft.heat("88 °C", "", "").heat("88 °C", "30 min", "1 h"))
                .minutesAbove80()), 1e-12);
    }

    @Test
    void withoutAnyTimeNobodyKnowsHowLong() {
        HeatFigures figures = heat(draft -> draft.heat("88 °C", "", ""));
        assertEquals(UNKNOWN, figures.minutesTotal());
        assertEquals(UNKNOWN, figures.minutesAbove80());
        assertEquals(88, known(figures.peak()));
        assertEquals(UNKNOWN, heat(draft -> draft.heat("88 °C", "", "1 h").heat("boil", "", "")).minutesTotal());
    }

    @Test
    void aNightHasNoLength() {
        HeatFigures figures = heat(draft -> draft.heat("88 °C", "30 min", "overnight"));
        assertEquals(UNKNOWN, figures.minutesTotal());
        assertEquals(UNKNOWN, figures.minutesAbove80());
        assertEquals(88, known(figures.peak()));
    }

    @Test
    void theSunHasNoTemperature() {
        HeatFigures figures = heat(draft -> draft.heat("", "", "6 h"));
        assertEquals(360, known(figures.minutesTotal()));
        assertEquals(UNKNOWN, figures.minutesAbove80());
        assertEquals(UNKNOWN, figures.peak());
    }

    @Test
    void holdingWhatThereIsGoesOn() {
        HeatFigures figures = heat(draft -> draft.heat("88 °C", "", "1 h").heat("", "", "30 min"));
        assertEquals(90, known(figures.minutesAbove80()));
    }

    @Test
    void whatRestsOnARoughHoldIsRough() {
        HeatFigures figures = heat(draft -> draft.heat("88 °C", "30 min", "about 2 h"));
        assertTrue(figures.aboutMinutes());
        assertFalse(figures.aboutPeak());
        assertEquals(150, known(figures.minutesTotal()));
        assertTrue(heat(draft -> draft.heat("about 88 °C", "30 min", "2 h")).aboutPeak());
    }

    @Test
    void unheatedNeedlesHaveNoFigures() {
        assertEquals(new HeatFigures(UNKNOWN, UNKNOWN, UNKNOWN, false, false), heat(draft -> { }));
    }

    private static HeatFigures heat(Consumer<Draft> steps) {
        Workroom room = new Workroom(Kitchen.METRIC);
        steps.accept(room.entry("2026-05-09-pot"));
        return room.worked("2026-05-09-pot").heat();
    }
}
