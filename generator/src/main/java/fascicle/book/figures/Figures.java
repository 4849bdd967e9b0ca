package fascicle.book.figures;

import fascicle.bath.Magnitude;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.measure.Dimension;
import fascicle.measure.Numbers;
import fascicle.measure.Quantity;
import fascicle.measure.Unit;
import fascicle.workings.Difference;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The one place where numbers, dates and units get their form.
 *
 * <p>Data carries a figure rounded to six decimals, half to even. A page rounds that datum, half up, to the digits it
 * shows; so page and data agree to the last digit shown.
 */
public final class Figures {

    private static final int DECIMALS_OF_DATA = 6;
    private static final int DIGITS_OF_MONEY = 2;

    /**
     * Currencies without a smaller coin: no minor unit in ISO 4217:2015, table A.1, from memory. A list of our own,
     * since the JDK's changes between versions.
     */
    private static final Set<String> WITHOUT_COINS = Set.of("BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW",
            "PYG", "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF");

    /** Currencies whose smallest coin is a thousandth: the same table, from memory. All others have hundredths. */
    private static final Set<String> IN_THOUSANDTHS = Set.of("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND");

    private static final long MINUTES_IN_AN_HOUR = 60;
    private static final long MINUTES_IN_A_DAY = 24 * MINUTES_IN_AN_HOUR;
    private static final char NARROW_NO_BREAK_SPACE = '\u202f';
    private static final char MINUS = '\u2212';

    private final Words words;

    /**
     * Figures with units and months in the book's words.
     *
     * @param words the book's words
     */
    public Figures(Words words) {
        this.words = words;
    }

    /**
     * A figure as data carries it.
     *
     * @param value any finite number
     * @return rounded to six decimals, half to even, without trailing zeros and without an exponent
     */
    public static BigDecimal datum(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(DECIMALS_OF_DATA, RoundingMode.HALF_EVEN);
        BigDecimal stripped = rounded.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /**
     * A number with so many decimals.
     *
     * @param value the value
     * @param decimals how many are shown
     * @return the number, with a true minus sign
     */
    public static String fixed(double value, int decimals) {
        return signed(datum(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    /**
     * A number with at most so many decimals, so that a figure looks no surer than it is.
     *
     * @param value the value
     * @param decimals the most that are shown
     * @return the number without trailing zeros
     */
    public static String atMost(double value, int decimals) {
        return signed(datum(datum(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue()));
    }

    /**
     * A length in a drawing, which no one reads.
     *
     * @param value the value
     * @return with at most three decimals, as SVG writes numbers
     */
    public static String plain(double value) {
        return datum(datum(value).setScale(3, RoundingMode.HALF_UP).doubleValue()).toPlainString();
    }

    private static String signed(BigDecimal number) {
        return number.toPlainString().replace('-', MINUS);
    }

    /**
     * A place or a length in a drawing, as SVG reads it: to a tenth, without a needless nought, since pages hold
     * thousands of these.
     *
     * @param length in the drawing's units
     * @return the number, with a hyphen for a minus sign
     */
    public static String place(double length) {
        long tenths = StrictMath.round(length * 10);
        String whole = String.valueOf(tenths / 10);
        long rest = StrictMath.abs(tenths % 10);
        return rest == 0 ? whole : (tenths < 0 && tenths > -10 ? "-" : "") + whole + "." + rest;
    }

    /**
     * An amount, to about three figures, with its unit.
     *
     * @param amount how much; nothing where unknown
     * @param unit the unit's key, such as {@code g}
     * @param about whether it is rough
     * @return such as {@code about 45 g}
     */
    public Optional<String> amount(OptionalDouble amount, String unit, boolean about) {
        return amount.isEmpty() ? Optional.empty() : Optional.of(amount(amount.getAsDouble(), unit, about));
    }

    /**
     * An amount, to about three figures, with its unit.
     *
     * @param amount how much, if it is known, and whether it is rough
     * @param unit the unit's key, such as {@code g}
     * @return such as {@code about 45 g}
     */
    public Optional<String> amount(Magnitude amount, String unit) {
        return amount(amount.value(), unit, amount.about());
    }

    /**
     * A known amount, to about three figures, with its unit.
     *
     * @param amount how much
     * @param unit the unit's key, such as {@code g}
     * @param about whether it is rough
     * @return such as {@code about 45 g}
     */
    public String amount(double amount, String unit, boolean about) {
        double shown = about ? rough(amount) : amount;
        return withUnit(atMost(shown, decimals(StrictMath.abs(shown))), unit, about);
    }

    /**
     * A temperature or a length as the maker's own thermometer and rule tell it: in °F, inches or feet where it was
     * written so, with °C or cm beside it, and else in °C or cm alone.
     *
     * @param quantity a temperature or a length
     * @return such as {@code 190 °F (88 °C)}, {@code 3 in (7.6 cm)} or {@code 88 °C}
     */
    public String measured(Quantity quantity) {
        if (quantity.unit().dimension() == Dimension.TEMPERATURE) {
            return temperature(quantity.value(), quantity.unit(), quantity.about());
        }
        if (quantity.unit() != Unit.INCH && quantity.unit() != Unit.FOOT) {
            return amount(quantity.value(), "cm", quantity.about());
        }
        String own = withUnit(Numbers.printFraction(quantity.number()),
                quantity.unit() == Unit.INCH ? "inch" : "foot", quantity.about());
        String metric = withUnit(atMost(quantity.value(), quantity.value() >= 1 ? 1 : 2), "cm", false);
        return words.say("figure.beside", own, metric);
    }

    /**
     * A temperature for a thermometer.
     *
     * @param celsius in °C
     * @param thermometer the unit that the thermometer shows
     * @param about whether it is rough
     * @return in °F with whole °C beside it for a thermometer in °F, else in °C alone
     */
    public String temperature(double celsius, Unit thermometer, boolean about) {
        if (thermometer != Unit.FAHRENHEIT) {
            return amount(celsius, "celsius", about);
        }
        // NIST SP 811, B.8
        String fahrenheit = withUnit(atMost(celsius * 9 / 5 + 32, 1), "fahrenheit", about);
        return words.say("figure.beside", fahrenheit, withUnit(atMost(celsius, 0), "celsius", false));
    }

    /** What is rough is told in three figures, half up, from a thousand on: nobody pours about 2461 mL. */
    private static double rough(double amount) {
        BigDecimal datum = datum(amount);
        return datum.abs().compareTo(BigDecimal.valueOf(1000)) < 0 ? amount
                : datum.round(new MathContext(3, RoundingMode.HALF_UP)).doubleValue();
    }

    private String withUnit(String figure, String unit, boolean about) {
        String text = figure + NARROW_NO_BREAK_SPACE + words.say("unit." + unit);
        return about ? words.say("about", text) : text;
    }

    /**
     * A length of time in minutes: whole ones from 10 on, since nobody keeps a pot to the tenth of one.
     *
     * @param minutes how long; nothing where unknown
     * @param about whether it is rough
     * @return such as {@code about 95 min}
     */
    public Optional<String> minutes(OptionalDouble minutes, boolean about) {
        return minutes.isEmpty() || minutes.getAsDouble() < 10 ? amount(minutes, "min", about)
                : amount(OptionalDouble.of(datum(minutes.getAsDouble()).setScale(0, RoundingMode.HALF_UP)
                        .doubleValue()),
                        "min", about);
    }

    /**
     * A sum of money, to the currency's own smallest coin.
     *
     * @param sum how much
     * @param currency its ISO 4217 code; nothing where the notebook gives none
     * @param about whether it is rough
     * @return such as {@code EUR 1.23}; of a sum too small for a coin that it is less than one
     */
    public String money(double sum, Optional<String> currency, boolean about) {
        int digits = currency.map(Figures::digits).orElse(DIGITS_OF_MONEY);
        BigDecimal coin = BigDecimal.ONE.movePointLeft(digits);
        boolean tiny = sum > 0 && datum(sum).setScale(digits, RoundingMode.HALF_UP).signum() == 0;
        String number = tiny ? signed(coin) : fixed(sum, digits);
        String text = currency.map(code -> words.say("figure.money", code, number))
                .orElseGet(() -> words.say("figure.money-of-the-notebook", number));
        return tiny ? words.say("figure.less", text) : about ? words.say("about", text) : text;
    }

    private static int digits(String currency) {
        return WITHOUT_COINS.contains(currency) ? 0 : IN_THOUSANDTHS.contains(currency) ? 3 : DIGITS_OF_MONEY;
    }

    /**
     * An estimated amount, to two figures, with its unit.
     *
     * @param amount how much
     * @param unit the unit's key, such as {@code g}
     * @return such as {@code 0.43 g}, without a word that it is rough
     */
    public String estimate(double amount, String unit) {
        double size = StrictMath.abs(amount);
        return atMost(amount, size >= 10 ? 0 : size >= 1 ? 1 : size >= 0.1 ? 2 : 3) + NARROW_NO_BREAK_SPACE
                + words.say("unit." + unit);
    }

    /**
     * A length to a tenth of a centimetre, as a rule in the pot tells it.
     *
     * @param centimetres how long
     * @return such as {@code 7.4 cm}
     */
    public String tenths(double centimetres) {
        return withUnit(atMost(centimetres, 1), "cm", false);
    }

    /** Three figures down to hundredths; a gram in a hundred litres is still told from nothing. */
    private static int decimals(double size) {
        return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : size >= 0.01 ? 4 : 5;
    }

    /**
     * A weight as finely as the balance tells it, and no finer than to about three figures.
     *
     * @param grams how much
     * @param step the balance's smallest step, g; nothing where it is not to be rounded to that
     * @param about whether it is rough
     * @return such as {@code 1.8 g}
     */
    public String weighed(double grams, OptionalDouble step, boolean about) {
        if (step.isEmpty() || datum(step.getAsDouble()).signum() <= 0) {
            return amount(grams, "g", about);
        }
        BigDecimal finest = datum(step.getAsDouble());
        BigDecimal shown = BigDecimal.ONE.movePointLeft(decimals(StrictMath.abs(grams)));
        BigDecimal unit = finest.max(shown);
        BigDecimal rounded = datum(about ? rough(grams) : grams).divide(unit, 0, RoundingMode.HALF_UP).multiply(unit);
        return withUnit(signed(datum(rounded.doubleValue())), "g", about);
    }

    /**
     * A time after the start.
     *
     * @param minutes from 0
     * @return hours and minutes, such as {@code 1:40}
     */
    public static String hours(double minutes) {
        long whole = wholeMinutes(minutes);
        long rest = whole % MINUTES_IN_AN_HOUR;
        return whole / MINUTES_IN_AN_HOUR + (rest < 10 ? ":0" : ":") + rest;
    }

    /**
     * How long something takes, or how long after the start: from a day on in days.
     *
     * @param minutes from 0
     * @return such as {@code 1:40}, {@code 2 days} or {@code 1 day and 2:00}
     */
    public String lasting(double minutes) {
        long whole = wholeMinutes(minutes);
        if (whole < MINUTES_IN_A_DAY) {
            return hours(whole);
        }
        String days = words.say("plot.days", (int) (whole / MINUTES_IN_A_DAY));
        long rest = whole % MINUTES_IN_A_DAY;
        return rest == 0 ? days : words.say("figure.days-and", days, hours(rest));
    }

    private static long wholeMinutes(double minutes) {
        return datum(minutes).setScale(0, RoundingMode.HALF_UP).longValue();
    }

    /**
     * A colour difference.
     *
     * @param difference CIEDE2000
     * @return with one decimal
     */
    public String difference(double difference) {
        return words.say("figure.difference", fixed(difference, 1));
    }

    /**
     * A colour difference with its uncertainty.
     *
     * @param difference CIEDE2000
     * @return with one decimal, and how far it may be off; that of colours that were chosen, not measured, is exact
     */
    public String difference(Difference difference) {
        return difference.uncertainty() == 0 ? difference(difference.de00())
                : words.say("figure.difference-about", fixed(difference.de00(), 1),
                        atMost(difference.uncertainty(), 1));
    }

    /**
     * A colour difference with its uncertainty, and in words where the readings cannot tell the colours apart.
     *
     * @param difference CIEDE2000
     * @return the figure, or that the colours are the same as far as these readings tell
     */
    public String told(Difference difference) {
        return difference.tells() ? difference(difference)
                : words.say("difference.same", difference(difference));
    }

    /**
     * A colour in figures.
     *
     * @param colour under D50
     * @return L*, a* and b* with one decimal
     */
    public String lab(Lab colour) {
        return words.say("figure.lab", fixed(colour.lightness(), 1), fixed(colour.a(), 1), fixed(colour.b(), 1));
    }

    /**
     * A date.
     *
     * @param date the day
     * @return such as {@code 9 May 2026}
     */
    public String date(LocalDate date) {
        return words.say("figure.date", date.getDayOfMonth(), words.say("month." + date.getMonthValue()),
                date.getYear());
    }
}
