package fascicle.notebook.label;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a pack says of one hazard.
 *
 * @param written as it was copied from the pack
 * @param codes its codes, each as the system spells it: one, or those of a combined statement; none where what was
 *     written is no code
 * @param wording the system's own words; nothing where it has none for this
 */
public record HazardStatement(String written, List<String> codes, Optional<String> wording) {

    private static final Pattern CODE = Pattern.compile("(EUH|H)?\\s?([0-9]{3})([A-Z]{0,2})", Pattern.CASE_INSENSITIVE);

    /** Behind this no code of a hazard stands hidden among words. */
    private static final String NO_OTHER_CODE = "(?!.*\\b(?:EUH|H)\\s?[0-9]{3})";

    /** A code, or a combined one, that was copied with the words beside it. */
    private static final Pattern WITH_WORDS = Pattern.compile("((?:EUH|H)\\s?[0-9]{3}[A-Z]{0,2}"
            + "(?:\\s*\\+\\s*(?:EUH|H)?\\s?[0-9]{3}[A-Z]{0,2})*)" + NO_OTHER_CODE
            + "(?:\\s*[:,.;(\u2013\u2014-]+\\s*|\\s+)\\p{L}{3}.*", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    /** How to take care, as in P280 or P301+P312. */
    private static final Pattern PRECAUTION = Pattern.compile("P\\s?[0-9]{3}" + NO_OTHER_CODE + ".*",
            Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    /** What else is in the pack, as in EUH208. */
    private static final Pattern CONTENT = Pattern.compile("EUH\\s?2[0-9]{2}" + NO_OTHER_CODE + ".*",
            Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    /**
     * Reads a code: {@code H318}, {@code H360FD}, {@code EUH066}, or a combined {@code H301+H311}, alone or before
     * words.
     *
     * <p>Codes that the system does not combine are worded one after the other.
     *
     * @param written as it was copied from the pack
     * @return what it says
     */
    public static HazardStatement read(String written) {
        Matcher copied = WITH_WORDS.matcher(written.strip());
        String code = copied.matches() ? copied.group(1) : written.strip();
        List<Optional<String>> each = Arrays.stream(code.split("\\s*\\+\\s*", -1)).map(HazardStatement::spelled)
                .toList();
        if (each.stream().anyMatch(Optional::isEmpty) || !code.matches("(?i)(EU)?H.*")) {
            return new HazardStatement(written, List.of(), Optional.empty());
        }
        List<String> codes = each.stream().flatMap(Optional::stream).toList();
        return new HazardStatement(written, codes, HazardStatements.wording(String.join("+", codes))
                .or(() -> oneByOne(codes)));
    }

    /** What to show for the code: its codes, or what was written where that is none. */
    public String code() {
        return codes.isEmpty() ? written : String.join("+", codes);
    }

    /** Whether it tells how to take care, and not what the hazard is. */
    public boolean isPrecaution() {
        return PRECAUTION.matcher(written.strip()).matches();
    }

    /** Whether nobody can tell what hazard it warns of, though it may be any. */
    public boolean isUnread() {
        return wording.isEmpty() && !isPrecaution() && !CONTENT.matcher(written.strip()).matches();
    }

    private static Optional<String> oneByOne(List<String> codes) {
        List<String> wordings = codes.stream().flatMap(code -> HazardStatements.wording(code).stream()).toList();
        return wordings.size() < codes.size() ? Optional.empty() : Optional.of(String.join(". ", wordings));
    }

    /** A single code; in a combined one the letter may stand at the first alone. */
    private static Optional<String> spelled(String written) {
        Matcher code = CODE.matcher(written);
        return code.matches() ? Optional.of((code.group(1) == null ? "H" : code.group(1).toUpperCase(Locale.ROOT))
                + code.group(2) + code.group(3)) : Optional.empty();
    }
}
