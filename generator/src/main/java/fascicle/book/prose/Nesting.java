package fascicle.book.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.Elements;

/**
 * Mends the order of clean HTML, where the maker's own HTML puts things into each other that the HTML standard keeps
 * apart, and headings that skip a level. No word is lost.
 */
final class Nesting {

    private static final Set<String> HEADINGS = Set.of("h3", "h4", "h5", "h6");
    private static final Set<String> BLOCKS = Set.of("blockquote", "dd", "div", "dl", "dt", "h3", "h4", "h5", "h6",
            "hr", "li", "ol", "p", "pre", "table", "ul");
    /** What holds words alone, by the HTML standard or because it may stand where only words may. */
    private static final Set<String> FOR_WORDS = Set.of("a", "b", "cite", "code", "del", "em", "h3", "h4", "h5", "h6",
            "i", "ins", "kbd", "p", "pre", "q", "s", "small", "span", "strong", "sub", "sup", "u");

    private Nesting() {}

    static void mend(Element body) {
        Elements elements = body.getAllElements();
        for (int i = elements.size() - 1; i > 0; i--) {
            mendOne(elements.get(i));
        }
        levelHeadings(body);
    }

    /** Mends an element all of whose own are mended. */
    private static void mendOne(Element element) {
        String tag = element.normalName();
        String parent = element.parent() == null ? "" : element.parent().normalName();
        switch (tag) {
            case "li" -> unwrapUnless(element, parent.equals("ul") || parent.equals("ol"));
            case "dt", "dd" -> unwrapUnless(element, parent.equals("dl"));
            case "ul", "ol" -> itemsOnly(element);
            case "dl" -> termsFirst(element);
            case "table" -> evenRows(element);
            default -> {
                boolean unread = HEADINGS.contains(tag)
                        && (!element.hasText() || element.closest("th, dt, caption") != null);
                unwrapUnless(element, !unread && !(FOR_WORDS.contains(tag) && holdsBlock(element)));
            }
        }
    }

    private static void unwrapUnless(Element element, boolean inPlace) {
        if (!inPlace) {
            element.unwrap();
        }
    }

    private static boolean holdsBlock(Element element) {
        return element.children().stream().anyMatch(child -> BLOCKS.contains(child.normalName()) || holdsBlock(child));
    }

    private static void itemsOnly(Element list) {
        for (Node child : new ArrayList<>(list.childNodes())) {
            boolean item = child instanceof Element element && element.normalName().equals("li");
            boolean blank = child instanceof TextNode text && text.isBlank();
            if (!item && !blank) {
                child.wrap("<li></li>");
            }
        }
    }

    /** A list of terms that does not go from terms to their words becomes plain boxes. */
    private static void termsFirst(Element list) {
        String order = String.join(" ", list.children().stream().map(Element::normalName).toList());
        boolean words = list.textNodes().stream().anyMatch(text -> !text.isBlank());
        if (words || !(order + " ").matches("((dt )+(dd )+)+")) {
            list.select("> dt, > dd").forEach(part -> part.tagName("div"));
            list.tagName("div");
        }
    }

    /** Every row has as many cells as the longest; one without cells goes. */
    private static void evenRows(Element table) {
        Elements rows = table.select("> tr, > * > tr");
        int most = rows.stream().mapToInt(row -> row.childrenSize()).max().orElse(0);
        for (Element row : rows) {
            if (row.childrenSize() == 0) {
                row.remove();
            }
            while (row.childrenSize() > 0 && row.childrenSize() < most) {
                row.appendElement("td");
            }
        }
        table.select("caption table").forEach(Element::unwrap);
        if (most == 0) {
            table.select("> caption, > thead, > tbody, > tfoot").forEach(Element::unwrap);
            table.unwrap();
        }
    }

    /** The first heading is a third, since the page's own stand above it, and none skips a level. */
    private static void levelHeadings(Element body) {
        List<Integer> open = new ArrayList<>();
        for (Element heading : body.select("h3, h4, h5, h6")) {
            int level = heading.normalName().charAt(1);
            open.removeIf(other -> other >= level);
            open.add(level);
            heading.tagName("h" + (2 + open.size()));
        }
    }
}
