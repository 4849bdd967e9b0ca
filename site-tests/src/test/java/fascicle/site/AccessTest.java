package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of page keeps the Web Content Accessibility Guidelines 2.2 at level AA, as far as axe-core can tell. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessTest {

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
    @CsvSource({"LIGHT, 320", "LIGHT, 1280", "DARK, 320", "DARK, 1280"})
    void no_rule_is_broken(Browser.Light light, int width) {
        browser.width(width).light(light);
        List<String> broken = new ArrayList<>();
        for (String address : Kinds.of(book)) {
            browser.show(book.file(address));
            Axe.violations(browser).forEach(rule -> broken.add(address + ": " + rule));
        }
        assertEquals("", String.join("\n", broken));
    }

    @Test
    void axe_sees_what_breaks_a_rule(@TempDir Path folder) throws IOException {
        Path page = Files.writeString(folder.resolve("page.html"),
                "<!doctype html><html><title>x</title><p style='color:#aaa;background:#fff'>pale</p><img src='x.png'>");
        browser.width(Browser.LAPTOP).light(Browser.Light.LIGHT).show(page);
        String broken = String.join("\n", Axe.violations(browser));
        for (String rule : List.of("color-contrast:", "html-has-lang:", "image-alt:")) {
            assertTrue(broken.contains(rule), broken);
        }
        browser.complaints();
    }
}
