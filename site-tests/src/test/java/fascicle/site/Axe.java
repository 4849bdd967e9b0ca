package fascicle.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * Asks the page that a browser shows whether it keeps the Web Content Accessibility Guidelines 2.2 at level AA, as far
 * as the rules of axe-core can tell.
 */
final class Axe {

    private static final String SCRIPT = script();

    /** Each violation in one line: the rule, what it asks, and the elements that break it. */
    private static final String ASK =
            """
            const done = arguments[arguments.length - 1];
            axe.run(document, {
              runOnly: arguments[0]
                ? {type: 'rule', values: ['color-contrast', 'link-in-text-block']}
                : {type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']},
              resultTypes: ['violations'],
              preload: false
            }).then(found => done(found.violations.map(broken => broken.id + ': ' + broken.help + ': '
                + broken.nodes.slice(0, 3).map(node => node.html.slice(0, 160) + ' '
                    + node.any.concat(node.all, node.none).map(check => check.message).join('; ')).join(' | '))))
              .catch(failed => done(['axe failed: ' + failed]));
            """;

    /** Of a long row of like things the first and the last stand for all; axe takes a millisecond and more for each. */
    private static final String SHORTEN =
            """
            for (const list of document.body.querySelectorAll(':not(svg, svg *)')) {
              const like = [...list.children].filter(child => child.tagName === list.lastElementChild.tagName);
              like.slice(12, -1).forEach(child => child.remove());
            }
            """;

    private Axe() {}

    /** What the shown page breaks; nothing where it breaks nothing. The page is shortened. */
    static List<String> violations(Browser browser) {
        return violations(browser, false);
    }

    /** What the shown page breaks by its colours alone, for the page that is otherwise as it was. */
    static List<String> violationsByColour(Browser browser) {
        return violations(browser, true);
    }

    private static List<String> violations(Browser browser, boolean byColour) {
        // The driver's scripts are not the page's, so that the page's policy does not hinder them.
        if (browser.driver().executeScript("return typeof axe") instanceof String type && type.equals("undefined")) {
            browser.driver().executeScript(SHORTEN);
            browser.driver().executeScript(SCRIPT);
        }
        Object found = Objects.requireNonNull(browser.driver().executeAsyncScript(ASK, byColour));
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }

    private static String script() {
        try (InputStream script = Objects.requireNonNull(Axe.class.getResourceAsStream("/axe.min.js"), "axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
