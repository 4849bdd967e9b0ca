package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A reader who has set letters twice as large loses nothing: WCAG 2.2, success criterion 1.4.4. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LargeLettersTest {

    private static final double TWICE = 32.0;

    /** Words cut off by a box that cannot be scrolled. */
    private static final String CUT_OFF =
            """
            return [...document.body.querySelectorAll('*')].filter(box => {
              // What is clipped away whole is there for readers who hear the page.
              if (box.closest('svg') || box.closest('thead') && getComputedStyle(box.closest('thead')).clipPath !== 'none' || !box.textContent.trim() || box.clientWidth === 0) return false;
              const style = getComputedStyle(box);
              const hides = way => way === 'hidden' || way === 'clip';
              return hides(style.overflowX) && box.scrollWidth > box.clientWidth + 1
                  || hides(style.overflowY) && box.scrollHeight > box.clientHeight + 1;
            }).map(box => box.outerHTML.slice(0, 120)).join(' | ');
            """;

    private PublishedBook book;
    private Browser browser;

    @BeforeAll
    void publishAndOpen() {
        book = PublishedBook.ofTheDemo();
        browser = Browser.open(Browser.LAPTOP, "--blink-settings=defaultFontSize=" + (int) TWICE);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void nothing_is_cut_off_or_scrolls_sideways() {
        List<String> faults = new ArrayList<>();
        for (String address : Kinds.of(book)) {
            browser.width(Browser.LAPTOP).show(book.file(address));
            double letters = ((Number) browser.script(
                    "return parseFloat(getComputedStyle(document.querySelector('main')).fontSize)")).doubleValue();
            assertTrue(letters >= TWICE, address + ": letters follow the reader's setting: " + letters);
            for (int width : List.of(Browser.LAPTOP, Browser.LAPTOP / 2)) {
                browser.width(width);
                long sideways = browser.sidewaysScroll();
                Object cut = browser.script(CUT_OFF);
                if (sideways != 0 || !cut.equals("")) {
                    faults.add(address + " at " + width + ": " + sideways + " pixels to scroll sideways: "
                            + (sideways == 0 ? "" : browser.tooWide()) + "; cut off: " + cut);
                }
            }
            browser.screenshot("large-letters-" + address.replace('/', '-'));
        }
        assertEquals("", String.join("\n", faults));
    }
}
