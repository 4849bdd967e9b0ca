package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages of each edition: all ways lead somewhere, nothing is fetched, and nothing on a page can run. */
class PagesHoldTogetherTest {

    /** A file beside the style. */
    private static final Pattern BESIDE = Pattern.compile("url\\(\"[a-z-]+\\.woff2\"\\)");

    private static final Pattern SCHEME = Pattern.compile("([A-Za-z][A-Za-z0-9+.-]*):.*", Pattern.DOTALL);
    private static final Set<String> MAY_LEAVE = Set.of("http", "https", "mailto");
    private static final Pattern COLOUR =
            Pattern.compile("#[0-9a-fA-F]{3,8}\\b|\\b(?:rgba?|hsla?|lab|lch|oklab|oklch|color)\\(");
    private static final Set<String> COLOURED = Set.of("fill", "stroke", "stop-color");

    /** A script that another one loads when it is asked for. */
    private static final Pattern LOADED = Pattern.compile("\\bload\\('([a-z/-]+\\.js)'");

    /** Attributes that make a browser fetch something by itself. */
    private static final List<String> FETCHING =
            List.of("src", "srcset", "poster", "data", "background", "action", "formaction", "ping", "manifest");

    @ParameterizedTest
    @EnumSource
    void every_way_within_the_book_leads_to_a_file_and_a_place_in_it(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        // Names from a listing, so that case counts on every disk.
        Set<String> files = Set.copyOf(book.files());
        onEveryPage(book, (address, page) -> {
            for (Element element : page.select("[href], [src]")) {
                String way = element.hasAttr("href") ? element.attr("href") : element.attr("src");
                if (SCHEME.matcher(way).matches()) {
                    continue;
                }
                Way to = Way.from(address, way);
                assertTrue(files.contains(to.file()), address + ": no such file: " + way);
                // A question is asked there and is no place: look-up.html#near=7f4632.
                to.place().filter(place -> !to.file().equals("look-up.html") || !place.contains("=")).ifPresent(place -> assertTrue(
                        book.page(to.file()).getElementById(place) != null, address + ": no such place: " + way));
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void every_file_can_be_reached_from_the_first_page(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        Set<String> seen = new TreeSet<>(Set.of("index.html"));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String address = open.remove();
            if (address.startsWith("scripts/")) {
                LOADED.matcher(book.text(address)).results().map(file -> file.group(1)).forEach(seen::add);
            }
            if (!address.endsWith(".html")) {
                continue;
            }
            for (Element element : book.page(address).select("[href], [src]")) {
                String way = element.hasAttr("href") ? element.attr("href") : element.attr("src");
                if (!SCHEME.matcher(way).matches() && seen.add(Way.from(address, way).file())) {
                    open.add(Way.from(address, way).file());
                }
            }
            for (Element picture : book.page(address).select("[srcset]")) {
                for (String copy : picture.attr("srcset").split(", ")) {
                    seen.add(Way.from(address, copy.split(" ")[0]).file());
                }
            }
        }
        Set<String> expected = new TreeSet<>(book.files());
        expected.remove("fascicle.manifest");
        // The style itself names its face.
        expected.removeIf(file -> file.endsWith(".woff2"));
        assertEquals(expected, seen);
    }

    @ParameterizedTest
    @EnumSource
    void nothing_comes_from_outside_and_only_links_lead_there(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        onEveryPage(book, (address, page) -> {
            for (Element element : page.getAllElements()) {
                for (Attribute attribute : element.attributes()) {
                    String name = attribute.getKey();
                    boolean leads = name.equals("href") || name.equals("xlink:href");
                    if (!leads && !FETCHING.contains(name)) {
                        continue;
                    }
                    String way = attribute.getValue().strip();
                    String where = address + ": " + element.tagName() + " " + attribute;
                    assertTrue(!way.startsWith("/") && !way.startsWith("\\"), where);
                    Matcher scheme = SCHEME.matcher(way);
                    if (scheme.matches()) {
                        assertTrue(element.tagName().equals("a") && MAY_LEAVE.contains(scheme.group(1)), where);
                    }
                }
            }
            assertEquals(List.of(), page.select("base, iframe, object, embed, meta[http-equiv=refresh]"), address);
        });
        for (String address : book.files()) {
            if (address.endsWith(".css")) {
                String style = book.text(address);
                assertTrue(!style.contains("@import") && BESIDE.matcher(style).results().count() == style.split("url\\(", -1).length - 1, address);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void no_page_holds_anything_that_runs_or_a_style_of_its_own(Edition edition) {
        onEveryPage(PublishedBook.ofTheDemo(edition), (address, page) -> {
            assertEquals(List.of(), page.select("script:not([src]), style, [style], [srcdoc]"), address);
            for (Element element : page.getAllElements()) {
                for (Attribute attribute : element.attributes()) {
                    assertTrue(!attribute.getKey().startsWith("on"), address + ": " + attribute);
                }
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void one_strict_policy_stands_on_every_page_before_anything_is_loaded(Edition edition) {
        Set<String> policies = new TreeSet<>();
        onEveryPage(PublishedBook.ofTheDemo(edition), (address, page) -> {
            List<Element> metas = page.select("meta[http-equiv=Content-Security-Policy]");
            assertEquals(1, metas.size(), address);
            Element policy = metas.get(0);
            assertEquals("head", policy.parent() == null ? "" : policy.parent().tagName(), address);
            assertEquals(List.of(), policy.previousElementSiblings().select("[href], [src], script"), address);
            policies.add(policy.attr("content"));
        });
        assertEquals(1, policies.size(), policies.toString());
        List<String> directives =
                Stream.of(policies.iterator().next().split(";")).map(String::strip).toList();
        assertTrue(
                directives.containsAll(List.of("default-src 'none'", "base-uri 'none'", "form-action 'none'")),
                directives.toString());
        assertAll(directives.stream().map(directive -> () -> assertTrue(
                directive.matches("[a-z-]+ ('none'|'self')"), "more is allowed than the book's own: " + directive)));
    }

    @ParameterizedTest
    @EnumSource
    void every_page_says_what_it_is(Edition edition) {
        onEveryPage(PublishedBook.ofTheDemo(edition), (address, page) -> {
            assertEquals("html", page.documentType() == null ? "" : page.documentType().name(), address);
            assertEquals("en", page.select("html").attr("lang"), address);
            assertTrue(!page.title().isBlank(), address + " has no title");
            assertEquals(1, page.select("h1").size(), address + ": first headings");
            assertTrue(!page.select("h1").text().isBlank(), address);
            assertEquals(1, page.select("main").size(), address);
            List<String> ids = page.select("[id]").eachAttr("id");
            assertEquals(Set.copyOf(ids).size(), ids.size(), address + ": the same id twice in " + ids);
        });
    }

    @ParameterizedTest
    @EnumSource
    void colours_stand_in_drawings_alone_and_every_drawing_says_its_colour_in_words(Edition edition) {
        onEveryPage(PublishedBook.ofTheDemo(edition), (address, page) -> {
            for (Element element : page.body().getAllElements()) {
                for (Attribute attribute : element.attributes()) {
                    if (COLOUR.matcher(attribute.getValue()).find() && !attribute.getKey().equals("href")) {
                        assertTrue(
                                element.closest("svg") != null && COLOURED.contains(attribute.getKey()),
                                address + ": " + element.tagName() + " " + attribute);
                    }
                }
            }
            for (Element drawing : page.select("svg:not(svg svg)")) {
                // What leads somewhere is no single picture: its ways must be reached.
                assertEquals(drawing.select("a").isEmpty() ? "img" : "group", drawing.attr("role"), address);
                assertTrue(!drawing.select("> title").text().isBlank(), address + ": a drawing without words");
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void every_table_names_its_rows_and_columns(Edition edition) {
        onEveryPage(PublishedBook.ofTheDemo(edition), (address, page) -> {
            for (Element table : page.select("main table")) {
                if (table.closest(".notes") != null) {
                    continue;
                }
                int columns = table.select("thead th[scope=col]").size();
                assertTrue(columns > 0, address);
                for (Element row : table.select("tbody tr")) {
                    assertEquals(columns, row.select("> td, > th").size(), address + ": " + row.text());
                    assertEquals(1, row.select("> th[scope=row]").size(), address + ": " + row.text());
                }
            }
        });
    }

    private interface Check {
        void look(String address, Document page);
    }

    private static void onEveryPage(PublishedBook book, Check check) {
        assertTrue(book.pages().size() > 20, "the demo has pages");
        Consumer<String> one = address -> check.look(address, book.page(address));
        assertAll(book.pages().stream().map(address -> () -> one.accept(address)));
    }

    /** A way within the book: to a file, perhaps to a place in it. */
    private record Way(String file, Optional<String> place) {

        static Way from(String page, String way) {
            int hash = way.indexOf('#');
            String path = hash < 0 ? way : way.substring(0, hash);
            // What is asked of the look-up stands where a place would, and names none.
            Optional<String> place = hash < 0 || hash == way.length() - 1 || way.indexOf('=', hash) > 0
                    ? Optional.empty()
                    : Optional.of(decoded(way.substring(hash + 1)));
            if (path.isEmpty()) {
                return new Way(page, place);
            }
            // Resolved while encoded, as a browser does; what climbs out of the book keeps its "..".
            String target = URI.create("book:/" + page.replace(" ", "%20")).resolve(path).getRawPath().substring(1);
            return new Way(decoded(target), place);
        }

        private static String decoded(String text) {
            return URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8);
        }
    }
}
