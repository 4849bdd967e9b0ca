package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's book opens from the disk, with no server and no network, on a phone and on a laptop. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BookOpensInABrowserTest {

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
    @ValueSource(ints = {Browser.PHONE, Browser.LAPTOP})
    void the_first_page_fits_and_complains_of_nothing(int width) {
        browser.width(width).show(book.file("index.html"));
        browser.screenshot("index-" + width);
        assertAll(
                () -> assertEquals(List.of(), browser.complaints()),
                () -> assertEquals(0, browser.sidewaysScroll(), "pixels to scroll sideways at " + width),
                () -> assertFalse(browser.driver().getTitle().isBlank(), "the page has a title"));
    }

    @ParameterizedTest
    @ValueSource(ints = {Browser.PHONE, Browser.LAPTOP})
    void every_entry_has_a_page_that_fits_and_complains_of_nothing(int width) {
        List<String> entries = book.entries();
        assertFalse(entries.isEmpty(), "the demo has entries");
        browser.width(width);
        assertAll(entries.stream().map(entry -> () -> {
            browser.show(book.file(book.addressOf(entry)));
            assertEquals(List.of(), browser.complaints(), entry);
            assertEquals(0, browser.sidewaysScroll(), entry + ": pixels to scroll sideways at " + width);
        }));
    }

    @Test
    void an_entrys_page_is_headed_by_its_title() {
        assertAll(book.data().required("entries").valueStream().map(entry -> () -> {
            String id = entry.required("id").asString();
            String heading = book.page(book.addressOf(id)).select("h1").text();
            assertEquals(entry.required("title").asString(), heading, id);
        }));
    }
}
