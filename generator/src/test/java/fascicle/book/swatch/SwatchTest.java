package fascicle.book.swatch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.page.Markup;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class SwatchTest {

    private static final Lab RUST = new Rgb(127, 70, 50).toLab();
    private static final Lab BARK = new Rgb(90, 60, 40).toLab();
    private static final Lab STRAW = new Rgb(190, 160, 110).toLab();

    private static Element drawn(String svg) {
        return Jsoup.parseBodyFragment(svg).body().child(0);
    }

    @Test
    void strokesTakeTurnsThroughTheReadings() {
        Swatch swatch = new Swatch(List.of(RUST, BARK), Optional.of(STRAW), Optional.empty(), "Rust");
        List<String> colours = drawn(swatch.large().html()).select("path[fill^=#]").eachAttr("fill").subList(0, 2);
        assertEquals(List.of("#7f4632", "#5a3c28"), colours);
        List<Double> first = starts(drawn(swatch.large().html()).select("path").get(0));
        List<Double> second = starts(drawn(swatch.large().html()).select("path").get(1));
        assertEquals(10, first.size());
        assertEquals(9, second.size());
        for (int i = 0; i < second.size(); i++) {
            assertTrue(first.get(i) < second.get(i) && second.get(i) < first.get(i + 1), first + " " + second);
        }
    }

    /** Where the needles of a path begin, from left to right. */
    private static List<Double> starts(Element path) {
        return Pattern.compile("M(-?[0-9.]+)").matcher(path.attr("d")).results()
                .map(found -> Double.valueOf(found.group(1))).toList();
    }

    @Test
    void theSheathIsTheBareLotAndTheThreadTheTarget() {
        Swatch with = new Swatch(List.of(RUST), Optional.of(STRAW), Optional.of(BARK), "Rust");
        Swatch without = new Swatch(List.of(RUST), Optional.of(STRAW), Optional.empty(), "Rust");
        for (Function<Swatch, Markup> lay : List.<Function<Swatch, Markup>>of(Swatch::large, Swatch::small, Swatch::hung)) {
            assertEquals(List.of("#7f4632", "#bea06e"),
                    drawn(lay.apply(with).html()).select("path[fill^=#]").eachAttr("fill"));
            assertEquals(List.of("#5a3c28"), drawn(lay.apply(with).html()).select("path.thread").eachAttr("stroke"));
            assertEquals(List.of(), drawn(lay.apply(without).html()).select("path.thread").eachAttr("stroke"));
        }
    }

    @Test
    void theGroundIsNeutral() {
        String ground = drawn(new Swatch(List.of(RUST), Optional.empty(), Optional.empty(), "x").small().html())
                .select("rect").attr("fill");
        assertEquals(ground.substring(1, 3), ground.substring(3, 5));
        assertEquals(ground.substring(3, 5), ground.substring(5, 7));
    }

    @Test
    void itCarriesItsNameAndNoStyle() {
        String svg = new Swatch(List.of(RUST), Optional.empty(), Optional.empty(), "a <b> & c").large().html();
        assertEquals("a <b> & c", drawn(svg).select("title").text());
        assertFalse(svg.contains("style"));
        assertEquals("img", drawn(svg).attr("role"));
    }

    @Test
    void manyReadingsAllShow() {
        List<Lab> many = IntStream.range(0, 20).mapToObj(i -> new Rgb(10 * i, 70, 50).toLab()).toList();
        Swatch swatch = new Swatch(many, Optional.empty(), Optional.empty(), "x");
        assertEquals(21, drawn(swatch.small().html()).select("path[fill^=#]").eachAttr("fill").stream().distinct().count());
    }

    @Test
    void aColourThatIsNotKnownIsDashed() {
        String svg = new Swatch(List.of(), Optional.empty(), Optional.empty(), "x").small().html();
        assertEquals(1, drawn(svg).select("path.unread[fill=none]").size());
        assertEquals(1, drawn(svg).select("path[fill^=#]").size(), "only the sheath is filled");
    }

    /** Lab 50, 80, 60 is a red that no sRGB screen shows; Lab 40, 20, 20 is a brown that every one does. */
    @Test
    void aColourStrongerThanAScreenCanShowTurnsDownACorner() {
        Lab strong = new Lab(50, 80, 60);
        Lab brown = new Lab(40, 20, 20);
        assertTrue(new Swatch(List.of(brown, strong), Optional.empty(), Optional.empty(), "Red").large().html()
                .contains("class=\"clipped\""));
        assertFalse(new Swatch(List.of(brown), Optional.of(strong), Optional.empty(), "Brown").large().html()
                .contains("class=\"clipped\""));
    }
}
