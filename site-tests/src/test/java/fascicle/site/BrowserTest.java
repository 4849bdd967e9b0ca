package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The browser of these tests sees the faults that it is asked about: on pages that have them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrowserTest {

    @TempDir
    Path folder;

    private Browser browser;

    @BeforeAll
    void open() {
        browser = Browser.open(Browser.PHONE);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void a_quiet_page_has_no_complaints() throws IOException {
        browser.show(page("<p>quiet</p><script>console.log('by the way')</script>"));
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void warnings_errors_and_missing_files_are_complaints_once() throws IOException {
        browser.show(page("<img src='none.png' alt=''><script>console.warn('pale'); throw new Error('bled')</script>"));
        List<String> complaints = browser.complaints();
        assertEquals(3, complaints.size(), complaints.toString());
        assertTrue(complaints.stream().anyMatch(words -> words.contains("none.png")), complaints.toString());
        assertTrue(complaints.stream().anyMatch(words -> words.contains("pale")), complaints.toString());
        assertTrue(complaints.stream().anyMatch(words -> words.contains("bled")), complaints.toString());
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void a_wide_box_scrolls_sideways_on_a_phone_only() throws IOException {
        browser.show(page("<style>body{margin:0}</style><div style='width:500px'>wide</div>"));
        assertEquals(500 - Browser.PHONE, browser.width(Browser.PHONE).sidewaysScroll());
        assertEquals(0, browser.width(Browser.LAPTOP).sidewaysScroll());
    }

    @Test
    void pictures_and_prints_are_kept() throws IOException {
        browser.width(Browser.PHONE).show(page("<p>kept</p>"));
        assertEquals(Browser.PHONE, ImageIO.read(browser.screenshot("browser-test").toFile()).getWidth());
        byte[] print = Files.readAllBytes(browser.print("browser-test"));
        assertEquals("%PDF-", new String(print, 0, 5, StandardCharsets.US_ASCII));
    }

    private Path page(String body) throws IOException {
        return Files.writeString(
                folder.resolve("page.html"),
                "<!doctype html><html lang='en'><meta charset='utf-8'>"
                        + "<meta name='viewport' content='width=device-width'><title>page</title>" + body);
    }
}
