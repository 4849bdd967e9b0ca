package fascicle.book.lookup;

import java.util.List;

/**
 * Numbers as printable characters.
 *
 * <p>A digit is one of the 92 characters of ASCII that can be printed and that no script text needs to escape. Thirteen
 * bits take two digits; six bits or fewer left over take one.
 *
 * <p>Sets of numbers below a limit stand one after another, {@value #BLOCK} of them in a block that begins with a digit
 * of its own. Each is its count in Elias' gamma code (P. Elias, 1975, IEEE Transactions on Information Theory 21(2),
 * 194–203; of one more than the count), then the gaps between its numbers in Rice's code (R. F. Rice, 1979, JPL
 * Publication 79-22): gap / 2ᵏ ones, a nought, k bits, where k follows from count and limit. Of a set that holds more
 * than half of all numbers the numbers outside are told instead.
 */
final class Packing {

    static final int DIGITS = 92;

    /** How many sets have to be read over, at most, to find one. */
    static final int BLOCK = 32;

    private static final int BITS = 13;
    private static final int FEW_BITS = 6;
    private static final int MOST_BITS_OF_GAP = 18;
    private static final String ALPHABET = alphabet();

    private final StringBuilder text = new StringBuilder();
    private int held;
    private int bits;

    private Packing() {}

    /**
     * Sets as text.
     *
     * @param text all blocks
     * @param blocks how long each is, see {@link #small}
     */
    record Sets(String text, String blocks) {}

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
            written[at] = ALPHABET.charAt((int) StrictMath.floorMod(rest, (long) DIGITS));
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

    /** A place in a list whose commonest things stand first: 60 have one digit, 2852 two, others five. */
    static String place(int number) {
        if (number < 60) {
            return digits(number, 1);
        }
        return number - 60 < 31 * DIGITS ? digits(60 * DIGITS + number - 60, 2)
                : ALPHABET.charAt(DIGITS - 1) + digits(number, 4);
    }

    /** Packs sets of ascending numbers below a limit. */
    static Sets sets(List<int[]> sets, int limit) {
        StringBuilder text = new StringBuilder();
        StringBuilder blocks = new StringBuilder();
        for (int from = 0; from < sets.size(); from += BLOCK) {
            Packing packing = new Packing();
            sets.subList(from, Math.min(sets.size(), from + BLOCK)).forEach(set -> packing.set(set, limit));
            String block = packing.finished();
            text.append(block);
            blocks.append(small(block.length()));
        }
        return new Sets(text.toString(), blocks.toString());
    }

    private void set(int[] numbers, int limit) {
        gamma(numbers.length + 1);
        int[] told = numbers.length > limit / 2 ? outside(numbers, limit) : numbers;
        int k = bitsOfGap(told.length, limit);
        int last = -1;
        for (int number : told) {
            int gap = number - last - 1;
            for (int ones = gap >> k; ones > 0; ones--) {
                bit(1);
            }
            bit(0);
            low(gap, k);
            last = number;
        }
    }

    private static int[] outside(int[] numbers, int limit) {
        int[] outside = new int[limit - numbers.length];
        int at = 0;
        int count = 0;
        for (int number = 0; number < limit; number++) {
            if (at < numbers.length && numbers[at] == number) {
                at++;
            } else {
                outside[count++] = number;
            }
        }
        return outside;
    }

    /**
     * The k that suits the gaps of random numbers (A. Kiely, 2004, IPN Progress Report 42-159, whose golden ratio comes
     * to 2ᵏ ≤ 0.96 of their mean; a little less suits sets that hold much).
     */
    private static int bitsOfGap(int count, int limit) {
        int k = 0;
        while (k < MOST_BITS_OF_GAP && ((long) count * 10 << k + 1) <= 9L * limit) {
            k++;
        }
        return k;
    }

    private void gamma(int number) {
        int length = 31 - Integer.numberOfLeadingZeros(number);
        for (int at = 0; at < length; at++) {
            bit(1);
        }
        bit(0);
        low(number, length);
    }

    private void low(int number, int count) {
        for (int at = count - 1; at >= 0; at--) {
            bit(number >> at & 1);
        }
    }

    private void bit(int bit) {
        held = held << 1 | bit;
        if (++bits == BITS) {
            text.append(digits(held, 2));
            held = 0;
            bits = 0;
        }
    }

    private String finished() {
        if (bits > 0) {
            int digits = bits <= FEW_BITS ? 1 : 2;
            text.append(digits((long) held << (digits == 1 ? FEW_BITS : BITS) - bits, digits));
        }
        return text.toString();
    }
}
