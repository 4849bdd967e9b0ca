package fascicle.book.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.HeatStage;
import fascicle.book.words.Words;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class HeatPlotTest {

    /** The plan's example: 20 to 88 °C over half an hour, then two hours of it. */
    private static final HeatPlot PLANS = new HeatPlot(List.of(new HeatStage(20, 88, 30, 120)), 97.9,
            List.of(new HeatPlot.Addition(15, "1"), new HeatPlot.Addition(200, "2")));

    @Test
    void theLineRisesAndIsHeld() {
        assertEquals(20, PLANS.celsius(0));
        assertEquals(54, PLANS.celsius(15), 1e-12);
        assertEquals(88, PLANS.celsius(30));
        assertEquals(88, PLANS.celsius(150));
        assertEquals(150, PLANS.minutes());
    }

    @Test
    void aStepAtOnceIsUpright() {
        HeatPlot plot = new HeatPlot(List.of(new HeatStage(20, 70, 0, 10), new HeatStage(70, 60, 10, 0)), 100, List.of());
        assertEquals(70, plot.celsius(0));
        assertEquals(65, plot.celsius(15));
    }

    @Test
    void whatIsDrawn() {
        Element svg = Jsoup.parseBodyFragment(PLANS.svg(Words.shipped(), "Said.").html()).selectFirst("svg");
        assertEquals("img", svg.attr("role"));
        assertEquals("Said.", svg.selectFirst("desc").text());
        assertEquals(2, svg.select(".limits path").size(), "80 °C and the boil");
        // Time from 46 to 326 over 2.5 h, temperature from 170 to 26 over 20 to 100 °C.
        assertEquals("M46 170 102 47.6 326 47.6", svg.selectFirst(".course path").attr("d"));
        assertEquals(List.of("boil, 97.9 °C", "80 °C", "1"), svg.select(".numbers text").eachText(),
                "what goes in after all that is drawn has no mark");
        assertEquals("M74 108.8 74 120.8", svg.selectFirst(".numbers path").attr("d"));
    }

    @Test
    void aBathColderThanTheRoomAndABoilBelowEighty() {
        HeatPlot plot = new HeatPlot(List.of(new HeatStage(5, 60, 30, 30)), 70, List.of());
        String svg = plot.svg(Words.shipped(), "").html();
        assertTrue(svg.contains(">0</text>"), svg);
        assertTrue(svg.contains("boil, 70.0 °C"), svg);
    }

    @Test
    void theBoilsWordsStandOnTheBoard() {
        HeatPlot plot = new HeatPlot(List.of(new HeatStage(20, 90, 30, 30)), 100, List.of());
        Element svg = Jsoup.parseBodyFragment(plot.svg(Words.shipped(), "").html()).selectFirst("svg");
        double top = Double.parseDouble(svg.attr("viewBox").split(" ")[1]);
        double foot = Double.parseDouble(svg.selectFirst("text:containsOwn(boil)").attr("y"));
        assertTrue(foot - 13 >= top, () -> "letters of 13 px on " + foot + ", the board's edge at " + top);
    }

    @Test
    void nothingIsDrawnOfNoTime() {
        assertThrows(IllegalArgumentException.class, () -> new HeatPlot(List.of(), 100, List.of()));
        assertThrows(IllegalArgumentException.class,
                () -> new HeatPlot(List.of(new HeatStage(20, 88, 0, 0)), 100, List.of()));
    }
}
