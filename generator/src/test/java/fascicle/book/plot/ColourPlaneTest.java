package fascicle.book.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.words.Words;
import fascicle.colour.Lab;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColourPlaneTest {

    private static final Words WORDS = Words.shipped();

    private static ColourPlane.Point point(String title, double lightness, double a, double b) {
        return new ColourPlane.Point(new Lab(lightness, a, b), Optional.of("../entries/" + title + ".html"), title);
    }

    private static Drawn drawn(ColourPlane.Point... points) {
        return Drawn.of(new ColourPlane(List.of(points)).svg(WORDS, "two colours"));
    }

    @Test
    void redderLiesFartherRightAndYellowerHigher() {
        Drawn plot = drawn(point("dull", 40, 5, 10), point("red", 40, 30, 10), point("yellow", 40, 5, 30));
        assertTrue(plot.foot("red").x() > plot.foot("dull").x());
        assertEquals(plot.foot("red").y(), plot.foot("dull").y());
        assertTrue(plot.foot("yellow").y() < plot.foot("dull").y());
        assertEquals(plot.foot("yellow").x(), plot.foot("dull").x());
    }

    /** So that a distance on the board is a distance of colours, whatever the ranges are. */
    @Test
    void bothAxesHaveOneScale() {
        Random random = new Random(3);
        for (int i = 0; i < 500; i++) {
            double a = random.nextDouble() * 120 - 60;
            double b = random.nextDouble() * 120 - 60;
            double far = random.nextDouble() * 60;
            Drawn plot = drawn(point("one", 50, a, b), point("right", 50, a + 12, b), point("up", 50, a, b + 12),
                    point("far", 50, a + far, b));
            assertEquals(plot.foot("right").x() - plot.foot("one").x(),
                    plot.foot("one").y() - plot.foot("up").y(), .21);
        }
    }

    @Test
    void axesAreRoundEquallyLongAndNoShorterThanTwenty() {
        List<Ticks> axes = new ColourPlane(List.of(point("one", 54, 28, 17), point("other", 57, 35.8, 19.1))).axes();
        assertEquals(List.of(20.0, 25.0, 30.0, 35.0, 40.0, 45.0), axes.get(0).at());
        assertEquals(List.of(5.0, 10.0, 15.0, 20.0, 25.0, 30.0), axes.get(1).at());
        List<Ticks> grey = new ColourPlane(List.of(point("grey", 20, -.2, .6))).axes();
        assertTrue(grey.get(0).at().contains(0.0) && grey.get(1).at().contains(0.0), grey.toString());
    }

    @Test
    void aLighterColourIsALongerNeedleInThePlaneAndInTheStrip() {
        Drawn plot = drawn(point("dark", 20, 5, 10), point("light", 80, 15, 20));
        assertTrue(plot.length("light") > 1.5 * plot.length("dark"));
        assertEquals(2, plot.svg().select(".strip path").size());
        assertEquals("true", plot.svg().expectFirst(".strip").attr("aria-hidden"), "each is read once");
    }

    @Test
    void aRingIsAsFarFromTheGreysAsItsChroma() {
        Drawn plot = drawn(point("grey", 50, 0, 0), point("red", 50, 40, 0));
        double perUnit = (plot.foot("red").x() - plot.foot("grey").x()) / 40;
        assertTrue(plot.svg().select("circle").eachAttr("r").stream()
                .anyMatch(radius -> StrictMath.abs(Double.parseDouble(radius) - 40 * perUnit) < .2));
        assertEquals(plot.foot("grey").x(), Double.parseDouble(plot.svg().expectFirst("circle").attr("cx")), .11);
    }

    @Test
    void eachNeedleIsAWayWithItsNameInItsColour() {
        Drawn plot = drawn(point("a&b", 40, 5, 10), point("red", 40, 30, 10));
        assertEquals(List.of("a&b", "red"),
                plot.svg().select(".needles > a[href] > title").eachText().stream().sorted().toList());
        assertEquals(new Lab(40, 30, 10).toRgb().hex(), plot.svg().expectFirst("a[href$=red.html] path").attr("fill"));
        ColourPlane.Point without = new ColourPlane.Point(new Lab(1, 2, 3), Optional.empty(), "no page");
        assertEquals(0, drawn(without).svg().select("a").size());
    }

    @Test
    void itSaysWhatItShowsAndHasNoStyle() {
        Drawn plot = drawn(point("one", 40, 5, 10), point("other", 40, 30, 10));
        assertEquals("group", plot.svg().attr("role"));
        assertEquals(plot.svg().expectFirst("svg > title").id(), plot.svg().attr("aria-labelledby"));
        assertEquals(plot.svg().expectFirst("svg > desc").id(), plot.svg().attr("aria-describedby"));
        assertEquals("two colours", plot.svg().expectFirst("svg > desc").text());
        assertTrue(plot.svg().select("text").eachText()
                .containsAll(List.of("a*, green to red", "b*, blue to yellow", "L*")));
        assertEquals(0, plot.svg().select("[style], style, script").size());
        String ground = plot.svg().expectFirst("rect.ground").attr("fill");
        assertEquals(ground.substring(1, 3).repeat(3), ground.substring(1), "a neutral ground");
    }

    @Test
    void ofThousandsSomeAreDrawnSpreadOverAll() {
        List<ColourPlane.Point> many = IntStream.range(0, 5000)
                .mapToObj(i -> point("p" + i, 30 + i % 40, i / 200.0, 20)).toList();
        ColourPlane plane = new ColourPlane(many);
        String svg = plane.svg(WORDS, "many").html();
        assertEquals(ColourPlane.MOST, Drawn.of(plane.svg(WORDS, "many")).svg().select(".needles > a").size());
        assertTrue(svg.length() < 150_000, "letters: " + svg.length());
        assertTrue(plane.drawn().contains(many.get(0)) && plane.drawn().contains(many.get(4999)));
        for (int part = 0; part < 10; part++) {
            List<ColourPlane.Point> tenth = many.subList(part * 500, part * 500 + 500);
            assertEquals(40, plane.drawn().stream().filter(tenth::contains).count(), 1);
        }
        assertFalse(svg.contains("NaN"));
    }

    @Test
    void noColoursAreAMistake() {
        assertThrows(IllegalArgumentException.class, () -> new ColourPlane(List.of()));
    }
}
