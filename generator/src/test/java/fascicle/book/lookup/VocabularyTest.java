package fascicle.book.lookup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class VocabularyTest {

    private static final Vocabulary WORDS = new Vocabulary(
            List.of("bark", "brick", "bricks", "brim", "scald", "scalded", "walnut", "water", "woad"));

    private static List<String> words(Vocabulary vocabulary, BitSet found) {
        return found.stream().mapToObj(vocabulary.words()::get).toList();
    }

    @Test
    void wordsAreFoundByTheirBeginnings() {
        assertEquals(List.of("brick", "bricks", "brim"), words(WORDS, WORDS.beginning("bri")));
        assertEquals(List.of("scald", "scalded"), words(WORDS, WORDS.beginning("scald")));
        assertEquals(List.of(), words(WORDS, WORDS.beginning("brickx")));
        assertEquals(List.of(), words(WORDS, WORDS.beginning("zzz")));
    }

    @Test
    void oneLetterWrongMissingTooManyOrTwoSwappedIsASlip() {
        assertEquals(List.of("walnut"), words(WORDS, WORDS.slips("walmut")));
        assertEquals(List.of("walnut"), words(WORDS, WORDS.slips("wlnut")));
        assertEquals(List.of("walnut"), words(WORDS, WORDS.slips("wallnut")));
        assertEquals(List.of("walnut"), words(WORDS, WORDS.slips("wanlut")));
        assertEquals(List.of("walnut"), words(WORDS, WORDS.slips("xalnut")));
        assertEquals(List.of(), words(WORDS, WORDS.slips("xxlnut")));
    }

    @Test
    void aSlipInABeginningFindsTheWholeWords() {
        assertEquals(List.of("scald", "scalded"), words(WORDS, WORDS.slips("sclad")));
    }

    /** The walk against the definition: every word, every beginning of it, measured by the classic table. */
    @Test
    void theWalkFindsWhatTheDefinitionFinds() {
        Random random = new Random(7);
        TreeSet<String> made = new TreeSet<>();
        while (made.size() < 400) {
            made.add(word(random, 2 + random.nextInt(6)));
        }
        Vocabulary vocabulary = new Vocabulary(new ArrayList<>(made));
        for (int i = 0; i < 300; i++) {
            String typed = word(random, 4 + random.nextInt(3));
            if (vocabulary.beginning(typed).isEmpty()) {
                assertEquals(made.stream().filter(word -> beginsWithASlip(word, typed)).toList(),
                        words(vocabulary, vocabulary.slips(typed)), typed);
            }
        }
    }

    private static String word(Random random, int length) {
        StringBuilder word = new StringBuilder();
        for (int at = 0; at < length; at++) {
            word.append((char) ('a' + random.nextInt(4)));
        }
        return word.toString();
    }

    private static boolean beginsWithASlip(String word, String typed) {
        for (int length = 0; length <= word.length(); length++) {
            if (distance(word.substring(0, length), typed) <= 1) {
                return true;
            }
        }
        return false;
    }

    /** Optimal string alignment, after Damerau (1964). */
    private static int distance(String one, String other) {
        int[][] d = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + same, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[one.length()][other.length()];
    }
}
