package fascicle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.edition.EditionCut;
import fascicle.workings.Workings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pages and data say of acidity, uptake and of a bath that was used again. */
class BathPagesTest {

    @TempDir
    private Path folder;

    private Book book(Edition edition) throws IOException, ThemeBroken {
        return book(edition, "0.9 L");
    }

    private Book book(Edition edition, String left) throws IOException, ThemeBroken {
        WrittenNotebook written = WrittenNotebook.small(folder)
                .with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: us\n"
                        + "water: {alkalinity: 100 mg/L, ph: 7.5}\n")
                .with("days/2026-05-09/first.md", """
                        ---
                        title: The first batch
                        share: open
                        needles: {lot: scalded-2025, weight: 100 g}
                        presoak: {water: 1 L, with: [{is: white-vinegar, amount: 1 tbsp}]}
                        bath:
                          water: 1 L
                          dye: [{is: brick, amount: 2 % owf}]
                          assistants: [{is: white-vinegar, amount: 1 tbsp}]
                          ph: {reads: 5, with: meter}
                        glass: {plain: {hex: "#f5f3f1"}, before: {hex: "#ea8e63"}, after: {hex: "#f1cdb6"}, diluted: {before: 2, after: 1}, left: LEFT}
                        ---
                        """.replace("LEFT", left))
                .with("days/2026-05-10/second.md", """
                        ---
                        title: The second batch
                        share: open
                        needles: {lot: scalded-2025, weight: 50 g}
                        bath: {reuses: 2026-05-09-first, left: 30 %}
                        ---
                        """)
                .with("days/2026-05-11/third.md", """
                        ---
                        title: The third batch
                        needles: {lot: scalded-2025, weight: 50 g}
                        bath: {reuses: 2026-05-10-second, water: 1 L}
                        ---
                        """);
        return Book.of(Workings.of(EditionCut.of(written.read().notebook(), edition)), edition,
                Theme.shipped("longleaf"), Gallery.EMPTY);
    }

    private static Document page(Book book, String id) {
        return Jsoup.parse(text(book, "entries/" + id + ".html"));
    }

    private static String text(Book book, String address) {
        return new String(book.bytes(address), StandardCharsets.UTF_8);
    }

    /** acid.csv: a US tablespoon in a litre at 100 mg/L reads 4.063, and 4.066 heated; a meter that reads 5 is 0.9 off. */
    @Test
    void theEstimateStandsBesideTheMeasuredPh() throws IOException, ThemeBroken {
        String said = page(book(Edition.STUDIO), "2026-05-09-first").select("main").text();
        assertTrue(said.contains("pH, estimated about 4.1, cold or heated, the measured pH is 0.9 higher"), said);
        assertEquals(2, said.split("cold or heated").length, "of the presoak, which nobody heats, it is not said");
        assertEquals(3, said.split("pH, estimated about 4.1").length);
        assertTrue(said.contains("Glass before diluted, times 2 Glass after diluted, times 1"), said);
        assertTrue(said.contains("some of it will rinse out again"), said);
    }

    @Test
    void theBatchesOfABathStandInOrderWithWhatTheNextOneNeeds() throws IOException, ThemeBroken {
        Document page = page(book(Edition.STUDIO), "2026-05-10-second");
        assertEquals(3, page.select(".rungs > li").size());
        assertEquals("The second batch", page.select(".rungs > [aria-current=true] .name").text());
        assertEquals("../entries/2026-05-11-third.html",
                "../entries/" + page.select(".rungs > li:last-child a").attr("href").replaceFirst("^.*/", ""));
        String said = page.select("main").text();
        assertTrue(said.contains("This bath has dyed 3 batches so far"), said);
        assertTrue(said.contains("Brick about 0.6\u202fg left; about 0.4\u202fg lacking"), said);
        assertFalse(said.contains("What the next batch needs"), "the pot has moved on to the third");
        String last = page(book(Edition.STUDIO), "2026-05-11-third").select("main").text();
        assertTrue(last.contains("What the next batch needs For another 50\u202fg of dry needles"), last);
        assertTrue(last.contains("The second batch does not say what dye it left"), last);
    }

    @Test
    void dataHoldTheSameFigures() throws IOException, ThemeBroken {
        String json = text(book(Edition.STUDIO), "data/book.json");
        assertTrue(json.contains("\"reuses\":\"2026-05-09-first\",\"standing\":{\"liquor_ml\":900,\"liquor_about\":false,\"dye\":[\n"
                + "{\"is\":\"brick\",\"g\":0.6,\"low_g\":null,\"high_g\":null,"
                + "\"ml\":null,\"low_ml\":null,\"high_ml\":null,\"top_up_g\":0.4,"), json);
        assertTrue(json.contains("\"baths\":[\n{\"first\":\"2026-05-09-first\",\"entries\":[\"2026-05-09-first\","
                + "\"2026-05-10-second\",\"2026-05-11-third\"],\"batches\":3,"), json);
        assertTrue(json.contains("\"ph_estimate_why\":\"liquor\""), "nobody said what the second left in the pot");
    }

    @Test
    void aRoughVolumeStaysRough() throws IOException, ThemeBroken {
        Book book = book(Edition.STUDIO, "about 0.9 L");
        assertTrue(page(book, "2026-05-10-second").select("main").text()
                .contains("Liquor that stood in it about 900\u202fmL"));
        String json = text(book, "data/book.json");
        assertTrue(json.contains("\"standing\":{\"liquor_ml\":900,\"liquor_about\":true,"), json);
        assertTrue(text(book, "entries/2026-05-10-second.html").contains("\"left\":[900.0,1]"), "for the browser");
    }

    @Test
    void aLowerEditionKnowsOfNoBatchThatItDoesNotShow() throws IOException, ThemeBroken {
        Book open = book(Edition.OPEN);
        Document page = page(open, "2026-05-10-second");
        assertEquals(2, page.select(".rungs > li").size());
        assertTrue(page.select("main").text().contains("This bath has dyed 2 batches so far"));
        assertFalse(text(open, "data/book.json").contains("third"));
    }
}
