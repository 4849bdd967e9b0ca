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

/** Every kind of page keeps the Web Content Accessibility Guidelines 2.2 at level AA, as far as axe-core can tell. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessTest {

    /** A small old phone, and by WCAG 2.2, criterion 1.4.10, the width at which nothing scrolls sideways. */
    private static final int PHONE = 320;

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

    /** By night nothing but colours is other than by day. */
    @Test
    void no_rule_is_broken_on_a_phone_or_a_laptop_by_day_or_by_night() {
        List<String> broken = new ArrayList<>();
        for (String address : Kinds.of(book)) {
            browser.light(Browser.Light.LIGHT).width(PHONE).show(book.file(address));
            for (int width : List.of(PHONE, Browser.LAPTOP)) {
                browser.width(width).light(Browser.Light.LIGHT);
                Axe.violations(browser).forEach(rule -> broken.add(address + ", light, " + width + ": " + rule));
                browser.light(Browser.Light.DARK);
                Axe.violationsByColour(browser).forEach(rule -> broken.add(address + ", dark, " + width + ": " + rule));
            }
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
