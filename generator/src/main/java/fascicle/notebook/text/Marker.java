package fascicle.notebook.text;

import fascicle.notebook.Edition;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The marker at the end of a heading that closes its section to the editions below: {@code (studio only)} or
 * {@code (students only)}, in any case.
 */
public final class Marker {

    /** From here on letters stand that compatibility normalisation turns into Latin ones, beside much else. */
    private static final char FIRST_LOOK_ALIKE = 0x2100;

    private static final Pattern EXACT = Pattern.compile("\\(\\s*(studio|students)\\s+only\\s*\\)");
    private static final Pattern AT_END = Pattern.compile(EXACT.pattern() + "$");
    private static final Pattern IN_MARKDOWN =
            Pattern.compile("(?i)\\s*[*_]*\\(\\s*(studio|students)\\s+only\\s*\\)[*_]*");
    private static final Pattern BRACKETS_AT_END =
            Pattern.compile("[(\\[{<]([^()\\[\\]{}<>]{1,60})[)\\]}>]?$");
    private static final Pattern MARKUP = Pattern.compile("<[^>]{0,200}>|-->|[*_`#|~]");
    private static final Pattern TRAILING = Pattern.compile("[\\s.:;,!?…-]+$");
    private static final List<String> WORDS = List.of("studio only", "students only", "student only", "only studio",
            "only students", "open only", "private");
    private static final List<String> READERS = List.of("studio", "student", "students");

    private Marker() {}

    /**
     * The edition a heading closes its section to everyone below.
     *
     * @param heading a heading's text
     * @return {@link Edition#STUDIO} or {@link Edition#STUDENTS}; nothing where the heading carries no marker
     */
    public static Optional<Edition> of(String heading) {
        Matcher matcher = AT_END.matcher(plain(heading).strip());
        return matcher.find() ? Edition.named(matcher.group(1)) : Optional.empty();
    }

    /**
     * A heading's text without its marker.
     *
     * @param heading a heading's text
     * @return what is left of it
     */
    public static String without(String heading) {
        int bracket = heading.lastIndexOf('(');
        return of(heading).isPresent() && bracket >= 0 ? heading.substring(0, bracket).strip() : heading.strip();
    }

    /**
     * A heading's Markdown without its marker.
     *
     * @param line a line of a heading
     * @return the line as it would stand without the marker
     */
    public static String takenOutOf(String line) {
        return IN_MARKDOWN.matcher(line).replaceAll("");
    }

    /**
     * Whether a heading without a marker looks as if one was meant.
     *
     * @param heading a heading's text
     * @return true for a near miss
     */
    public static boolean isMissedIn(String heading) {
        String text = TRAILING.matcher(plain(heading)).replaceFirst("");
        if (EXACT.matcher(text).find()) {
            return true;
        }
        Matcher brackets = BRACKETS_AT_END.matcher(text);
        return brackets.find() ? isNear(words(brackets.group(1)), 3) || namesReaders(words(brackets.group(1)))
                : isNear(lastTwoWords(words(text)), 2);
    }

    /**
     * Whether a line that is no heading ends as if it were one with a marker.
     *
     * @param line a line of a body
     * @return true where its maker may have thought that it closes something
     */
    public static boolean isMisplacedIn(String line) {
        String text = TRAILING.matcher(MARKUP.matcher(plain(line)).replaceAll("")).replaceFirst("");
        Matcher brackets = BRACKETS_AT_END.matcher(text);
        return brackets.find() && isNear(words(brackets.group(1)), 2);
    }

    /**
     * Whether a body could hold a marker or a near miss of one at all; a cheap question before the costly ones.
     *
     * @param markdown a body
     * @return false where it surely holds none
     */
    public static boolean isThinkableIn(String markdown) {
        String text = markdown.chars().allMatch(letter -> letter < FIRST_LOOK_ALIKE)
                ? markdown.toLowerCase(Locale.ROOT) : plain(markdown);
        return text.contains("only") || text.contains("stu") || text.contains("tudi") || text.contains("priv")
                || text.contains("onyl") || text.contains("olny");
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }

    private static String words(String text) {
        return text.replaceAll("[\\s-]+", " ").strip();
    }

    private static String lastTwoWords(String text) {
        int last = text.lastIndexOf(' ');
        int before = last < 0 ? -1 : text.lastIndexOf(' ', last - 1);
        return last < 0 ? text : text.substring(before + 1);
    }

    private static boolean isNear(String text, int changes) {
        return text.length() < 30 && WORDS.stream().anyMatch(
                words -> EditDistance.between(text, words) <= Math.min(changes, words.length() / 4));
    }

    private static boolean namesReaders(String text) {
        List<String> words = List.of(text.split(" "));
        return words.size() <= 4 && words.stream().anyMatch(
                word -> READERS.stream().anyMatch(reader -> EditDistance.between(word, reader) <= 1));
    }
}
