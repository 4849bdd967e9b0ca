package fascicle.book.lookup;

import java.util.BitSet;

/**
 * Numbers as printable characters.
 *
 * <p>A digit is one of the 92 characters of ASCII that can be printed and that no script text needs to escape. Thirteen
 * bits take two digits; six bits or fewer left over take one.
 *
 * <p>A set is the shorter of two: digit 0 and a bit for each number, or digit 1 + k and the gaps between numbers in
 * Rice's code (R. F. Rice, 1979, JPL Publication 79-22): gap / 2ᵏ ones, a nought, k bits. Ones fill the last digit up.
 */
final class Packing {

    static final int DIGITS = 92;

    private static final int BITS = 13;
    private static final int FEW_BITS = 6;
    private static final int MOST_BITS_OF_GAP = 18;
    private static final String ALPHABET = alphabet();

    private final StringBuilder text = new StringBuilder();
    private int held;
    private int bits;

    private Packing() {}

    static String alphabet() {
        StringBuilder all = new StringBuilder();
        for (char letter = ' '; letter <= '~'; letter++) {
            if (letter != '"' && letter != '\\' && letter != '<') {
                all.append(letter);
            }
        }
        return all.toString();
    }

    /** A number in so many digits, the highest first. */
    static String digits(long number, int count) {
        char[] written = new char[count];
        long rest = number;
        for (int at = count - 1; at >= 0; at--) {
            written[at] = ALPHABET.charAt((int) (rest % DIGITS));
            rest /= DIGITS;
        }
        if (number < 0 || rest > 0) {
            throw new IllegalArgumentException(number + " does not fit into " + count + " digits");
        }
        return new String(written);
    }

    /** A number in one digit where it is small, else in the last digit and four more. */
    static String small(int number) {
        return number < DIGITS - 1 ? digits(number, 1) : ALPHABET.charAt(DIGITS - 1) + digits(number, 4);
    }

    /** A set of numbers below a limit. */
    static String set(int[] ascending, int limit) {
        int best = 0;
        long fewest = limit;
        for (int k = 0; k <= MOST_BITS_OF_GAP; k++) {
            long cost = cost(ascending, k, fewest);
            if (cost < fewest) {
                fewest = cost;
                best = k + 1;
            }
        }
        return best == 0 ? bitmap(ascending, limit) : gaps(ascending, best - 1);
    }

    static String set(BitSet numbers, int limit) {
        return set(numbers.stream().toArray(), limit);
    }

    /** How many bits the gaps take, as far as it is below a limit. */
    private static long cost(int[] ascending, int k, long limit) {
        long cost = 0;
        int last = -1;
        for (int number : ascending) {
            cost += ((number - last - 1) >> k) + 1 + k;
            last = number;
            if (cost >= limit) {
                break;
            }
        }
        return cost;
    }

    private static String bitmap(int[] ascending, int limit) {
        Packing packing = new Packing();
        packing.text.append(ALPHABET.charAt(0));
        int at = 0;
        for (int number = 0; number < limit; number++) {
            boolean in = at < ascending.length && ascending[at] == number;
            packing.bit(in ? 1 : 0);
            at += in ? 1 : 0;
        }
        return packing.finished(0);
    }

    private static String gaps(int[] ascending, int k) {
        Packing packing = new Packing();
        packing.text.append(ALPHABET.charAt(k + 1));
        int last = -1;
        for (int number : ascending) {
            int gap = number - last - 1;
            for (int ones = gap >> k; ones > 0; ones--) {
                packing.bit(1);
            }
            packing.bit(0);
            for (int at = k - 1; at >= 0; at--) {
                packing.bit(gap >> at & 1);
            }
            last = number;
        }
        return packing.finished(1);
    }

    private void bit(int bit) {
        held = held << 1 | bit;
        if (++bits == BITS) {
            text.append(digits(held, 2));
            held = 0;
            bits = 0;
        }
    }

    private String finished(int filling) {
        if (bits > 0) {
            int digits = bits <= FEW_BITS ? 1 : 2;
            int wanted = digits == 1 ? FEW_BITS : BITS;
            while (bits < wanted) {
                held = held << 1 | filling;
                bits++;
            }
            text.append(digits(held, digits));
        }
        return text.toString();
    }

    /** Reads a set back. */
    static BitSet read(String packed) {
        BitSet numbers = new BitSet();
        StringBuilder all = new StringBuilder();
        for (int at = 1; at < packed.length(); at += 2) {
            boolean two = at + 1 < packed.length();
            int value = ALPHABET.indexOf(packed.charAt(at));
            value = two ? value * DIGITS + ALPHABET.indexOf(packed.charAt(at + 1)) : value;
            for (int bit = (two ? BITS : FEW_BITS) - 1; bit >= 0; bit--) {
                all.append(value >> bit & 1);
            }
        }
        int k = ALPHABET.indexOf(packed.charAt(0)) - 1;
        if (k < 0) {
            for (int at = 0; at < all.length(); at++) {
                numbers.set(at, all.charAt(at) == '1');
            }
            return numbers;
        }
        int last = -1;
        int at = 0;
        while (true) {
            int nought = all.indexOf("0", at);
            if (nought < 0 || nought + k >= all.length()) {
                return numbers;
            }
            String rest = all.substring(nought + 1, nought + 1 + k);
            last += ((nought - at) << k) + (rest.isEmpty() ? 0 : Integer.parseInt(rest, 2)) + 1;
            numbers.set(last);
            at = nought + 1 + k;
        }
    }
}
