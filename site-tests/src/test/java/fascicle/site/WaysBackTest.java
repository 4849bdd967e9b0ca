package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where a page leads to another because the two belong together, the other leads back. */
class WaysBackTest {

    /**
     * The maker's own words lead where the maker likes, and one colour may be the nearest to another without the other's
     * being nearest to it.
     */
    private static final String ASIDE = ".notes, .like-colours";

    /** What stands in rows and tables of entries says of each entry where it belongs, not of the page. */
    private static final String ROWS = ", .specimens, .parted, .laid";

    private static final Set<String> GROUPS =
            Set.of("days", "methods", "lots", "dyes", "conditions", "families", "years");

    @ParameterizedTest
    @EnumSource
    void between_entries_and_what_they_have_in_common(Edition edition) {
        Map<String, Set<String>> ways = ways(PublishedBook.ofTheDemo(edition), ASIDE);
        for (String group : GROUPS) {
            assertMutual(ways, "entries", group);
        }
    }

    @ParameterizedTest
    @EnumSource
    void between_entries_that_come_from_or_repeat_one_another(Edition edition) {
        assertMutual(ways(PublishedBook.ofTheDemo(edition), ASIDE), "entries", "entries");
    }

    @ParameterizedTest
    @EnumSource
    void between_methods_and_the_dyes_and_methods_they_name(Edition edition) {
        Map<String, Set<String>> ways = ways(PublishedBook.ofTheDemo(edition), ASIDE + ROWS);
        assertMutual(ways, "methods", "dyes");
        assertMutual(ways, "methods", "methods");
    }

    @ParameterizedTest
    @EnumSource
    void between_lots_their_methods_and_their_condition_and_between_days_and_years(Edition edition) {
        Map<String, Set<String>> ways = ways(PublishedBook.ofTheDemo(edition), ASIDE + ROWS);
        assertMutual(ways, "methods", "lots");
        assertMutual(ways, "lots", "conditions");
        assertMutual(ways(PublishedBook.ofTheDemo(edition), ASIDE), "days", "years");
    }

    private static void assertMutual(Map<String, Set<String>> ways, String one, String other) {
        Set<String> pairs = pairs(ways, one, other);
        // The demo's methods name no lot; every edition's entries belong somewhere.
        assertTrue(!one.equals("entries") || !pairs.isEmpty(), "ways from " + one + " to " + other);
        Set<String> back = pairs(ways, other, one).stream()
                .map(pair -> pair.split(" -> ")[1] + " -> " + pair.split(" -> ")[0])
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(String.join("\n", back), String.join("\n", pairs));
    }

    private static Set<String> pairs(Map<String, Set<String>> ways, String from, String to) {
        Set<String> pairs = new TreeSet<>();
        ways.forEach((page, leads) -> leads.stream()
                .filter(way -> page.startsWith(from + "/") && way.startsWith(to + "/") && !way.equals(page))
                .forEach(way -> pairs.add(page + " -> " + way)));
        return pairs;
    }

    /** From each page, the pages it leads to. */
    private static Map<String, Set<String>> ways(PublishedBook book, String without) {
        Map<String, Set<String>> ways = new HashMap<>();
        for (String address : book.pages()) {
            Document page = book.page(address);
            page.select(without).remove();
            List<String> hrefs = page.select("main a[href]").eachAttr("href");
            ways.put(address, hrefs.stream().filter(href -> href.startsWith("../"))
                    .map(href -> URI.create("book:/" + address.replace(" ", "%20")).resolve(href).getRawPath().substring(1))
                    .map(path -> URLDecoder.decode(path.replace("+", "%2B"), StandardCharsets.UTF_8))
                    .collect(Collectors.toCollection(TreeSet::new)));
        }
        return ways;
    }
}
