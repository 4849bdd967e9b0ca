package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/**
 * A figure as a reader meets it on a page.
 *
 * @param about whether it calls itself rough
 * @param number with exactly the digits that are shown
 * @param unit what stands behind the number; may be empty
 */
record ShownFigure(boolean about, BigDecimal number, String unit) {

    private static final Pattern SHOWN =
            Pattern.compile("(?<about>about )?(?<number>\u2212?[0-9]+(?:\\.[0-9]+)?)(?:[\u202f\u00a0 ](?<unit>.+))?");

    /** Half of the last digit of a figure of three digits, in the worst case: 0.5 of 100. */
    private static final BigDecimal COARSEST = new BigDecimal("0.005");

    /** Heat is told in whole minutes: half of one, whatever it is a share of. */
    private static final BigDecimal HALF_A_MINUTE = new BigDecimal("0.5");

    /** A thermometer in °F has °C beside it, as the data do. */
    private static final Pattern BESIDE_FAHRENHEIT = Pattern.compile("^(about )?[^(]*°F \\((.*)\\)$");

    /** What is rough is told in three digits from here on. */
    private static final BigDecimal THOUSAND = new BigDecimal(1000);

    private static final Pattern DIFFERENCE = Pattern.compile(".*?ΔE00[\\u202f\\u00a0 ](?<figure>[^ ,)]+).*");

    /** Reads the first colour difference in a text. */
    static ShownFigure ofDifference(String text) {
        Matcher shown = DIFFERENCE.matcher(text);
        assertTrue(shown.matches(), "no colour difference: " + text);
        return of(shown.group("figure"));
    }

    /** Reads a figure; anything else in the text is a fault of the page. */
    static ShownFigure of(String text) {
        Matcher shown = SHOWN.matcher(BESIDE_FAHRENHEIT.matcher(text).replaceFirst("$1$2"));
        assertTrue(shown.matches(), "no figure: " + text);
        String unit = shown.group("unit");
        return new ShownFigure(
                shown.group("about") != null,
                new BigDecimal(shown.group("number").replace('\u2212', '-')),
                unit == null ? "" : unit);
    }

    /** The datum, rounded half up to the digits shown, is what is shown. */
    void agreesWith(JsonNode datum, String where) {
        BigDecimal exact = datum.decimalValue();
        BigDecimal told = about && exact.abs().compareTo(THOUSAND) >= 0
                ? exact.round(new MathContext(3, RoundingMode.HALF_UP)) : exact;
        assertEquals(told.setScale(number.scale(), RoundingMode.HALF_UP), number, where);
    }

    /** No figure is shown so coarsely that a dyer would weigh out something else. */
    void isFineEnoughFor(JsonNode datum, String where) {
        BigDecimal off = number.subtract(datum.decimalValue()).abs();
        BigDecimal share = datum.decimalValue().abs().multiply(COARSEST);
        boolean tellsWholeMinutes = unit.equals("min") && number.compareTo(BigDecimal.TEN) >= 0;
        assertTrue(
                off.compareTo(tellsWholeMinutes ? share.max(HALF_A_MINUTE) : share) <= 0,
                where + ": " + number + " " + unit + " is too coarse for " + datum);
    }
}
