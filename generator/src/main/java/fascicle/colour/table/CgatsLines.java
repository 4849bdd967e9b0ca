package fascicle.colour.table;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * The lines of a CGATS text, each cut into its words: blanks or tabs part them, quotes hold them together (a doubled
 * quote is one), and {@code #} begins a comment. Lines without words are passed over.
 */
final class CgatsLines {

    private final String[] lines;
    private int read;
    private Row ahead;

    CgatsLines(String text) throws UnreadableTable {
        this.lines = text.split("\n", -1);
        this.ahead = advance();
    }

    boolean hasNext() {
        return !ahead.cells().isEmpty();
    }

    Row next() throws UnreadableTable {
        if (!hasNext()) {
            throw new NoSuchElementException("after line " + read);
        }
        Row next = ahead;
        ahead = advance();
        return next;
    }

    /** The next line with words, or an empty one after the last. */
    private Row advance() throws UnreadableTable {
        while (read < lines.length) {
            read++;
            List<String> words = words(lines[read - 1], read);
            if (!words.isEmpty()) {
                return new Row(read, words);
            }
        }
        return new Row(lines.length, List.of());
    }

    private static List<String> words(String line, int number) throws UnreadableTable {
        List<String> words = new ArrayList<>();
        int at = 0;
        while (at < line.length()) {
            char letter = line.charAt(at);
            if (blank(letter)) {
                at++;
            } else if (letter == '#') {
                break;
            } else if (letter == '"') {
                at = quoted(line, at + 1, number, words);
            } else {
                int end = at;
                while (end < line.length() && !blank(line.charAt(end))) {
                    end++;
                }
                words.add(line.substring(at, end));
                at = end;
            }
        }
        return words;
    }

    private static int quoted(String line, int from, int number, List<String> words) throws UnreadableTable {
        StringBuilder word = new StringBuilder();
        for (int at = from; at < line.length(); at++) {
            if (line.charAt(at) != '"') {
                word.append(line.charAt(at));
            } else if (at + 1 < line.length() && line.charAt(at + 1) == '"') {
                word.append('"');
                at++;
            } else {
                words.add(word.toString().strip());
                return at + 1;
            }
        }
        throw new UnreadableTable(number, "a quote opens and does not close");
    }

    private static boolean blank(char letter) {
        return Character.isWhitespace(letter) || letter == '\u00A0';
    }
}
