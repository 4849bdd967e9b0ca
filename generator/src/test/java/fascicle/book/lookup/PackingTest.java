package fascicle.book.lookup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PackingTest {

    @Test
    void digitsArePrintableAndNeedNoEscape() {
        assertEquals(Packing.DIGITS, Packing.alphabet().length());
        assertTrue(Packing.alphabet().chars().allMatch(digit -> digit >= ' ' && digit <= '~'));
        assertTrue(IntStream.of('"', '\\', '<').allMatch(digit -> Packing.alphabet().indexOf(digit) < 0));
        assertEquals("  ", Packing.digits(0, 2));
        assertEquals("~~", Packing.digits(92 * 92 - 1, 2));
        assertThrows(IllegalArgumentException.class, () -> Packing.digits(92 * 92, 2));
        assertThrows(IllegalArgumentException.class, () -> Packing.digits(-1, 2));
    }

    @Test
    void setsOfAnyDensityComeBackFromEveryBlock() {
        for (int limit : new int[] {1, 2, 7, 31, 32, 33, 1000, 10_007}) {
            Random random = new Random(limit);
            List<int[]> sets = new ArrayList<>();
            for (int i = 0; i < 3 * Packing.BLOCK + 5; i++) {
                double share = Math.pow(random.nextDouble(), 1 + i % 7);
                sets.add(IntStream.range(0, limit).filter(number -> random.nextDouble() < share).toArray());
            }
            sets.add(new int[0]);
            sets.add(IntStream.range(0, limit).toArray());
            sets.add(new int[] {limit - 1});
            List<int[]> back = new Unpacking(Packing.sets(sets, limit), limit).all(sets.size());
            for (int i = 0; i < sets.size(); i++) {
                assertArrayEquals(sets.get(i), back.get(i), limit + ": " + i);
            }
        }
    }

    @Test
    void aSetTakesHardlyMoreThanItMust() {
        // The least a random set of n numbers in N takes is N·H(n/N) bits (C. E. Shannon, 1948).
        Random random = new Random(3);
        int limit = 10_000;
        List<int[]> sets = new ArrayList<>();
        double least = 0;
        for (int i = 0; i < 500; i++) {
            double share = 0.5 / (1 + i);
            int[] set = IntStream.range(0, limit).filter(number -> random.nextDouble() < share).toArray();
            double p = Math.max(1, set.length) / (double) limit;
            least -= limit * (p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
            sets.add(set);
        }
        double bits = Packing.sets(sets, limit).text().length() * 6.5;
        assertTrue(bits < 1.06 * least, bits + " for " + least);
    }

    /** Reads packed sets back by their description, bit by bit; the book's script does it faster. */
    private record Unpacking(Packing.Sets packed, int limit) {

        List<int[]> all(int count) {
            List<int[]> all = new ArrayList<>();
            int from = 0;
            for (int length : smalls(packed.blocks())) {
                Bits bits = new Bits(packed.text().substring(from, from + length));
                for (int i = 0; i < Packing.BLOCK && all.size() < count; i++) {
                    all.add(set(bits));
                }
                from += length;
            }
            return all;
        }

        private int[] set(Bits bits) {
            int width = bits.ones();
            int count = (1 << width) + bits.low(width) - 1;
            boolean outside = count > limit / 2;
            int told = outside ? limit - count : count;
            int k = 0;
            while (k < 18 && ((long) told * 10 << k + 1) <= 9L * limit) {
                k++;
            }
            boolean[] in = new boolean[limit];
            int number = -1;
            for (int i = 0; i < told; i++) {
                number += (bits.ones() << k) + bits.low(k) + 1;
                in[number] = true;
            }
            return IntStream.range(0, limit).filter(at -> in[at] != outside).toArray();
        }

        private static List<Integer> smalls(String text) {
            List<Integer> numbers = new ArrayList<>();
            for (int at = 0; at < text.length();) {
                int digit = Packing.alphabet().indexOf(text.charAt(at++));
                if (digit == Packing.DIGITS - 1) {
                    digit = 0;
                    for (int more = 0; more < 4; more++) {
                        digit = digit * Packing.DIGITS + Packing.alphabet().indexOf(text.charAt(at++));
                    }
                }
                numbers.add(digit);
            }
            return numbers;
        }
    }

    private static final class Bits {

        private final StringBuilder bits = new StringBuilder();
        private int at;

        Bits(String text) {
            for (int from = 0; from < text.length(); from += 2) {
                boolean two = from + 1 < text.length();
                int value = Packing.alphabet().indexOf(text.charAt(from));
                value = two ? value * Packing.DIGITS + Packing.alphabet().indexOf(text.charAt(from + 1)) : value;
                for (int bit = (two ? 13 : 6) - 1; bit >= 0; bit--) {
                    bits.append(value >> bit & 1);
                }
            }
        }

        int ones() {
            int from = at;
            while (bits.charAt(at) == '1') {
                at++;
            }
            return at++ - from;
        }

        int low(int count) {
            int number = 0;
            for (int i = 0; i < count; i++) {
                number = number * 2 + bits.charAt(at++) - '0';
            }
            return number;
        }
    }
}
