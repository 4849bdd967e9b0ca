package fascicle.book;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Notebook;
import fascicle.workings.Workings;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BookTest {

    private static final String BRICK = "entries/2026-05-09-brick.html";

    private static Book book(Notebook notebook, Edition edition) {
        try {
            return Book.of(Workings.of(notebook), edition, Theme.shipped("longleaf"), Gallery.EMPTY);
        } catch (ThemeBroken broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static Book sample() {
        return book(SampleNotebook.notebook(), Edition.STUDIO);
    }

    private static String text(Book book, String address) {
        return new String(book.bytes(address), StandardCharsets.UTF_8);
    }

    private static Document page(Book book, String address) {
        return Jsoup.parse(text(book, address));
    }

    private static String fact(Document page, String label) {
        return page.select("dt").stream().filter(term -> term.text().equals(label)).findFirst()
                .map(Element::nextElementSibling).map(Element::text).orElse("");
    }

    private static List<String> cells(Document page, String table, String row) {
        Element section = page.select("section.step:has(h3:contains(" + table + ")), table:has(caption:contains(" + table + "))").last();
        assertNotNull(section);
        return section.select("tr:has(th:contains(" + row + "))").select("td").eachText();
    }

    @Test
    void everythingHasItsAddress() {
        assertEquals(List.of("about.html", "conditions.html", "conditions/scalded.html", "data/batch.js", "data/book.json",
                "data/entries.csv", "data/look-up.js", "days.html", "days/2026-05-09.html", "days/2026-05-20.html", "dyes.html",
                "dyes/brick.html", "dyes/salt.html", "dyes/white-vinegar.html", "entries.html", BRICK,
                "entries/2026-05-20-brick-again.html", "entries/2026-05-20-gold.html", "families.html",
                "families/brown.html", "grid.html", "index.html", "ladders.html", "look-up.html", "lots.html",
                "lots/faded-2024.html", "lots/scalded-2025.html", "methods.html", "methods/low-water-simmer.html",
                "repeats.html", "scripts/batch.js", "scripts/engine.js", "scripts/look-up.js", "scripts/open.js", "shelf.html",
                "string-by-lightness.html",
                "string-by-year.html", "string.html", "style/alegreya.woff2", "style/lists.css",
                "style/longleaf.css", "style/look-up.css", "years.html",
                "years/2026.html"), sample().addresses());
        assertThrows(IllegalArgumentException.class, () -> sample().bytes("entries/nothing.html"));
    }

    @Test
    void everyPageIsWholeAndEveryWayInItLeadsSomewhere() {
        Book book = sample();
        for (String address : book.addresses()) {
            if (!address.endsWith(".html")) {
                continue;
            }
            Document page = page(book, address);
            assertTrue(text(book, address).startsWith("<!DOCTYPE html>"), address);
            assertEquals("en", page.select("html").attr("lang"));
            assertEquals(1, page.select("h1").size(), address);
            assertFalse(page.title().isBlank());
            assertEquals(14, page.select("nav ul.lists a").size());
            assertTrue(page.select("meta[http-equiv=Content-Security-Policy]").attr("content")
                    .startsWith("default-src 'none'; style-src 'self';"));
            assertEquals(0, page.select("script:not([src]), [style], style, [onclick], [id=''], img, iframe").size(), address);
            assertEquals(page.select("[id]").size(), page.select("[id]").eachAttr("id").stream().distinct().count());
            for (Element way : page.select("[href]")) {
                String href = way.attr("href");
                if (href.startsWith("#")) {
                    assertTrue(page.getElementById(href.substring(1)) != null, address + " -> " + href);
                } else {
                    String to = URI.create("/" + address).resolve(href).getRawPath().substring(1);
                    String decoded = URLDecoder.decode(to, StandardCharsets.UTF_8);
                    assertTrue(book.addresses().contains(decoded), address + " -> " + href);
                }
            }
        }
    }

    @Test
    void anEntrySaysWhatWasDoneAndWhatCameOut() {
        Document page = page(sample(), BRICK);
        assertEquals("Brick on scalded black pine", page.select("h1").text());
        assertEquals("Tag 41 9 May 2026", page.select(".over").text());
        assertEquals("Worked. Evenness 4 of 5. Supple. Fault: pale.", page.select(".outcome").text());
        assertEquals("Scalded, 45\u202fg · Brick 1.5\u202f% owf · White vinegar 60\u202fmL · 65.2\u202fmL/g · held 2 h at "
                + "88\u202f°C", page.select("p.gist").text());
        assertEquals(List.of("bare", "dyed", "target"), page.select(".specimen").stream()
                .map(specimen -> specimen.className().replace("specimen ", "")).toList());
        assertEquals("Moderate reddish brown", fact(page, "Colour"));
        assertEquals("#8a3b2a, Lab 35.8, 33.5, 27.6", fact(page, "Target"));
        assertEquals("4 of 5", fact(page, "Evenness"));
        assertEquals("overnight", fact(page, "Cooled in the bath"));
        assertEquals("to 88\u202f°C, over 30 min, held 2 h", fact(page, "Heat"));
        assertEquals("4.1, by meter", fact(page, "pH"));
        assertEquals(List.of("1.5 % owf", "0.675\u202fg", "–", "1.5\u202f%", "0.23\u202fg/L", "needles"),
                cells(page, "Bath", "Brick"));
        assertEquals(List.of("about 40 g", "about 40\u202fg"), cells(page, "Bath", "Table salt").subList(0, 2));
        assertEquals(List.of("0.375\u202fg", "0.75\u202fg", "1.5\u202fg"), cells(page, "For other weights", "Brick"));
        assertTrue(page.select(".caution").text().contains("label on the pack, local rules and licensed practice"));
    }

    @Test
    void whatMayBeAskedStandsOnThePageWithItsCounts() {
        Document page = page(sample(), "look-up.html");
        assertEquals(List.of("Condition of the needles", "Did it work", "Year", "Nearest to a colour"),
                page.select("form.ask fieldset > legend").eachText());
        assertEquals(List.of("Colour family", "Needle lot", "Dye or assistant", "Method"),
                page.select("form.ask details > summary").eachText());
        assertEquals(List.of("scalded Scalded 2"), choices(page, "condition"));
        assertEquals(List.of("worked worked 2", "partly partly 0", "failed failed 0"), choices(page, "verdict"));
        assertEquals(List.of("2026 2026 3"), choices(page, "year"));
        assertEquals(List.of("low-water-simmer Simmering in little water 2"), choices(page, "method"));
    }

    private static List<String> choices(Document page, String part) {
        return page.select("label.choice:has(input[name=" + part + "])").stream()
                .map(label -> label.select("input").attr("value") + " " + label.text()).toList();
    }

    @Test
    void withoutScriptsThePlainListsLeadToTheSameEntries() {
        Document page = page(sample(), "look-up.html");
        List<String> ways = page.select(".without a").eachAttr("href");
        assertTrue(ways.containsAll(List.of("conditions/scalded.html", "years/2026.html", "entries.html", "dyes.html")),
                ways.toString());
        assertEquals(List.of("worked", "partly", "failed"), page.select(".without .verdict").eachText());
    }

    @Test
    void wetReadingsAndThoseByEyeAreListedAsKept() {
        Document page = page(sample(), BRICK);
        List<String> readings = page.select("h3:contains(Readings) + dl dd").eachText();
        assertEquals(5, readings.size());
        assertTrue(readings.get(3).endsWith("wet, so not compared"));
        assertEquals("by eye: like the sample with tag 18a, but redder", readings.get(4));
        assertEquals("../entries/2026-05-20-gold.html", page.select("h3:contains(Readings) + dl a").attr("href"));
    }

    @Test
    void whatWasInheritedSaysWhereFrom() {
        Document page = page(sample(), BRICK);
        assertEquals("3.2 L of water from the method Simmering in little water", fact(page, "Water as written"));
        assertEquals("../methods/low-water-simmer.html", page.select("a.whence").attr("href"));
        assertTrue(page.select("h3:contains(Presoak)").text().endsWith("shared by the day"));
    }

    @Test
    void theMakersLinksLeadToPages() {
        Document page = page(sample(), BRICK);
        assertEquals("See <a href=\"../dyes/brick.html\">the dye</a> and "
                + "<a href=\"../entries/2026-05-20-brick-again.html\">the other</a>, not this.",
                page.select(".notes p").html());
        assertEquals("Watch it", page.select(".notes h3").text());
    }

    @Test
    void groupsCountDaysAndOfferARecipeToStartFrom() {
        Document page = page(sample(), "families/brown.html");
        assertEquals("2", fact(page, "Days it worked"));
        assertEquals("0", fact(page, "Days it failed"));
        assertTrue(page.select("section:contains(Start from this recipe)").text().contains("worked on 2 days"));
        assertEquals(2, page.select(".sheaf ul.specimens svg").size());
        assertEquals("Worked on 2 of 2 days; likely between 3 and 10 in ten.", page.select(".outcome").text());
        assertTrue(page(sample(), "days/2026-05-09.html").select(".notes").text().contains("Rain all day."));
        assertTrue(page(sample(), "lots/faded-2024.html").select("main").text().contains("Nothing here yet."));
    }

    @Test
    void figuresOnThePageAreTheFiguresInTheData() {
        Book book = sample();
        String json = text(book, "data/book.json");
        Document page = page(book, BRICK);
        assertTrue(json.contains("\"shift_de00\":11.698304"), json);
        assertEquals("ΔE00 11.7 ± 6.1", fact(page, "Shift from the bare needles"));
        assertEquals("warmer", fact(page, "Tone of the shift"));
        assertTrue(json.contains("\"uncertainty_de00\":6,"), json);
        assertTrue(json.contains("\"shift_tone\":\"warmer\""), json);
        assertTrue(json.contains("\"lab\":[35.955628,25.643576,20.987436],\"hex\":\"#804334\""));
        assertEquals("36.0, 25.6, 21.0", fact(page, "Lab (D50)"));
        assertTrue(json.contains("\"target_de00\":3.795769"));
        assertEquals("the same, as far as these readings tell (ΔE00 3.8 ± 6)", fact(page, "From the target"));
        assertTrue(text(book, "data/entries.csv").contains(",35.955628,25.643576,20.987436,#804334,3,"));
    }

    @Test
    void keptIsWhatIsLeftAndDampNeedlesHaveALastDay() {
        String json = text(sample(), "data/book.json");
        assertTrue(json.contains("\"kept\":{\"left_g\":31,\"how\":\"damp\",\"use_by\":\"2026-05-14\"}"), json);
        assertTrue(json.contains("{\"after_days\":42,\"de00\":"));
        assertTrue(json.contains("\"tag\":41,") && json.contains("\"tag\":\"18a\","));
        assertTrue(json.contains("\"colour\":null,\"glass\":null,\"outcome\":null,\"fastness\":null,\"window\":[],\"kept\":null"));
    }

    /** 900 − 45 − 45 = 810 g. Nothing was bought, and what vinegar weighs is not said. */
    @Test
    void whatIsLeftAndPaidIsInTheDataOrNull() {
        String json = text(sample(), "data/book.json");
        assertTrue(json.contains("\"left_g\":810,"), json);
        assertTrue(json.contains("\"left\":null,\"left_unit\":null,"), json);
        assertTrue(json.contains("\"cost\":{\"total\":null,\"per_100g\":null}"), json);
        assertTrue(text(sample(), "data/entries.csv").contains("kept_use_by,cost_total,cost_per_100g\r\n"));
    }

    @Test
    void whatIsTheStudiosOwnIsInNoOtherBook() {
        Book open = book(SampleNotebook.notebook(), Edition.OPEN);
        String all = open.addresses().stream().map(address -> text(open, address)).collect(Collectors.joining());
        for (String own : List.of("\"kept\"", "\"cost\"", "\"left\"", "\"left_g\"", "kept_left_g", "lake-basket", "4.20",
                "900", "gramz", "use_by", "cost_total", "left_unit", "On the shelf", "shelf.html")) {
            assertFalse(all.contains(own), own);
        }
        assertFalse(open.addresses().contains("shelf.html"));
        assertTrue(text(open, "index.html").contains("its file has errors"));
        assertTrue(text(sample(), "index.html").contains("45 gramz"));
    }

    @Test
    void everyPageAloneIsTheSameInAnyOrder() {
        Book first = sample();
        List<String> addresses = new ArrayList<>(first.addresses());
        List<byte[]> bytes = addresses.stream().map(first::bytes).toList();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < addresses.size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(7));
        Book second = sample();
        order.parallelStream().forEach(i -> assertArrayEquals(bytes.get(i), second.bytes(addresses.get(i)), addresses.get(i)));
    }

    @Test
    void linesEndInLineFeedsAndTextIsUtf8() {
        Book book = sample();
        for (String address : book.addresses()) {
            if (address.endsWith(".woff2")) {
                continue;
            }
            assertEquals(address.endsWith(".csv"), text(book, address).contains("\r"), address);
            assertFalse(text(book, address).contains("\ufffd"), address);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"</title></main><script>alert(1)</script>", "${1+1} <#assign x=1> ${.now}", "\"'><img src=x>",
        "\u202eתפוח ألف", "bell\u0007 null\u0000 del\u0085", "\ud83d\ude00 \ud83c\udf32", "&amp; &lt;", "\ud800 lone"})
    void aTitleIsOnlyText(String title) {
        Entry odd = SampleNotebook.titled(title, title);
        Book book = book(SampleNotebook.withOneMore(odd), Edition.STUDIO);
        Document page = page(book, "entries/2026-06-01-odd.html");
        assertEquals(0, page.select("script, img").size());
        assertEquals(1, page.select("main").size());
        String encodable = new String(title.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        assertEquals(encodable.replaceAll("\\p{Cc}", "\ufffd"), page.select("h1").text());
        assertTrue(page.select("h1").attr("dir").equals("auto"));
        text(book, "data/book.json");
    }

    @Test
    void aTitleMayBeVeryLong() {
        String title = "long".repeat(75);
        Book book = book(SampleNotebook.withOneMore(SampleNotebook.titled(title, "")), Edition.STUDIO);
        assertEquals(title, page(book, "entries/2026-06-01-odd.html").select("h1").text());
    }

    @Test
    void aTagIsNoFormula() {
        Book book = book(SampleNotebook.withOneMore(SampleNotebook.titled("@odd", "")), Edition.STUDIO);
        assertTrue(text(book, "data/entries.csv").contains("2026-06-01-odd,'=1+1,'@odd,2026-06-01"));
    }

    @Test
    void whatTheCleanerTakesOutIsFoundWithoutAPage() {
        Notebook odd = SampleNotebook.withOneMore(SampleNotebook.titled("x", "a <script>b</script>"));
        // The sample links to a file that is not there.
        assertEquals(List.of("days/2026-05-09/brick.md:12:95", "days/2026-06-01/odd.md:10:3"),
                Book.takenOutOf(odd, Gallery.EMPTY).stream().map(finding -> finding.place().toString()).toList());
    }

    @Test
    void anEmptyNotebookIsABookToo() {
        Book book = book(SampleNotebook.with(List.of()), Edition.OPEN);
        assertTrue(text(book, "index.html").contains("0 entries on 0 dye days."));
        assertTrue(text(book, "data/entries.csv").startsWith("id,tag,title,date,"));
        assertTrue(text(book, "grid.html").contains("nothing to lay out yet."));
        assertTrue(text(book, "ladders.html").contains("No dye has been tried alone at two known depths yet."));
        assertTrue(text(book, "repeats.html").contains("No recipe has been dyed twice"));
        assertTrue(text(book, "string.html").contains("No entry has a colour yet."));
        book.addresses().forEach(book::bytes);
    }

    @Test
    void theKitchenIsNamedAndSaysWhenItWasLeftOut() {
        Document about = page(sample(), "about.html");
        assertTrue(about.select("main").text().contains("does not say whose kitchen measures it means; metric ones were taken"));
        assertEquals("250\u202fmL", fact(about, "1 cup"));
    }
}
