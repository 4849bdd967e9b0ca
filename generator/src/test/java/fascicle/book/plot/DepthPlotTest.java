package fascicle.book.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.words.Words;
import fascicle.colour.Lab;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DepthPlotTest {

    private static final Words WORDS = Words.shipped();

    private static DepthPlot.Point point(String title, double owf, int row, double lightness) {
        return new DepthPlot.Point(owf, row, new Lab(lightness, 20, 20), Optional.of("../entries/" + title + ".html"),
                title);
    }

    private static Drawn drawn(DepthPlot.Point... points) {
        return Drawn.of(of(points).svg(WORDS, "some depths"));
    }

    private static DepthPlot of(DepthPlot.Point... points) {
        return new DepthPlot(List.of(points));
    }

    @Test
    void eachDoublingIsOneStepToTheRightAndDarkerIsLower() {
        Drawn plot = drawn(point("half", .5, 1, 54), point("one", 1, 1, 48), point("two", 2, 1, 43),
                point("four", 4, 1, 37));
        double step = plot.foot("one").x() - plot.foot("half").x();
        assertTrue(step > 20);
        assertEquals(step, plot.foot("two").x() - plot.foot("one").x(), .21);
        assertEquals(step, plot.foot("four").x() - plot.foot("two").x(), .21);
        assertTrue(plot.foot("half").y() < plot.foot("one").y() && plot.foot("two").y() < plot.foot("four").y());
        double perUnit = (plot.foot("four").y() - plot.foot("half").y()) / 17;
        assertEquals(6 * perUnit, plot.foot("one").y() - plot.foot("half").y(), .11, "L* is even");
        assertTrue(plot.svg().select("text").eachText()
                .containsAll(List.of("0.5", "1", "2", "4", "depth, % owf", "L*, dark to light")));
    }

    @Test
    void conditionsAreToldByNumbersAndStandSideBySide() {
        Drawn plot = drawn(point("bleached", 2, 2, 43), point("shade", 2, 1, 38), point("deep", 4, 1, 34));
        assertTrue(plot.foot("shade").x() < plot.foot("bleached").x());
        assertEquals(List.of("1", "2", "1"), plot.svg().select(".numbers text").eachText());
    }

    @Test
    void whatWasDyedAlikeFansOutUnderOneNumber() {
        Drawn plot = drawn(point("first", 2, 1, 38.4), point("again", 2, 1, 37.5), point("deep", 4, 1, 34));
        assertEquals(plot.foot("first").x(), plot.foot("again").x(), .11);
        assertTrue(plot.needle("first").get(1).x() + 4 < plot.needle("again").get(1).x(), "tips apart");
        assertEquals(2, plot.svg().select(".numbers text").size());
    }

    @Test
    void whatCameOutFarApartHasANumberEach() {
        Drawn plot = drawn(point("pale", 2, 1, 60), point("dark", 2, 1, 30), point("deep", 4, 1, 34));
        assertEquals(3, plot.svg().select(".numbers text").size());
    }

    @Test
    void theMedianOfEachDepthOfACondition() {
        DepthPlot plot = new DepthPlot(List.of(point("a", 2, 1, 40), point("b", 2, 1, 36), point("c", 2, 1, 37),
                point("d", 4, 1, 30), point("e", 1, 2, 60)));
        assertEquals(List.of(new DepthPlot.Middle(2, 37), new DepthPlot.Middle(4, 30)), plot.middles(1));
        assertEquals(List.of(), plot.middles(3));
        assertEquals(1, Drawn.of(plot.svg(WORDS, "x")).svg().select(".course path").size(), "one depth has no course");
    }

    @Test
    void thousandsAreBounded() {
        List<DepthPlot.Point> many = IntStream.range(0, 3000)
                .mapToObj(i -> point("p" + i, 1 + i % 5, 1 + i % 7, 30 + i % 30)).toList();
        DepthPlot plot = new DepthPlot(many);
        assertEquals(DepthPlot.MOST, Drawn.of(plot.svg(WORDS, "many")).svg().select(".needles > a").size());
        assertTrue(plot.svg(WORDS, "many").html().length() < 80_000);
    }

    @Test
    void oneDepthIsAMistake() {
        assertThrows(IllegalArgumentException.class, () -> of(point("a", 2, 1, 40), point("b", 2, 1, 36)));
        assertThrows(IllegalArgumentException.class, () -> of(point("a", 0, 1, 40), point("b", 2, 1, 36)));
        assertThrows(IllegalArgumentException.class, () -> new DepthPlot(List.of()));
    }
}
