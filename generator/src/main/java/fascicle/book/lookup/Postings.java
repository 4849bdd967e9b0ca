package fascicle.book.lookup;

import java.util.Arrays;
import java.util.BitSet;

/** Ascending whole numbers in the making. */
final class Postings {

    private int[] numbers = new int[2];
    private int size;

    /** Adds a number, which must not be smaller than the last; the last again is not added twice. */
    void add(int number) {
        if (size > 0 && numbers[size - 1] == number) {
            return;
        }
        if (size == numbers.length) {
            numbers = Arrays.copyOf(numbers, size * 2);
        }
        numbers[size++] = number;
    }

    void addTo(BitSet all) {
        for (int at = 0; at < size; at++) {
            all.set(numbers[at]);
        }
    }

    int[] numbers() {
        return Arrays.copyOf(numbers, size);
    }
}
