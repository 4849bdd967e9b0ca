package fascicle.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import org.apache.commons.numbers.fraction.BigFraction;

/** Numbers as makers write them, read and printed exactly. */
public final class Numbers {
    /** The most digits a number may have, before and after its point together. */
    static final int MOST_DIGITS = 12;

    /** Halves, thirds, quarters and so on: the fractions that are marked on spoons, cups and rulers. */
    private static final int FINEST_MARK = 16;

    private Numbers() {}

    /**
     * Reads a number that stands alone: {@code 45}, {@code .5}, {@code 1,5}, {@code 1 1/2}, {@code 1-1/2}, {@code 1½},
     * {@code -5}.
     *
     * @throws UnreadableQuantity if it is no number, has more than 12 digits, divides by zero, or has a comma that can
     *     be read in two ways
     */
    public static BigFraction read(String text) throws UnreadableQuantity {
        Cursor cursor = new Cursor(text, "a number, such as 1.5");
        BigFraction number = cursor.number();
        if (!cursor.rest().isEmpty()) {
            throw cursor.unreadable("is not one number", "write a number, such as 1.5, and nothing else");
        }
        return number;
    }

    /**
     * Whether a text holds a digit or a fraction character, so that it must not be taken for plain words.
     */
    public static boolean holdsNumber(String text) {
        return text.codePoints().anyMatch(c -> switch (Character.getType(c)) {
            case Character.DECIMAL_DIGIT_NUMBER, Character.LETTER_NUMBER, Character.OTHER_NUMBER -> true;
            default -> false;
        });
    }

    /** Prints a number exactly: as a decimal where it ends within twelve digits, else as a fraction, {@code 1 1/3}. */
    public static String print(BigFraction number) {
        BigInteger rest = number.getDenominator();
        int places = 0;
        while (!BigInteger.TEN.pow(places).mod(rest).equals(BigInteger.ZERO) && places <= MOST_DIGITS) {
            places++;
        }
        if (places <= MOST_DIGITS) {
            BigInteger scaled = number.getNumerator().multiply(BigInteger.TEN.pow(places)).divide(rest);
            String decimal = new BigDecimal(scaled, places).toPlainString();
            if (digitsIn(decimal) <= MOST_DIGITS) {
                return decimal;
            }
        }
        return printMixed(number);
    }

    /** Prints as {@link #print}, but halves, thirds and the like, down to sixteenths, as fractions: {@code 1 1/2}. */
    public static String printFraction(BigFraction number) {
        return number.getDenominator().compareTo(BigInteger.valueOf(FINEST_MARK)) <= 0
                ? printMixed(number)
                : print(number);
    }

    /** Whether the number prints within the digits that {@link #read} takes. */
    public static boolean readsBack(BigFraction number) {
        return Arrays.stream(print(number).split("[ /]")).allMatch(part -> digitsIn(part) <= MOST_DIGITS);
    }

    /** How many digits a number has, zeros at its beginning left out. */
    static int digitsIn(String figures) {
        int digits = 0;
        boolean begun = false;
        for (int at = 0; at < figures.length(); at++) {
            char figure = figures.charAt(at);
            boolean digit = figure >= '0' && figure <= '9';
            begun |= digit && figure != '0' || figure == '.' || figure == ',';
            if (digit && begun) {
                digits++;
            }
        }
        return digits;
    }

    /** The exact value of a plain decimal such as {@code 12.50} or {@code .5}. */
    static BigFraction ofDecimal(String plain) {
        BigDecimal value = new BigDecimal(plain);
        return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    private static String printMixed(BigFraction number) {
        BigInteger[] parts = number.getNumerator().abs().divideAndRemainder(number.getDenominator());
        String fraction = parts[1] + "/" + number.getDenominator();
        String size;
        if (parts[1].signum() == 0) {
            size = parts[0].toString();
        } else {
            size = parts[0].signum() == 0 ? fraction : parts[0] + " " + fraction;
        }
        return number.signum() < 0 ? "-" + size : size;
    }
}
