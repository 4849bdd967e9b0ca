package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** Every kind of page keeps the Web Content Accessibility Guidelines 2.2 at level AA, as far as axe-core can tell. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessTest {

    /** A small old phone, and by WCAG 2.2, criterion 1.4.10, the width at which nothing scrolls sideways. */
    private static final int PHONE = 320;

    /** How many stops of a page are walked; lists go on like this. */
    private static final int MOST_STOPS = 25;

    /** What the keys should reach, in the page's order. */
    private static final String FOCUSABLE =
            """
            const stops = [...document.querySelectorAll(
                'a[href], button, input, select, textarea, summary, [tabindex]:not([tabindex="-1"])')]
                .filter(stop => !stop.disabled && stop.getClientRects().length && stop.checkVisibility({visibilityProperty: true}));
            """;

    /** What is wrong with the place of the focus, if the keys should have led to the stop with this number. */
    private static final String SEEN =
            """
            const has = document.activeElement, expected = stops[arguments[0]];
            if (has !== expected) return 'the focus is on ' + has.outerHTML.slice(0, 100) + ' instead of '
                + expected.outerHTML.slice(0, 100);
            const style = getComputedStyle(has), name = has.outerHTML.slice(0, 100);
            if (style.outlineStyle === 'none' && style.boxShadow === 'none') return name + ' has no mark of the focus';
            const box = has.getClientRects()[0];
            const x = Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 1);
            const y = Math.min(Math.max(box.top + box.height / 2, 1), innerHeight - 1);
            const top = document.elementFromPoint(x, y);
            return top && (has.contains(top) || top.contains(has)) ? '' : name + ' is hidden behind something';
            """;

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

    /** WCAG 2.2, success criteria 2.4.3, 2.4.7 and 2.4.11. */
    @Test
    void the_keys_lead_through_a_page_in_its_order_and_what_has_the_focus_is_seen() {
        browser.width(Browser.LAPTOP).light(Browser.Light.LIGHT);
        List<String> faults = new ArrayList<>();
        for (String address : Kinds.of(book)) {
            browser.show(book.file(address));
            long stops = (Long) browser.script(FOCUSABLE + "return stops.length;");
            for (int stop = 0; stop < Math.min(stops, MOST_STOPS); stop++) {
                new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
                Object fault = browser.script(FOCUSABLE + SEEN, stop);
                if (!fault.equals("")) {
                    faults.add(address + ", stop " + stop + ": " + fault);
                }
            }
        }
        assertEquals("", String.join("\n", faults));
    }

    @Test
    void nothing_is_told_by_colour_alone() {
        browser.width(Browser.LAPTOP).light(Browser.Light.LIGHT);
        browser.driver().executeCdpCommand("Emulation.setEmulatedVisionDeficiency", Map.of("type", "achromatopsia"));
        try {
            Map<String, Set<String>> shapes = new TreeMap<>();
            for (String address : Kinds.of(book)) {
                browser.show(book.file(address));
                browser.screenshot("without-colour-" + address.replace('/', '-'));
                assertEquals(List.of(), browser.script(
                        "return [...document.querySelectorAll('svg.swatch')].filter(swatch =>"
                                + " !/[a-z]{3}/i.test((swatch.querySelector('title') || {textContent: ''}).textContent))"
                                + ".map(swatch => swatch.outerHTML.slice(0, 80))"), address + ": swatches without words");
                for (Object verdict : (List<?>) browser.script(
                        "return [...document.querySelectorAll('.verdict')].flatMap(verdict => ['worked', 'partly', 'failed']"
                                + ".filter(word => verdict.classList.contains(word))"
                                + ".map(word => word + '|' + /[a-z]{4}/i.test(verdict.textContent)"
                                + " + getComputedStyle(verdict, '::before').content))")) {
                    String[] wordAndShape = String.valueOf(verdict).split("\\|");
                    shapes.computeIfAbsent(wordAndShape[0], word -> new TreeSet<>()).add(wordAndShape[1]);
                }
            }
            assertEquals(3, shapes.size(), "verdicts by their words: " + shapes);
            assertTrue(shapes.values().stream().allMatch(one -> one.size() == 1 && one.iterator().next().matches("true\"\\S.*")), "words and shapes: " + shapes);
            assertEquals(3, Set.copyOf(shapes.values()).size(), "each verdict has a shape of its own: " + shapes);
        } finally {
            browser.driver().executeCdpCommand("Emulation.setEmulatedVisionDeficiency", Map.of("type", "none"));
        }
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
