package fascicle.book.prose;

import fascicle.notebook.Note;
import java.util.Optional;
import org.jsoup.Jsoup;

/**
 * The maker's words as a page shows them, without markup: what may be looked up.
 *
 * <p>Most notes are plain, and reading the Markdown of all of them a second time would take a fifth of a publishing; so
 * they are read over once, and only what is not plain (raw HTML, escapes, reference links, blocks of code, emphasis
 * within a word) is read as the page reads it.
 */
public final class PlainText {

    private static final Prose PROSE = new Prose(file -> Optional.empty(), file -> Optional.empty());
    private static final int MOST_DIGITS = 9;

    private final String markdown;
    private final StringBuilder text;
    private boolean inList;

    private PlainText(String markdown) {
        this.markdown = markdown;
        this.text = new StringBuilder(markdown.length());
    }

    /**
     * The words of a note. Nothing that the cleaner takes out is among them, and no address that a link leads to.
     *
     * @param note the maker's words
     * @return text whose words are those of the page; what stands between them is not kept
     */
    public static String of(Note note) {
        PlainText plain = new PlainText(note.markdown());
        return plain.isRead() ? plain.text.toString()
                : Jsoup.parseBodyFragment(PROSE.html(note, "").html()).body().text();
    }

    /** Reads everything over; false where it is not plain. */
    private boolean isRead() {
        int at = afterNumber(0);
        while (at >= 0 && at < markdown.length()) {
            char letter = markdown.charAt(at);
            switch (letter) {
                case '<', '&', '\\' -> {
                    return false;
                }
                case ']' -> at = afterLink(at);
                case '*', '`', '~' -> {
                    int end = at + 1;
                    while (end < markdown.length() && markdown.charAt(end) == letter) {
                        end++;
                    }
                    boolean fence = letter != '*' && end - at > 2;
                    boolean inWord = isLetter(at - 1) && (isLetter(end) || letter != at(end) && isMark(end));
                    at = fence || inWord ? -1 : end;
                    text.append(' ');
                }
                case '\n' -> {
                    text.append(letter);
                    at = afterNumber(at + 1);
                }
                default -> {
                    text.append(letter);
                    at++;
                }
            }
        }
        return at >= 0;
    }

    private char at(int place) {
        return place >= 0 && place < markdown.length() ? markdown.charAt(place) : '\n';
    }

    private boolean isLetter(int place) {
        return Character.isLetterOrDigit(at(place));
    }

    private boolean isMark(int place) {
        return at(place) == '*' || at(place) == '`';
    }

    /** The place after a closing bracket and the address that may follow; -1 where that is not plainly one. */
    private int afterLink(int bracket) {
        text.append(' ');
        if (at(bracket + 1) == '(') {
            for (int end = bracket + 2; at(end) > ' ' && at(end) != '('; end++) {
                if (at(end) == ')') {
                    return end > bracket + 2 ? end + 1 : -1;
                }
            }
            return -1;
        }
        int next = bracket + 1;
        while (next < markdown.length() && at(next) <= ' ') {
            next++;
        }
        return at(next) == '[' || at(bracket + 1) == ':' ? -1 : bracket + 1;
    }

    /** The place where a line's text begins: after the number of an item, which the page draws by itself. */
    private int afterNumber(int line) {
        int at = line;
        while (at(at) == ' ' || at(at) == '\t') {
            at++;
        }
        if (at(at) == '\n') {
            inList = false;
            return at;
        }
        int digits = at;
        while (at(at) >= '0' && at(at) <= '9') {
            at++;
        }
        boolean number = at > digits && at - digits <= MOST_DIGITS && (at(at) == '.' || at(at) == ')')
                && at(at + 1) <= ' ';
        if (!number) {
            return digits;
        }
        boolean first = at - digits == 1 && at(digits) == '1';
        boolean afterBlank = line < 2 || at(line - 2) == '\n';
        // Within a paragraph only 1 begins a list; any other number is one of its words.
        if (!first && !afterBlank && !inList) {
            return -1;
        }
        inList = true;
        return at + 1;
    }
}
