package fascicle.book.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FiguresTest {

    private final Figures figures = new Figures(Words.shipped());

    @Test
    void dataHasSixDecimalsHalfToEven() {
        assertEquals("0.230061", Figures.datum(0.675 / 2.934).toPlainString());
        assertEquals("100000000", Figures.datum(1e8).toPlainString());
        assertEquals("0", Figures.datum(-1e-9).toPlainString());
        assertEquals("1.5", Figures.datum(1.5).toPlainString());
    }

    @Test
    void thePageRoundsTheDatumAndNotTheNumberBehindIt() {
        // 0.04999999 is 0.05 in the data; a page that shows one decimal must say 0.1, as anyone who rounds the datum does.
        assertEquals("0.1", Figures.fixed(0.04999999, 1));
    }

    @Test
    void pageAndDataAgreeToTheLastDigitShown() {
        Random random = new Random(41);
        for (int i = 0; i < 10_000; i++) {
            double value = (random.nextDouble() - 0.3) * StrictMath.pow(10, random.nextInt(6) - 1);
            BigDecimal datum = new BigDecimal(Figures.datum(value).toPlainString());
            assertEquals(datum.setScale(1, RoundingMode.HALF_UP).toPlainString().replace('-', '\u2212'),
                    Figures.fixed(value, 1));
        }
    }

    @Test
    void amountsHaveAboutThreeFiguresAndNoFalseZeros() {
        assertEquals(Optional.of("45\u202fg"), figures.amount(OptionalDouble.of(45), "g", false));
        assertEquals("0.675\u202fg", figures.amount(0.675, "g", false));
        assertEquals("about 3.11\u202fg", figures.amount(3.1111, "g", true));
        assertEquals("2934\u202fmL", figures.amount(2934.2, "ml", false));
        assertEquals(Optional.empty(), figures.amount(OptionalDouble.empty(), "g", false));
    }

    @Test
    void aRoughFigureHasThreeDigitsHoweverLarge() {
        assertEquals("about 2460\u202fmL", figures.amount(2461.4, "ml", true));
        assertEquals("about 16000\u202fmL", figures.amount(16022.9, "ml", true));
        assertEquals("about 1020\u202fmL", figures.amount(1015, "ml", true));
        assertEquals("about 1000\u202fmL", figures.amount(999.9999999, "ml", true));
        assertEquals("about 997\u202fmL", figures.amount(996.6, "ml", true));
        assertEquals("about 1230\u202fg", figures.weighed(1234.56, OptionalDouble.of(0.1), true));
        assertEquals("1235\u202fg", figures.weighed(1234.56, OptionalDouble.of(0.1), false));
    }

    /** The factors of NIST SP 811, B.8: (F − 32) / 1.8, 2.54 cm to the inch, 30.48 cm to the foot. */
    @Test
    void whatWasWrittenInFahrenheitInchesOrFeetIsToldSo() throws UnreadableQuantity {
        assertEquals("190\u202f°F (88\u202f°C)", temperature("190 °F"));
        assertEquals("about 190.5\u202f°F (88\u202f°C)", temperature("about 190.5 F"));
        assertEquals("\u22124\u202f°F (\u221220\u202f°C)", temperature("-4 °F"));
        assertEquals("88\u202f°C", temperature("88 °C"));
        assertEquals("3\u202fin (7.6\u202fcm)", length("3 in"));
        assertEquals("about 5 1/2\u202fin (14\u202fcm)", length("about 5 1/2 in"));
        assertEquals("1/4\u202fin (0.64\u202fcm)", length("1/4 in"));
        assertEquals("1 1/2\u202fft (45.7\u202fcm)", length("1.5 feet"));
        assertEquals("7\u202fcm", length("70 mm"));
    }

    private String temperature(String written) throws UnreadableQuantity {
        return figures.measured(Quantity.read(written, Dimension.TEMPERATURE, Kitchen.US));
    }

    private String length(String written) throws UnreadableQuantity {
        return figures.measured(Quantity.read(written, Dimension.LENGTH, Kitchen.US));
    }

    @Test
    void minusIsATrueMinus() {
        assertEquals("\u22121.5", Figures.fixed(-1.5, 1));
        assertEquals("0.0", Figures.fixed(-0.04, 1));
    }

    /** The smallest coins are those of ISO 4217: a hundredth, none, a thousandth. */
    @Test
    void moneyIsToldToTheSmallestCoinOfItsCurrency() {
        assertEquals("EUR\u202f1.24", figures.money(1.235, Optional.of("EUR"), false));
        assertEquals("JPY\u202f124", figures.money(123.5, Optional.of("JPY"), false));
        assertEquals("ISK\u202f124", figures.money(123.5, Optional.of("ISK"), false));
        assertEquals("HUF\u202f123.50", figures.money(123.5, Optional.of("HUF"), false));
        assertEquals("KWD\u202f1.235", figures.money(1.235, Optional.of("KWD"), false));
        assertEquals("about EUR\u202f1.20", figures.money(1.2, Optional.of("EUR"), true));
        assertEquals("1.20 in the notebook’s currency", figures.money(1.2, Optional.empty(), false));
        assertEquals("EUR\u202f0.00", figures.money(0, Optional.of("EUR"), false));
        assertEquals("less than EUR\u202f0.01", figures.money(0.004, Optional.of("EUR"), false));
    }

    @Test
    void datesUseTheBooksOwnMonths() {
        assertEquals("9 May 2026", figures.date(LocalDate.parse("2026-05-09")));
    }

    @Test
    void fromADayOnLengthsAreInDays() {
        assertEquals("1:40", figures.lasting(100));
        assertEquals("23:59", figures.lasting(1439));
        assertEquals("1 day", figures.lasting(1440));
        assertEquals("1 day", figures.lasting(1439.6), "and never “24:00”");
        assertEquals("2 days", figures.lasting(2880));
        assertEquals("1 day and 2:30", figures.lasting(1590));
    }

    @Test
    void noFigureIsEverNotANumber() {
        assertThrows(NumberFormatException.class, () -> Figures.datum(Double.NaN));
    }
}
