package fascicle.book.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.Book;
import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.Workings;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a page tells when it is hot, and when what is done. */
class HeatAndClockTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder);
    }

    @Test
    void aMethodsHeatInWords() throws Exception {
        method("bath: {water: 3 L, assistants: [{is: salt, amount: 40 g, at: 20 min}]}",
                "heat: [{to: 88 °C, over: 30 min, hold: 2 h}, {to: below-simmer, hold: 1 h}]");
        Element plot = page("methods/low-water-simmer.html").selectFirst(".of-heating");
        assertEquals("From 20 °C at 0:00 h, 88 °C at 0:30, held until 2:30. Above 80 °C for 124 min, as far as it is drawn. "
                + "Not drawn, because a temperature or a time is not written: to below a simmer, held 1 h. At the sea, water "
                + "boils at 100 °C (the notebook says no “height:”).", plain(plot.selectFirst("p").text()));
        assertEquals("Table salt, at 0:20", plot.selectFirst("dd").text());
        assertEquals("1", plot.selectFirst("dt").text());
    }

    @Test
    void theBoilIsThatOfTheWorkshop() throws Exception {
        notebook.with("notebook.yaml", "form: 1\ntitle: Up here\nkitchen: metric\nheight: 1400 m\n");
        assertTrue(plain(page("methods/low-water-simmer.html").selectFirst(".of-heating p").text())
                .endsWith("Here, at 1400 m, water boils at 95.4 °C."));
    }

    @Test
    void aHeightOfNoWorkshopIsNotUsed() throws Exception {
        notebook.with("notebook.yaml", "form: 1\ntitle: Up here\nkitchen: metric\nheight: 20000 m\n");
        assertTrue(plain(page("methods/low-water-simmer.html").selectFirst(".of-heating p").text())
                .endsWith("At the sea, water boils at 100 °C (the notebook’s “height: 20000 m” is not used: no workshop lies "
                        + "there)."));
    }

    @Test
    void aThermometerInFahrenheitIsToldInFahrenheit() throws Exception {
        method("bath: {vessel: wide-pan, depth: 3 in}", "heat: [{to: 190 °F, over: 30 min, hold: 2 h}]");
        Element page = page("methods/low-water-simmer.html");
        assertTrue(rows().get(0).contains("Heat to 190 °F (88 °C)."), rows()::toString);
        assertTrue(rows().get(1).endsWith("Hold at 190 °F (88 °C). 2:00"), rows()::toString);
        String said = plain(page.selectFirst(".of-heating p").text());
        assertTrue(said.startsWith("From 68 °F (20 °C) at 0:00 h, 190 °F (88 °C) at 0:30, held until 2:30."), said);
        assertTrue(said.endsWith("water boils at 212 °F (100 °C) (the notebook says no “height:”)."), said);
        String facts = plain(page.select("main section > dl").text());
        assertTrue(facts.contains("Hottest 190 °F (88 °C)"), facts);
        assertTrue(facts.contains("3 in (7.6 cm), "), facts);
    }

    @Test
    void nothingIsDrawnOfALook() throws Exception {
        method("bath: {water: 3 L}", "heat: [{to: below-simmer, hold: 2 h}]");
        assertEquals(0, page("methods/low-water-simmer.html").select(".of-heating").size());
    }

    @Test
    void anEntryDrawsItsOwnHeatAndLeavesTheMethodsToTheMethod() throws Exception {
        notebook.with("days/2026-05-09/as-said.md",
                        "---\nmethod: low-water-simmer\nneedles: {weight: 50 g}\n---\n")
                .with("days/2026-05-09/hotter.md", "---\nmethod: low-water-simmer\nneedles: {weight: 50 g}\n"
                        + "heat: [{to: 95 °C, over: 30 min, hold: 2 h}]\n---\n")
                .with("days/2026-05-09/alone.md", "---\nneedles: {weight: 50 g}\nbath: {water: 3 L}\n"
                        + "heat: [{to: 95 °C, over: 30 min, hold: 2 h}]\n---\n");
        assertEquals(0, page("entries/2026-05-09-as-said.html").select(".of-heating, .by-clock").size());
        assertEquals(1, page("entries/2026-05-09-hotter.html").select(".of-heating").size());
        assertEquals(1, page("entries/2026-05-09-alone.html").select("details .by-clock").size());
    }

    @Test
    void aRoughHoldIsToldAsRough() throws Exception {
        method("bath: {water: 3 L}", "heat: [{to: 88 °C, over: 30 min, hold: about 2 h}]");
        Element page = page("methods/low-water-simmer.html");
        assertTrue(plain(page.selectFirst(".of-heating p").text()).contains("Above 80 °C for about 124 min. Some of these times "
                + "or temperatures were written as rough."));
        assertTrue(plain(page.text()).contains("about 150 min"), page.text());
    }

    @Test
    void anEntryWithTimesOfItsOwnHasAClockOfItsOwn() throws Exception {
        method("presoak: {for: 1 h}", "bath: {water: 3 L}", "heat: [{to: 88 °C, hold: 1 h}]", "cool: overnight");
        notebook.with("days/2026-05-09/as-said.md", "---\nmethod: low-water-simmer\nneedles: {weight: 200 g}\n---\n")
                .with("days/2026-05-09/sooner.md", "---\nmethod: low-water-simmer\nneedles: {weight: 50 g}\ncool: 2 h\n---\n")
                .with("days/2026-05-09/unsoaked.md", "---\nmethod: low-water-simmer\nneedles: {weight: 50 g}\n"
                        + "presoak: {for: 10 min}\n---\n");
        assertEquals(0, page("entries/2026-05-09-as-said.html").select(".by-clock").size(),
                "more liquor takes longer, and that alone is no other way of working");
        assertEquals(1, page("entries/2026-05-09-sooner.html").select("details .by-clock").size());
        assertEquals(1, page("entries/2026-05-09-unsoaked.html").select("details .by-clock").size());
    }

    @Test
    void needlesComeOutOfAHotMordantWithTongs() throws Exception {
        method("before: [{as: mordant, water: 2 L, heat: [{to: 80 °C, over: 30 min, hold: 1 h}]}]",
                "after: [{as: iron, water: 2 L, heat: [{to: 40 °C, over: 10 min, hold: 10 min}]}]",
                "bath: {water: 3 L}", "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]", "cool: 1 h");
        assertEquals("1:30 Heat off. With tongs, out of the hot bath: Mordant. Make up the bath. Bath on the stove, needles in. Heat to 88 °C. 0:30",
                rows().get(2));
        assertTrue(rows().stream().anyMatch(row -> row.contains("Out of the bath: Iron.")), () -> "not hot to the hand");
        assertTrue(plain(page("methods/low-water-simmer.html").text()).contains("It is safer to let it cool first"));
    }

    @Test
    void theStepsByTheClock() throws Exception {
        method("presoak: {for: 1 h}", "bath: {water: 3 L}", "heat: [{to: 88 °C, hold: 1 h 30 min}]", "cool: overnight",
                "rinse: after-drying", "dry: 2 days");
        assertEquals(List.of("0:00 Needles into the presoak. 1:00",
                "1:00 Make up the bath. Out of the presoak. Bath on the stove, needles in. Heat to 88 °C. about 0:15",
                "about 1:15 Hold at 88 °C. 1:30", "about 2:45 Heat off. Leave to cool in the bath. overnight",
                "next morning Out of the bath. Dry. 2 days", "day 4, about 8:00 Rinse. Dry. until dry"), rows());
    }

    @Test
    void daysAfterANightAreCountedAndTheirHourTold() throws Exception {
        method("presoak: {for: overnight}", "bath: {water: 3 L}", "heat: [{to: 88 °C, over: 30 min, hold: 1 h}]",
                "cool: overnight", "rinse: after-drying", "dry: 3 days");
        assertTrue(rows().contains("day 2, about 8:30 Hold at 88 °C. 1:00"), rows()::toString);
        assertTrue(rows().contains("day 6, about 8:00 Rinse. Dry. until dry"), rows()::toString);
    }

    @Test
    void aStepThatOnlySaysHowLongKeepsTheHeatOn() throws Exception {
        method("bath: {water: 3 L}", "heat: [{to: 88 °C, over: 30 min, hold: 1 h}, {over: 45 min}]", "cool: 1 h");
        assertEquals("1:30 Keep heating. 0:45", rows().get(2));
        assertEquals("2:15 Heat off. Leave to cool in the bath. 1:00", rows().get(3));
        Element page = page("methods/low-water-simmer.html");
        assertTrue(plain(page.text()).contains("135 min"), page.text());
        assertTrue(plain(page.selectFirst(".of-heating p").text()).contains("held until 2:15"));
    }

    @Test
    void nobodyGuessesHowHotABathWasThatIsOnlyHeld() throws Exception {
        method("bath: {water: 3 L}", "heat: [{hold: 1 h}, {to: 88 °C, hold: 1 h}]", "cool: 1 h");
        assertEquals("1:00 Heat to 88 °C. not known", rows().get(1));
    }

    @Test
    void whatIsNotKnownSaysWhichLineWouldTell() throws Exception {
        method("bath: {water: 3 L}", "heat: [{to: 88 °C, over: 30 min, hold: 2 h}]", "rinse: before-drying");
        assertEquals("when cool Out of the bath. Rinse. Dry. until dry", rows().get(3));
        assertEquals(List.of("No times after the cooling: write how long the bath cools, as “cool:”. The needles come out "
                + "when it is cool."), page("methods/low-water-simmer.html").select(".by-clock").parents().next(".remark")
                .eachText());
    }

    @Test
    void aRecipeWithoutATimeHasNoClock() throws Exception {
        method("bath: {dye: [{is: brick, amount: 1 g}]}");
        assertEquals(List.of(), rows());
    }

    private void method(String... lines) {
        notebook.with("methods/low-water-simmer.md", "---\ntitle: Low-water simmer\nfor: 50 g\n" + String.join("\n", lines)
                + "\n---\n");
    }

    private List<String> rows() throws Exception {
        return page("methods/low-water-simmer.html").select(".by-clock tbody tr").stream()
                .map(row -> plain(row.text())).toList();
    }

    private Element page(String address) throws Exception {
        Book book = Book.of(Workings.of(notebook.read().notebook()), Edition.STUDIO, Theme.shipped("longleaf"), Gallery.EMPTY);
        return Jsoup.parse(new String(book.bytes(address), StandardCharsets.UTF_8)).body();
    }

    private static String plain(String text) {
        return text.replace('\u202f', ' ');
    }
}
