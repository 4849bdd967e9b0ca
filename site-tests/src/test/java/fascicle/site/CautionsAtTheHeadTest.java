package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Whoever opens a recipe on a phone by the stove sees at once that it can hurt, and how, and is one touch from the rest. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CautionsAtTheHeadTest {

    /** What a phone shows before a finger moves, in CSS pixels. */
    private static final long FIRST_SCREEN = 700;

    private static final String WHERE_THE_LINE_ENDS =
            """
            const line = document.querySelector('.heed a');
            const box = document.querySelector('section.caution');
            if (!line) return box ? 'no line' : '';
            if (document.querySelector(line.getAttribute('href')) !== box) return 'leads elsewhere';
            const end = line.getBoundingClientRect().bottom + scrollY;
            return end > arguments[0] ? 'ends at ' + end : '';
            """;

    private PublishedBook book;
    private Browser browser;

    @BeforeAll
    void publishAndOpen() {
        book = PublishedBook.ofTheDemo();
        browser = Browser.open(Browser.PHONE);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void on_the_first_screen_of_every_recipe_a_line_leads_to_its_cautions() {
        List<String> recipes = book.pages().stream().filter(address -> address.matches("(methods|entries)/.*")).toList();
        List<String> faults = new ArrayList<>();
        for (String address : recipes) {
            browser.show(book.file(address));
            Object fault = browser.script(WHERE_THE_LINE_ENDS, FIRST_SCREEN);
            if (!fault.equals("")) {
                faults.add(address + ": " + fault);
            }
        }
        assertEquals(List.of(), faults);
        assertTrue(recipes.stream().anyMatch(address -> !book.page(address).select(".heed").isEmpty()));
    }

    @Test
    void on_paper_the_cautions_come_first_and_the_line_is_left_out() {
        String shown = "return getComputedStyle(document.querySelector('.heed')).display";
        browser.show(book.file("methods/slow-simmer.html"));
        assertEquals("block", browser.script(shown));
        browser.onPaper(true);
        assertEquals("none", browser.script(shown));
        browser.onPaper(false);
    }
}
