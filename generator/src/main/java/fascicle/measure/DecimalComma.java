package fascicle.measure;

import java.util.regex.Pattern;

/**
 * Tells a decimal comma from a comma between thousands. It is read as a decimal comma only where it cannot be the
 * other: {@code 1,5}, {@code 0,125}, {@code 12,3456}, {@code 1234,567}. Nothing is guessed.
 */
final class DecimalComma {
    private static final Pattern ONE_SEPARATOR = Pattern.compile("\\d*+[.,]\\d++");
    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2}+,\\d{3}+");

    /** Thousands by one sign and a fraction by the other: {@code 1.234,5}. */
    private static final Pattern GROUPS_AND_DECIMALS =
            Pattern.compile("\\d{1,3}+(?:(?:\\.\\d{3})++,|(?:,\\d{3})++\\.)\\d++");

    /** Several groups of thousands, and so no fraction: {@code 1,234,567}. */
    private static final Pattern GROUPS = Pattern.compile("\\d{1,3}+(?:(?:\\.\\d{3}){2,}+|(?:,\\d{3}){2,}+)");

    private DecimalComma() {}

    /** Whether a run of digits, points and commas can be read in more than one way. */
    static boolean isAmbiguous(String figures) {
        return !ONE_SEPARATOR.matcher(figures).matches() || THOUSANDS.matcher(figures).matches();
    }

    /** What is wrong with such a run, as the rest of a sentence that begins with it. */
    static String problem(String figures) {
        return GROUPS_AND_DECIMALS.matcher(figures).matches() || GROUPS.matcher(figures).matches()
                ? "has thousands set apart"
                : "has a comma or a point that can be read in two ways";
    }

    /** The ways of writing an ambiguous run that leave no doubt, without what nobody can have meant. */
    static String mend(String figures) {
        int last = Math.max(figures.lastIndexOf('.'), figures.lastIndexOf(','));
        String asThousands = figures.replaceAll("[.,]", "");
        String asDecimal = figures.substring(0, last).replaceAll("[.,]", "") + "." + figures.substring(last + 1);
        if (GROUPS_AND_DECIMALS.matcher(figures).matches()) {
            return "write " + asDecimal;
        }
        return "write " + asThousands + (GROUPS.matcher(figures).matches() ? "" : " or " + asDecimal);
    }
}
