package fascicle.book.lookup;

import java.util.BitSet;
import java.util.List;

/** The words of a book in order (by UTF-16 code units), found by their beginnings, if need be with one slip. */
final class Vocabulary {

    /** Shorter words are too easily taken for others. */
    static final int SHORTEST_SLIP = 4;

    private final List<String> words;

    Vocabulary(List<String> sorted) {
        this.words = sorted;
    }

    List<String> words() {
        return words;
    }

    /** Which words begin so. */
    BitSet beginning(String typed) {
        BitSet found = new BitSet();
        take(typed, found);
        return found;
    }

    /**
     * Which words' beginning is one slip away: one letter wrong, missing or too many, or two neighbours swapped
     * (F. J. Damerau, 1964, "A technique for computer detection and correction of spelling errors").
     */
    BitSet slips(String typed) {
        BitSet found = new BitSet();
        int length = typed.length();
        for (int at = 0; at <= length; at++) {
            String before = typed.substring(0, at);
            int from = first(before);
            int to = afterLast(before);
            if (from == to) {
                break;
            }
            if (at < length) {
                take(before + typed.substring(at + 1), found);
            }
            if (at + 1 < length) {
                take(before + typed.charAt(at + 1) + typed.charAt(at) + typed.substring(at + 2), found);
            }
            if (words.get(from).length() == at) {
                from++;
            }
            while (from < to) {
                String other = words.get(from).substring(0, at + 1);
                if (at < length) {
                    take(other + typed.substring(at + 1), found);
                }
                take(other + typed.substring(at), found);
                from = afterLast(other);
            }
        }
        return found;
    }

    private void take(String beginning, BitSet found) {
        int from = first(beginning);
        if (from < words.size() && words.get(from).startsWith(beginning)) {
            found.set(from, afterLast(beginning));
        }
    }

    /** The first word that does not stand before a beginning. */
    private int first(String beginning) {
        int low = 0;
        int high = words.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (words.get(middle).compareTo(beginning) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The first word after all that begin so. */
    private int afterLast(String beginning) {
        int low = 0;
        int high = words.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            String word = words.get(middle);
            if (word.compareTo(beginning) < 0 || word.startsWith(beginning)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
