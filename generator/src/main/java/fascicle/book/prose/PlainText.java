package fascicle.book.prose;

import fascicle.notebook.Note;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** The maker's words as a page shows them, without markup: what may be looked up. */
public final class PlainText {

    /** What only a reader of Markdown and HTML can tell: raw HTML, escapes, reference links, code blocks, emphasis in a word. */
    private static final Pattern INVOLVED = Pattern.compile("[<&\\\\]|\\]:|\\][ \\n]*\\[|```|~~~|\\p{L}[*`]+\\p{L}");

    private static final Pattern NUMBER_OF_AN_ITEM = Pattern.compile("(?m)^[ \\t]*[0-9]{1,9}[.)](?=\\s)");
    private static final Pattern LINK_TO = Pattern.compile("\\]\\(([^)]*)\\)");
    private static final Prose PROSE = new Prose(file -> Optional.empty());

    private PlainText() {}

    /**
     * The words of a note. Nothing that the cleaner takes out is among them, and no address that a link leads to.
     *
     * @param note the maker's words
     * @return text whose words are those of the page; what stands between them is not kept
     */
    public static String of(Note note) {
        String markdown = note.markdown();
        if (!INVOLVED.matcher(markdown).find()) {
            // Most notes are plain, and reading Markdown twice for each of them would take a fifth of a publishing.
            String text = NUMBER_OF_AN_ITEM.matcher(markdown).replaceAll("");
            if (LINK_TO.matcher(text).results().noneMatch(link -> isInvolved(link.group(1)))) {
                return LINK_TO.matcher(text).replaceAll(" ");
            }
        }
        Document page = Jsoup.parseBodyFragment(PROSE.html(note, "").html());
        return page.body().text();
    }

    /** Whether it is not plainly an address. */
    private static boolean isInvolved(String address) {
        return address.isEmpty() || address.chars().anyMatch(letter -> letter <= ' ' || letter == '(');
    }
}
