package fascicle.book.theme;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Refuses templates that reach for what would let them out: other files, code, unescaped text, the clock.
 *
 * <p>What is refused is refused anywhere in a file, in comments too, so that no trick of nesting can hide it.
 */
final class TemplateScreen {

    /** What may stand between a question mark and the name of a built-in: blanks and comments. */
    private static final String GAP = "(?:\\s|[<\\[][#!]--.*?--[>\\]])*";

    private static final Map<Pattern, String> REFUSED = Map.of(
            pattern("\\?" + GAP + "(?:api|interpret|eval|eval_?json|new|no_?esc)\\b"),
            "expected a built-in that only changes text, numbers or lists, not %s",
            pattern("</?[#](?:no_?auto_?esc|output_?format|ftl|setting)\\b"),
            "expected text that is always escaped, without %s",
            pattern("\\." + GAP + "now\\b"),
            "expected nothing that depends on the hour, without %s");

    private static final Pattern OTHER_FILE = pattern("<#(?:include|import)\\b\\s*(\"[^\"]*\"|'[^']*'|)");

    private TemplateScreen() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    }

    /**
     * Looks a template through.
     *
     * @param name its file name
     * @param text its text
     * @param others the file names it may bring in
     * @return where it reaches too far
     */
    static List<ThemeBroken.Fault> faults(String name, String text, Set<String> others) {
        List<ThemeBroken.Fault> faults = new ArrayList<>();
        for (Map.Entry<Pattern, String> refused : REFUSED.entrySet()) {
            Matcher found = refused.getKey().matcher(text);
            while (found.find()) {
                faults.add(fault(name, text, found.start(), refused.getValue().formatted(found.group())));
            }
        }
        Matcher other = OTHER_FILE.matcher(text);
        while (other.find()) {
            String file = other.group(1).isEmpty() ? "" : other.group(1).substring(1, other.group(1).length() - 1);
            if (!others.contains(file)) {
                faults.add(fault(name, text, other.start(),
                        "expected the quoted name of a template of this theme, not " + other.group()));
            }
        }
        return faults;
    }

    private static ThemeBroken.Fault fault(String name, String text, int position, String message) {
        String before = text.substring(0, position);
        int line = 1 + (int) before.chars().filter(character -> character == '\n').count();
        String lineBefore = before.substring(before.lastIndexOf('\n') + 1);
        return new ThemeBroken.Fault(name, line, 1 + lineBefore.codePointCount(0, lineBefore.length()), message);
    }
}
