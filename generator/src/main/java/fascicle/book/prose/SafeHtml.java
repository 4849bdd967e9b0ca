package fascicle.book.prose;

import org.jsoup.nodes.Document;
import org.jsoup.safety.Cleaner;
import org.jsoup.safety.Safelist;

/** What HTML may come from the maker's words onto a page. */
final class SafeHtml {

    /** An address that no page has, against which the cleaner resolves the ways within a book. */
    static final String BASE = "https://book.invalid/here/";

    private static final Safelist LIST = new Safelist()
            .addTags("a", "b", "blockquote", "br", "caption", "cite", "code", "dd", "del", "dl", "dt", "em", "h3", "h4",
                    "h5", "h6", "hr", "i", "img", "ins", "kbd", "li", "ol", "p", "pre", "q", "s", "small", "span",
                    "strong", "sub", "sup", "table", "tbody", "td", "tfoot", "th", "thead", "tr", "u", "ul")
            .addAttributes("a", "href")
            .addAttributes("ol", "start")
            .addAttributes("td", "class")
            .addAttributes("th", "class")
            .addAttributes("span", "class", "aria-hidden")
            // Of pictures only those come this far that the book publishes, with attributes of its own.
            .addAttributes("img", "src", "srcset", "sizes", "width", "height", "alt", "loading")
            .addProtocols("a", "href", Destination.SCHEMES.toArray(String[]::new))
            .preserveRelativeLinks(true);

    private SafeHtml() {}

    static Document clean(Document dirty) {
        return new Cleaner(LIST).clean(dirty);
    }

    /** Whether an element's text and tag may stay; headings may, since they are shifted first. */
    static boolean keeps(String tag) {
        return LIST.isSafeTag(tag) || tag.equals("h1") || tag.equals("h2");
    }
}
