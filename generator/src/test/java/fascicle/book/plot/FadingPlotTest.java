package fascicle.book.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.words.Words;
import fascicle.colour.Lab;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FadingPlotTest {

    private static final Words WORDS = Words.shipped();
    private static final FadingPlot.Point NEW = new FadingPlot.Point(0, 0, new Lab(38, 23, 22), "new");

    private static FadingPlot.Point after(double days, double difference, double lightness) {
        return new FadingPlot.Point(days, difference, new Lab(lightness, 20, 20), "change " + difference);
    }

    private static String hex(FadingPlot.Point point) {
        return point.colour().toRgb().hex();
    }

    private static Drawn drawn(FadingPlot.Point... points) {
        return Drawn.of(new FadingPlot(List.of(points)).svg(WORDS, "it fades"));
    }

    @Test
    void timeGoesRightFromTheNewColourAndChangeGoesUp() {
        FadingPlot.Point early = after(42, 1.3, 39.5);
        FadingPlot.Point late = after(182, 3.8, 41.8);
        Drawn plot = drawn(late, NEW, early);
        Drawn.Place fresh = plot.foot(hex(NEW));
        Drawn.Place second = plot.foot(hex(early));
        Drawn.Place third = plot.foot(hex(late));
        assertEquals((third.x() - fresh.x()) * 42 / 182, second.x() - fresh.x(), .2, "time is even");
        assertEquals((fresh.y() - third.y()) * 1.3 / 3.8, fresh.y() - second.y(), .2, "change is even");
        assertEquals(List.of("new", "change 1.3", "change 3.8"), plot.svg().select(".numbers text").eachText());
    }

    @Test
    void shortTimesAreInDaysLongOnesInWeeks() {
        assertTrue(drawn(NEW, after(10, 2, 40)).svg().select("text").eachText().contains("days in the light"));
        assertTrue(drawn(NEW, after(42, 2, 40)).svg().select("text").eachText().contains("weeks in the light"));
    }

    @Test
    void aSmallChangeDoesNotFillTheBoard() {
        List<String> numbers = drawn(NEW, after(42, .4, 40)).svg().select(".axes text").eachText();
        assertTrue(numbers.contains("5") && !numbers.contains("0.4"), numbers.toString());
    }

    @Test
    void wordsThatWouldRunIntoOthersAreLeftOut() {
        List<FadingPlot.Point> daily = new ArrayList<>(List.of(NEW));
        for (int day = 1; day <= 60; day++) {
            daily.add(after(day, day * .1, 38 + day * .1));
        }
        Drawn plot = Drawn.of(new FadingPlot(daily).svg(WORDS, "it fades"));
        assertEquals(61, plot.svg().select(".needles > path").size());
        assertTrue(plot.svg().select(".numbers text").size() < 20);
    }

    @Test
    void itSaysWhatItShowsAndHasNoStyle() {
        Drawn plot = drawn(NEW, after(42, 1.3, 40));
        assertEquals("it fades", plot.svg().expectFirst("svg > desc").text());
        assertEquals("img", plot.svg().attr("role"), "nothing in it leads anywhere");
        assertEquals(0, plot.svg().select("[style], a").size());
        assertTrue(plot.svg().outerHtml().length() < 6000, "an entry's page stays light");
    }

    @Test
    void oneReadingIsAMistake() {
        assertThrows(IllegalArgumentException.class, () -> new FadingPlot(List.of(NEW)));
        assertThrows(IllegalArgumentException.class, () -> new FadingPlot(List.of(NEW, after(-1, 2, 40))));
    }
}
