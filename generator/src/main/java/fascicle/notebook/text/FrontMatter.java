package fascicle.notebook.text;

import fascicle.notebook.Findings;
import fascicle.notebook.Place;
import java.util.Optional;

/**
 * A Markdown file taken apart: the YAML between its {@code ---} lines, and the body below.
 *
 * @param file path relative to the notebook
 * @param yaml the front matter
 * @param body everything below the closing line
 * @param bodyLine the file's line at which the body begins
 */
public record FrontMatter(String file, String yaml, String body, int bodyLine) {

    /** The file's line at which front matter begins: right below the opening line. */
    public static final int FIRST_LINE = 2;

    private static final String FENCE = "---";

    /**
     * Takes a file apart.
     *
     * @param source the file
     * @param findings where to say what is wrong
     * @return its two parts, or nothing where the front matter is missing or not closed
     */
    public static Optional<FrontMatter> split(SourceText source, Findings findings) {
        String text = source.text();
        if (text.isBlank()) {
            findings.error(Place.of(source.file()), "this file is empty; it should begin with a line “---”, then its "
                    + "keys, then another line “---”");
            return Optional.empty();
        }
        int lineEnd = endOfLine(text, 0);
        if (!isFence(text, 0, lineEnd)) {
            findings.error(Place.of(source.file()), "the keys are missing: the first line is “"
                    + shortened(text.substring(0, lineEnd)) + "”, and a line “---” was expected; write the keys "
                    + "between two lines “---” at the top");
            return Optional.empty();
        }
        int line = FIRST_LINE;
        int start = lineEnd + 1;
        for (int at = start; at < text.length(); line++) {
            int end = endOfLine(text, at);
            if (isFence(text, at, end)) {
                String body = end < text.length() ? text.substring(end + 1) : "";
                return Optional.of(new FrontMatter(source.file(), text.substring(start, at), body, line + 1));
            }
            at = end + 1;
        }
        findings.error(Place.of(source.file()), "the keys do not end: the line “---” at the top has no "
                + "second one; put a line “---” below the last key");
        return Optional.empty();
    }

    private static int endOfLine(String text, int from) {
        int end = text.indexOf('\n', from);
        return end < 0 ? text.length() : end;
    }

    private static boolean isFence(String text, int from, int to) {
        return text.substring(from, to).stripTrailing().equals(FENCE);
    }

    private static String shortened(String line) {
        return line.codePointCount(0, line.length()) <= 40 ? line
                : line.substring(0, line.offsetByCodePoints(0, 37)) + "…";
    }
}
