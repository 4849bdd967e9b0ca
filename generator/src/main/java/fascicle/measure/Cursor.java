package fascicle.measure;

import java.math.BigInteger;
import java.text.Normalizer;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Walks once, from left to right, over a text that should begin with a number. It knows the ways in which numbers are
 * written and nothing of units. Every complaint quotes the text as the maker wrote it.
 */
final class Cursor {
    /** What joins two quantities of one sum. */
    private static final Pattern JOINT = Pattern.compile("(,|(?<= )and)$");

    /** More than any quantity needs; what is longer is a note that strayed into a figure's place. */
    private static final int LONGEST = 200;

    private static final Pattern ABOUT = Pattern.compile("(?i)(about(?![a-z])|~) *+");

    private final String written;
    private final String expected;
    private final String text;
    private int at;

    /**
     * @param written the text as the maker wrote it
     * @param expected what should stand there, for complaints
     */
    Cursor(String written, String expected) throws UnreadableQuantity {
        this.written = written;
        this.expected = expected;
        if (written.length() > LONGEST) {
            throw unreadable("is too long", "write " + expected + " and nothing else");
        }
        this.text = tidied(written).strip();
        if (text.isEmpty()) {
            throw unreadable("is empty", "write " + expected);
        }
    }

    /** Steps over a leading {@code about} or {@code ~}, and tells whether there was one. */
    boolean about() {
        var about = ABOUT.matcher(text).region(at, text.length());
        if (about.lookingAt()) {
            at = about.end();
            return true;
        }
        return false;
    }

    boolean isAtEnd() {
        return at == text.length();
    }

    /** What is left, without the spaces around it. */
    String rest() {
        return text.substring(at).strip();
    }

    /**
     * Reads a number: {@code 45}, {@code 0.5}, {@code .5}, {@code 1,5}, {@code 1/2}, {@code 1 1/2}, {@code 1-1/2}, any
     * of them after a minus sign.
     */
    BigFraction number() throws UnreadableQuantity {
        boolean negative = text.startsWith("-", at);
        if (negative) {
            at++;
        }
        String figures = figures();
        BigFraction number = isWhole(figures) ? wholeAndFraction(figures) : decimal(figures);
        return negative ? number.negate() : number;
    }

    /** Reads up to the next number or the end: what should be a unit. Joining words and commas are left out. */
    String words() {
        int start = at;
        while (at < text.length() && !isDigit(at) && !startsWithPoint()) {
            at++;
        }
        String words = text.substring(start, at).strip();
        return isAtEnd() ? words : JOINT.matcher(words).replaceFirst("").strip();
    }

    UnreadableQuantity unreadable(String problem, String mend) {
        return new UnreadableQuantity(written, problem, expected, mend);
    }

    private BigFraction wholeAndFraction(String figures) throws UnreadableQuantity {
        if (text.startsWith("/", at)) {
            return fraction(figures);
        }
        BigFraction whole = BigFraction.of(new BigInteger(figures));
        int afterWhole = at;
        if (text.startsWith("-", at)) {
            at++;
        } else {
            skipSpaces();
        }
        int start = at;
        while (isDigit(at)) {
            at++;
        }
        if (start == afterWhole || start == at || !text.startsWith("/", at) || !isDigit(at + 1)) {
            at = afterWhole;
            return whole;
        }
        BigFraction part = fraction(checked(text.substring(start, at)));
        if (part.compareTo(BigFraction.ONE) >= 0) {
            throw unreadable("has a fraction that is not smaller than one", "write a number such as 1 1/2");
        }
        return whole.add(part);
    }

    /** Reads the rest of a fraction, from its stroke on. */
    private BigFraction fraction(String above) throws UnreadableQuantity {
        at++;
        String below = isDigit(at) ? figures() : "";
        if (!isWhole(below)) {
            throw unreadable("has half a fraction", "write a whole number on both sides of the stroke, such as 1/2");
        }
        BigInteger divisor = new BigInteger(below);
        if (divisor.signum() == 0) {
            throw unreadable("divides by zero", "write a fraction such as 1/2");
        }
        return BigFraction.of(new BigInteger(above), divisor);
    }

    /** Takes a run of digits, points and commas that begins and ends with a number's own sign. */
    private String figures() throws UnreadableQuantity {
        int start = at;
        while (isDigit(at) || isSeparator(at) && isDigit(at + 1)) {
            at++;
        }
        if (start == at) {
            throw unreadable("does not begin with a number",
                    "write " + expected + "; a rough figure begins with about");
        }
        return checked(text.substring(start, at));
    }

    private String checked(String figures) throws UnreadableQuantity {
        if (Numbers.digitsIn(figures) > Numbers.MOST_DIGITS) {
            throw unreadable("has a number of more than " + Numbers.MOST_DIGITS + " digits", "round it");
        }
        return figures;
    }

    private BigFraction decimal(String figures) throws UnreadableQuantity {
        if (DecimalComma.isAmbiguous(figures)) {
            throw unreadable(DecimalComma.problem(figures), DecimalComma.mend(figures));
        }
        return Numbers.ofDecimal(figures.replace(',', '.'));
    }

    private void skipSpaces() {
        while (text.startsWith(" ", at)) {
            at++;
        }
    }

    private boolean startsWithPoint() {
        return isSeparator(at) && isDigit(at + 1) && text.charAt(at - 1) == ' ';
    }

    private boolean isSeparator(int index) {
        return text.startsWith(".", index) || text.startsWith(",", index);
    }

    private boolean isDigit(int index) {
        return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    private static boolean isWhole(String figures) {
        return !figures.isEmpty() && figures.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    /** The text with plain spaces, strokes and signs in place of their many look-alikes, and ½ as a fraction. */
    private static String tidied(String written) {
        StringBuilder tidy = new StringBuilder(written.length());
        written.codePoints().forEach(c -> {
            switch (c) {
                case '\u2044', '\u2215' -> tidy.append('/');
                case '\u00ba', '\u02da' -> tidy.append('°');
                case '\u2103' -> tidy.append("°C");
                case '\u2109' -> tidy.append("°F");
                case '\u2033', '\u201d' -> tidy.append('"');
                case '\u2010', '\u2011', '\u2212' -> tidy.append('-');
                default -> {
                    if (isVulgarFraction(c)) {
                        tidy.append(' ').append(opened(c));
                    } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                        tidy.append(' ');
                    } else {
                        tidy.appendCodePoint(c);
                    }
                }
            }
        });
        return tidy.toString();
    }

    private static boolean isVulgarFraction(int c) {
        return c >= '\u00bc' && c <= '\u00be' || c >= '\u2150' && c <= '\u215f' || c == '\u2189';
    }

    /** {@code ½} as {@code "1/2 "}; {@code ⅟}, which waits for a divisor, as {@code "1/"}. */
    private static String opened(int vulgarFraction) {
        String opened = Normalizer.normalize(Character.toString(vulgarFraction), Normalizer.Form.NFKC)
                .replace('\u2044', '/');
        return opened.endsWith("/") ? opened : opened + " ";
    }
}
