package fascicle.colour.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Under which light, and for whose eye, a meter reckoned Lab or XYZ.
 *
 * @param illuminant such as {@code D65}, where the table says so
 * @param observer 2 or 10 degrees, where the table says so
 */
record Viewing(Optional<String> illuminant, Optional<Integer> observer) {

    /** The table says nothing: D50 and 2° are meant, as print and most meters have it (common practice, no source). */
    static final Viewing UNSAID = new Viewing(Optional.empty(), Optional.empty());

    /** Some files lose the sign on their way. */
    private static final String DEGREES = "\\s*(?:[°º\uFFFD]|DEG[A-Z]*)";

    private static final String NUMBERED = "(D[0-9]{2}|F[0-9]{1,2})";
    private static final String ANY = "(D[0-9]{2}|F[0-9]{1,2}|[ABCE])";

    /** A letter alone is an illuminant only where nothing follows that would make it an article or a name. */
    private static final Pattern ILLUMINANT = caseless("ILLUMINA(?:NT|TION)(?:_NAME)?[\\s,=:;\"]+(?:CIE\\s*)?"
            + "(D[0-9]{2}|F[0-9]{1,2}|TL[0-9]{2}|[ABCE](?=[\\s\"]*(?:$|[,;/)]|[0-9]|OBSERVER)))");
    private static final Pattern OBSERVER =
            caseless("OBSERVER(?:[_ ]?ANGLE)?[\\s,=:;\"]+(?:CIE\\s*)?(2|10|1931|1964)(?![0-9])");
    private static final Pattern BOTH = caseless("\\b" + ANY + "\\s*/\\s*(2|10)" + DEGREES);

    /** What may follow a column's name: {@code (D65/10°)}, {@code _D50}; {@code (A)}; {@code 10 deg}. */
    private static final List<Pattern> TAILS = List.of(
            caseless("[\\s_,/(\\[-]*" + NUMBERED + "(?:[\\s_,/;-]*(2|10)(?:" + DEGREES + ")?)?[\\s)\\]]*"),
            caseless("\\s*[(\\[]\\s*" + ANY + "(?:[\\s,/;-]+(2|10)(?:" + DEGREES + ")?)?\\s*[)\\]]"),
            caseless("[\\s_,/(\\[-]*()(2|10)" + DEGREES + "[\\s)\\]]*"));

    /** What a line above the columns says of it; nothing, mostly. */
    static Viewing in(String words) {
        Matcher both = BOTH.matcher(words);
        if (both.find()) {
            return of(both.group(1), both.group(2));
        }
        Matcher illuminant = ILLUMINANT.matcher(words);
        Matcher observer = OBSERVER.matcher(words);
        return of(illuminant.find() ? illuminant.group(1) : "", observer.find() ? observer.group(1) : "");
    }

    /** What follows a column's name says it; empty where the words say something else. */
    static Optional<Viewing> ofTail(String words) {
        if (words.isBlank()) {
            return Optional.of(UNSAID);
        }
        for (Pattern pattern : TAILS) {
            Matcher matcher = pattern.matcher(words);
            if (matcher.matches()) {
                return Optional.of(of(matcher.group(1), matcher.group(2) == null ? "" : matcher.group(2)));
            }
        }
        return Optional.empty();
    }

    /** This, and what it leaves unsaid from another. */
    Viewing over(Viewing below) {
        return new Viewing(illuminant.or(below::illuminant), observer.or(below::observer));
    }

    boolean isD65() {
        return illuminant.filter("D65"::equals).isPresent();
    }

    /** Whether it can be made into a colour under D50 for the 2° observer. */
    boolean suits() {
        return observer.orElse(2) == 2 && (isD65() || illuminant.orElse("D50").equals("D50"));
    }

    /** {@code D65 and the 10° observer}. */
    String words() {
        return illuminant.orElse("D50") + " and the " + observer.orElse(2) + "° observer";
    }

    private static Viewing of(String illuminant, String observer) {
        return new Viewing(
                Optional.of(illuminant.toUpperCase(Locale.ROOT)).filter(name -> !name.isEmpty()),
                Optional.of(observer).filter(angle -> !angle.isEmpty()).map(Viewing::angle));
    }

    private static int angle(String written) {
        return switch (written) {
            case "1931", "2" -> 2;
            default -> 10;
        };
    }

    private static Pattern caseless(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }
}
