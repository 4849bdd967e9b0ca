package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Grids, ladders, repeats and the sample string: tables and lists that can be read, heard, copied and printed. */
class SwatchesSideBySideTest {

    private static final List<String> TABLES = List.of("grid.html", "ladders.html", "repeats.html");
    private static final List<String> STRINGS = List.of("string.html", "string-by-lightness.html", "string-by-year.html");

    private final PublishedBook book = PublishedBook.ofTheDemo();

    @Test
    void every_table_has_a_caption_and_heads() {
        List<Executable> checks = new ArrayList<>();
        for (String address : TABLES) {
            List<Element> tables = book.page(address).select("main table");
            checks.add(() -> assertFalse(tables.isEmpty(), address));
            for (Element table : tables) {
                checks.add(() -> assertFalse(table.select("> caption").text().isBlank(), address));
                checks.add(() -> assertEquals(List.of(), table.select("thead th:not([scope=col]), "
                        + "tbody th:not([scope=row])"), address));
            }
        }
        assertAll(checks);
    }

    @Test
    void every_cell_says_in_words_what_its_colour_shows() {
        List<Executable> checks = new ArrayList<>();
        for (String address : List.of("grid.html", "ladders.html")) {
            for (Element cell : book.page(address).select("table.grid td")) {
                String text = cell.text();
                boolean tried = !cell.select("svg").isEmpty();
                checks.add(() -> assertEquals(!tried, text.endsWith("not tried"), text));
                if (tried) {
                    checks.add(() -> assertFalse(cell.select(".name").text().isBlank(), text));
                    checks.add(() -> assertTrue(text.matches(".*\\d+ entr(y|ies), \\d+ dye days?.*"), text));
                    checks.add(() -> assertEquals(cell.select(".hex").isEmpty(),
                            text.contains("nothing that worked") || text.contains("No colour was read"), text));
                }
            }
        }
        assertAll(checks);
    }

    @Test
    void every_entry_stands_in_one_cell_or_aside() {
        Document grid = book.page("grid.html");
        int inCells = grid.select("table.grid td a:contains(dye day)").stream()
                .mapToInt(count -> Integer.parseInt(count.text().split(" ")[0])).sum();
        int aside = Integer.parseInt(grid.select("main > p:contains(aside)").text().split(" ")[0]);
        assertEquals(book.entries().size(), inCells + aside);
    }

    @ParameterizedTest
    @ValueSource(strings = {"string.html", "string-by-lightness.html", "string-by-year.html"})
    void every_entry_with_a_colour_hangs_once_on_each_string(String address) {
        Set<String> coloured = new TreeSet<>();
        book.data().required("entries").forEach(entry -> {
            if (entry.required("colour").isObject()) {
                coloured.add("entries/" + entry.required("id").asString() + ".html");
            }
        });
        List<String> hung = book.page(address).select("ul.string li a").eachAttr("href");
        assertEquals(coloured.size(), hung.size());
        assertEquals(coloured, new TreeSet<>(hung));
    }

    @Test
    void by_lightness_each_sample_is_no_lighter_than_the_one_before() {
        TreeMap<String, Double> lightness = new TreeMap<>();
        book.data().required("entries").forEach(entry -> {
            if (entry.required("colour").isObject()) {
                lightness.put("entries/" + entry.required("id").asString() + ".html",
                        entry.required("colour").required("lab").get(0).asDouble());
            }
        });
        List<Double> hung = book.page("string-by-lightness.html").select("ul.string li a").eachAttr("href").stream()
                .map(lightness::get).toList();
        assertEquals(hung.stream().sorted(Comparator.reverseOrder()).toList(), hung);
    }

    @Test
    void a_phone_stacks_the_tables_and_no_column_head_is_lost() {
        List<Executable> checks = new ArrayList<>();
        try (Browser browser = Browser.open(320)) {
            for (String address : TABLES) {
                browser.width(320).show(book.file(address));
                long sideways = browser.sidewaysScroll();
                checks.add(() -> assertEquals(0, sideways, address));
                boolean cut = (Boolean) browser.script("return [...document.querySelectorAll('.scroll')]"
                        + ".some(region => region.scrollWidth > region.clientWidth);");
                checks.add(() -> assertFalse(cut, address + " scrolls in its region, though it is stacked"));
                boolean said = (Boolean) browser.script("return [...document.querySelectorAll('td[data-on]')]"
                        + ".every(cell => getComputedStyle(cell, '::before').content.length > 2);");
                checks.add(() -> assertTrue(said, address));
                browser.screenshot(address + "-320");
                browser.width(Browser.LAPTOP).show(book.file(address));
                browser.screenshot(address + "-1280");
                browser.print(address);
            }
            for (String address : STRINGS) {
                browser.width(320).show(book.file(address));
                long sideways = browser.sidewaysScroll();
                checks.add(() -> assertEquals(0, sideways, address));
            }
        }
        assertAll(checks);
    }

    @Test
    void lists_lead_to_where_their_swatches_lie_side_by_side() {
        Document dyes = book.page("dyes.html");
        assertEquals(List.of("grid.html", "ladders.html"), dyes.select("h1 + p a").eachAttr("href"));
    }
}
