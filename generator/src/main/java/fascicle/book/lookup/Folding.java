package fascicle.book.lookup;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/**
 * How text becomes the words by which it is found: without case, accents and ligatures. The book's script does exactly
 * the same ({@code engine.js}); one list of cases tests both.
 */
public final class Folding {

    /** Longer words are found by their beginning. */
    static final int LONGEST = 40;

    /** Letters that Unicode does not take apart. */
    private static final Map<Integer, String> LETTERS = Map.ofEntries(Map.entry((int) 'ß', "ss"),
            Map.entry((int) 'æ', "ae"), Map.entry((int) 'œ', "oe"), Map.entry((int) 'ø', "o"),
            Map.entry((int) 'ł', "l"), Map.entry((int) 'đ', "d"), Map.entry((int) 'ð', "d"),
            Map.entry((int) 'þ', "th"), Map.entry((int) 'ı', "i"), Map.entry((int) 'ħ', "h"),
            Map.entry((int) 'ŧ', "t"), Map.entry((int) 'ς', "σ"));

    private Folding() {}

    /**
     * Folds a text without taking it apart.
     *
     * @param text any text
     * @return compatibility-decomposed, without marks, in small letters
     */
    public static String fold(String text) {
        if (isAscii(text)) {
            return text.toLowerCase(Locale.ROOT);
        }
        String decomposed = Normalizer.normalize(text, Normalizer.Form.NFKD);
        StringBuilder bare = new StringBuilder(decomposed.length());
        decomposed.codePoints().filter(point -> !isMark(point)).forEach(bare::appendCodePoint);
        StringBuilder folded = new StringBuilder(bare.length());
        bare.toString().toLowerCase(Locale.ROOT).codePoints().forEach(point -> {
            String letters = LETTERS.get(point);
            if (letters == null) {
                folded.appendCodePoint(point);
            } else {
                folded.append(letters);
            }
        });
        return folded.toString();
    }

    /**
     * The words of a text.
     *
     * @param text any text
     * @return folded, in order, as often as they stand there
     */
    public static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        words(text, words::add);
        return words;
    }

    static void words(String text, Consumer<String> words) {
        String folded = fold(text);
        int from = 0;
        int at = 0;
        while (at < folded.length()) {
            int point = folded.codePointAt(at);
            int next = at + Character.charCount(point);
            if (!isOfWords(point)) {
                word(folded, from, at, words);
                from = next;
            }
            at = next;
        }
        word(folded, from, at, words);
    }

    private static void word(String folded, int from, int to, Consumer<String> words) {
        if (from < to) {
            int end = Math.min(to, from + LONGEST);
            boolean halved = end < to && Character.isHighSurrogate(folded.charAt(end - 1));
            words.accept(folded.substring(from, halved ? end - 1 : end));
        }
    }

    private static boolean isOfWords(int point) {
        if (point < 128) {
            return point >= 'a' && point <= 'z' || point >= '0' && point <= '9' || point >= 'A' && point <= 'Z';
        }
        int type = Character.getType(point);
        return Character.isLetter(point) || type == Character.DECIMAL_DIGIT_NUMBER || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }

    private static boolean isMark(int point) {
        int type = Character.getType(point);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK
                || type == Character.COMBINING_SPACING_MARK;
    }

    private static boolean isAscii(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (text.charAt(at) > 127) {
                return false;
            }
        }
        return true;
    }
}
