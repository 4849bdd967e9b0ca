package fascicle.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;

/**
 * Draws that come out the same for the same seed, on any machine and in any locale.
 *
 * <p>Built on {@link Random}, whose numbers its specification fixes to the bit; figures are drawn as whole numbers
 * and given their decimal point afterwards, so that no rounding is involved.
 */
final class Chance {

    private final Random random;

    Chance(long seed) {
        random = new Random(seed);
    }

    /** A whole number from {@code low} to {@code high}, both included. */
    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    /** True once in {@code n} draws. */
    boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    /** True in {@code percent} of a hundred draws. */
    boolean percent(int percent) {
        return random.nextInt(100) < percent;
    }

    /** One of the things. */
    <T> T pick(List<T> things) {
        return things.get(random.nextInt(things.size()));
    }

    /** One of the words. */
    String oneOf(String... words) {
        return words[random.nextInt(words.length)];
    }

    /** A share from 0 (included) to 1 (excluded). */
    double share() {
        return random.nextDouble();
    }

    /** A figure with one decimal, from {@code low} to {@code high} tenths. */
    String tenths(int low, int high) {
        return tenths(between(low, high));
    }

    /** That many tenths, written with a decimal point. */
    static String tenths(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }
}
