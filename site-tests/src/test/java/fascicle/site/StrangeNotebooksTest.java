package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever a notebook holds or lacks, each edition of its book is a whole and quiet book. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StrangeNotebooksTest {

    /** The narrowest screen by WCAG 2.2, criterion 1.4.10, in CSS pixels. */
    private static final int PHONE = 320;

    private final Map<StrangeNotebook, Map<Edition, PublishedBook>> books = new EnumMap<>(StrangeNotebook.class);
    private final Nu nu = new Nu();
    private Browser browser;

    @BeforeAll
    void publish(@TempDir Path folder) {
        for (StrangeNotebook notebook : StrangeNotebook.values()) {
            Path written = notebook.write(folder.resolve("notebooks"));
            Map<Edition, PublishedBook> editions = new EnumMap<>(Edition.class);
            for (Edition edition : Edition.values()) {
                editions.put(edition, PublishedBook.publish(written,
                        folder.resolve("books").resolve(notebook + "-" + edition.word()), "--edition", edition.word()));
            }
            books.put(notebook, editions);
        }
        browser = Browser.open(PHONE);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_page_is_valid(StrangeNotebook notebook) {
        assertAll(editions(notebook).map(book -> () -> assertEquals("", String.join("\n", nu.faults(book)))));
    }

    @ParameterizedTest
    @EnumSource
    void every_page_fits_a_phone_and_runs_fetches_and_complains_of_nothing(StrangeNotebook notebook) {
        List<Executable> checks = new ArrayList<>();
        PublishedBook studio = books.get(notebook).get(Edition.STUDIO);
        editions(notebook).forEach(book -> (book == studio ? book.pages() : Kinds.of(book)).forEach(address -> {
            // An open dialog would make the next call throw.
            browser.show(book.file(address));
            String where = book.folder().getFileName() + "/" + address;
            long sideways = browser.sidewaysScroll();
            String wide = sideways == 0 ? "" : browser.tooWide();
            List<String> complaints = browser.complaints();
            String title = String.valueOf(browser.driver().getTitle());
            Object far = browser.script("return performance.getEntriesByType('resource')"
                    + ".filter(fetched => !fetched.name.startsWith('file:')).length");
            checks.add(() -> assertEquals(0, sideways, where + ": pixels to scroll sideways: " + wide));
            checks.add(() -> assertEquals(List.of(), complaints, where));
            checks.add(() -> assertEquals(book.page(address).title(), title, where));
            checks.add(() -> assertFalse(title.startsWith("owned"), where));
            checks.add(() -> assertEquals(0L, far, where));
        }));
        assertAll(checks);
    }

    @ParameterizedTest
    @EnumSource
    void cover_list_and_entry_break_no_rule_of_access(StrangeNotebook notebook) {
        PublishedBook book = books.get(notebook).get(Edition.STUDIO);
        Stream<String> entry = Kinds.of(book).stream().filter(address -> address.startsWith("entries/")).limit(1);
        assertAll(Stream.concat(Stream.of("index.html", "entries.html"), entry).map(address -> () -> {
            browser.show(book.file(address));
            assertEquals("", String.join("\n", Axe.violations(browser)), notebook + ": " + address);
        }));
    }

    @ParameterizedTest
    @EnumSource
    void nothing_that_could_run_is_left_on_a_page_but_the_books_own_scripts(StrangeNotebook notebook) {
        assertAll(editions(notebook).flatMap(book -> book.pages().stream().map(address -> () -> {
            Document page = book.page(address);
            assertEquals(List.of(), page.select("script:not([src]), style, iframe, object, embed, base, math, [style], .notes svg, svg:not(.plot) a, "
                    + "meta[http-equiv=refresh], link[href^=http], [src^=http], [href^=/]"), address);
            page.select("a[href], script[src], link[href]").forEach(way -> {
                String destination = way.hasAttr("href") ? way.attr("href") : way.attr("src");
                assertTrue(destination.startsWith("https://example.org/") || !destination.matches("[A-Za-z][A-Za-z+.-]*:.*"),
                        address + ": " + way);
            });
            page.getAllElements().forEach(element -> element.attributes().forEach(attribute ->
                    assertFalse(attribute.getKey().startsWith("on"), address + ": " + attribute)));
        })));
    }

    @ParameterizedTest
    @EnumSource
    void what_is_private_is_in_no_byte_of_the_other_editions(StrangeNotebook notebook) {
        for (Edition edition : Edition.values()) {
            PublishedBook book = books.get(notebook).get(edition);
            List<String> holding = book.files().stream()
                    .filter(address -> (address + bytes(book.file(address))).toLowerCase(Locale.ROOT).contains(StrangeNotebook.PRIVATE))
                    .toList();
            boolean kept = edition == Edition.STUDIO && book.files().contains("entries/2024-06-01-private.html");
            assertEquals(kept, !holding.isEmpty(), book.folder().getFileName() + ": " + holding);
        }
    }

    /** Every byte of a file as a letter of its own. */
    private static String bytes(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private Stream<PublishedBook> editions(StrangeNotebook notebook) {
        return books.get(notebook).values().stream();
    }
}
