package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The demo's book opens from the disk, with no server and no network, on a phone, on a laptop and on paper. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BookOpensInABrowserTest {

    /** A small old phone, a phone of today, a laptop: CSS pixels. */
    private static final List<Integer> WIDTHS = List.of(320, 390, Browser.LAPTOP);

    /** A4 less margins of a centimetre, at 96 pixels to the inch. */
    private static final int PAPER = 718;

    private PublishedBook book;
    private Browser browser;

    @BeforeAll
    void publishAndOpen() {
        book = PublishedBook.ofTheDemo();
        browser = Browser.open(Browser.LAPTOP);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_page_fits_every_screen_and_complains_of_nothing(Edition edition) {
        PublishedBook shown = PublishedBook.ofTheDemo(edition);
        List<Executable> checks = new ArrayList<>();
        for (String address : shown.pages()) {
            browser.width(WIDTHS.get(0)).show(shown.file(address));
            for (int width : WIDTHS) {
                long sideways = browser.width(width).sidewaysScroll();
                checks.add(() -> assertEquals(0, sideways, address + ": pixels to scroll sideways at " + width));
            }
            List<String> complaints = browser.complaints();
            checks.add(() -> assertEquals(List.of(), complaints, address));
        }
        assertAll(checks);
    }

    @Test
    void an_entrys_page_is_headed_by_its_title() {
        assertAll(book.data().required("entries").valueStream().map(entry -> () -> {
            String id = entry.required("id").asString();
            String heading = book.page(book.addressOf(id)).select("h1").text();
            assertEquals(entry.required("title").asString(), heading, id);
        }));
    }

    @ParameterizedTest
    @EnumSource
    void words_can_be_read_by_day_and_by_night(Browser.Light light) {
        browser.width(Browser.LAPTOP).light(light);
        try {
            assertAll(kinds().stream().map(address -> () -> {
                browser.show(book.file(address));
                browser.screenshot(address.replace('/', '-') + "-" + light);
                double paper = browser.luminance("body", "background-color");
                assertEquals(light == Browser.Light.DARK, paper < 0.2, address + ": the paper's luminance " + paper);
                // WCAG 2.2, success criterion 1.4.3: 4.5 to 1.
                assertEquals("", browser.faintest(4.5), address + ": too faint, " + light);
            }));
        } finally {
            browser.light(Browser.Light.LIGHT);
        }
    }

    @Test
    void swatches_stand_on_a_neutral_grey_by_day_and_on_a_darker_one_by_night() {
        String entry = book.addressOf(book.entries().get(0));
        Set<String> grounds = new LinkedHashSet<>();
        for (Browser.Light light : Browser.Light.values()) {
            browser.light(light).show(book.file(entry));
            grounds.add((String) browser.script(
                    "return getComputedStyle(document.querySelector('svg.swatch rect')).fill"));
        }
        browser.light(Browser.Light.LIGHT);
        assertEquals(2, grounds.size(), grounds.toString());
        grounds.forEach(ground -> assertTrue(ground.matches("rgb\\((\\d+), \\1, \\1\\)"), ground + " is a grey"));
    }

    @Test
    void every_kind_of_page_fits_a_sheet_of_paper() {
        browser.width(PAPER).onPaper(true);
        try {
            assertAll(kinds().stream().map(address -> () -> {
                browser.show(book.file(address));
                assertEquals(0, browser.sidewaysScroll(), address + ": pixels beyond the paper");
                assertEquals(0L, browser.script("""
                        const edge = document.documentElement.clientWidth;
                        return [...document.querySelectorAll('main th, main td')]
                            .filter(cell => cell.getBoundingClientRect().right > edge + 1).length;
                        """), address + ": cells beyond the paper");
            }));
        } finally {
            browser.onPaper(false);
        }
    }

    @Test
    void an_entry_prints() throws IOException {
        browser.width(Browser.LAPTOP).show(book.file(book.addressOf(book.entries().get(0))));
        byte[] print = Files.readAllBytes(browser.print("entry"));
        String text = new String(print, StandardCharsets.ISO_8859_1);
        assertTrue(text.startsWith("%PDF-"));
        long sheets = text.lines().filter(line -> line.contains("/Type /Page") && !line.contains("/Pages")).count();
        assertTrue(sheets >= 1 && sheets <= 4, "sheets of paper: " + sheets);
        assertTrue(text.contains("/Type /Font"), "there are words on it");
        browser.show(book.file("about.html"));
        assertNotEquals(print.length, Files.readAllBytes(browser.print("about")).length);
    }

    @Test
    void the_first_key_leads_past_the_lists_to_the_text() {
        browser.width(Browser.LAPTOP).show(book.file(book.addressOf(book.entries().get(0))));
        browser.driver().findElement(By.tagName("body")).sendKeys(Keys.TAB);
        assertEquals("#text", browser.script("return document.activeElement.getAttribute('href')"));
        assertTrue(
                (Boolean) browser.script("return document.activeElement.getBoundingClientRect().left >= 0"),
                "what has the focus is seen");
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        assertEquals("#text", browser.script("return location.hash"));
    }

    @Test
    void a_reader_walks_from_the_cover_to_an_entry_and_back_without_scripts() {
        browser.width(WIDTHS.get(0)).show(book.file("index.html"));
        browser.driver().findElement(By.cssSelector("main a[href='entries.html']")).click();
        browser.driver().findElement(By.cssSelector("ul.specimens .name a")).click();
        String title = browser.driver().findElement(By.tagName("h1")).getText();
        assertFalse(title.isBlank());
        browser.driver().findElement(By.cssSelector("header a[href='../index.html']")).click();
        assertEquals(book.page("index.html").select("h1").text(),
                browser.driver().findElement(By.tagName("h1")).getText());
        assertEquals(List.of(), browser.complaints());
    }

    /** One page of every kind: those at the top, the longest entry, and the first leaf of every list. */
    private List<String> kinds() {
        List<String> pages = book.pages();
        Stream<String> top = pages.stream().filter(address -> !address.contains("/"));
        Stream<String> leaves = pages.stream()
                .filter(address -> address.contains("/"))
                .map(address -> address.substring(0, address.indexOf('/')))
                .distinct()
                .flatMap(folder -> pages.stream()
                        .filter(address -> address.startsWith(folder + "/"))
                        .max((one, other) -> Integer.compare(book.text(one).length(), book.text(other).length()))
                        .stream());
        return Stream.concat(top, leaves).toList();
    }
}
