package fascicle.measure;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of measure, with its exact size in its dimension's base unit (g, mL, cm, °C, min).
 *
 * <p>Sources: NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B (pound, ounce, inch, foot, US gallon and its
 * parts); UK Weights and Measures Act 1985 (imperial gallon). The metric cup, tablespoon and teaspoon are the rounded
 * measures that kitchens are sold; a drop is {@code common practice, no source}.
 */
public enum Unit {
    GRAM(Dimension.MASS, "g", exactly("1"), "g, gm, gms, gram, grams, gramme, grammes"),
    KILOGRAM(Dimension.MASS, "kg", exactly("1000"),
            "kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes"),
    MILLIGRAM(Dimension.MASS, "mg", exactly("0.001"), "mg, mgs, milligram, milligrams, milligramme, milligrammes"),
    POUND(Dimension.MASS, "lb", exactly("453.59237"), "lb, lbs, pound, pounds"),
    OUNCE(Dimension.MASS, "oz", POUND.part(16), "oz, ozs, ounce, ounces"),

    MILLILITRE(Dimension.VOLUME, "mL", exactly("1"), "ml, mls, millilitre, millilitres, milliliter, milliliters"),
    LITRE(Dimension.VOLUME, "L", exactly("1000"), "l, ltr, ltrs, litre, litres, liter, liters"),
    METRIC_TEASPOON(Measure.TEASPOON, exactly("5"), Kitchen.METRIC, Kitchen.IMPERIAL),
    METRIC_TABLESPOON(Measure.TABLESPOON, exactly("15"), Kitchen.METRIC, Kitchen.IMPERIAL),
    METRIC_CUP(Measure.CUP, exactly("250"), Kitchen.METRIC),
    IMPERIAL_GALLON(Measure.GALLON, exactly("4546.09"), Kitchen.METRIC, Kitchen.IMPERIAL),
    IMPERIAL_QUART(Measure.QUART, IMPERIAL_GALLON.part(4), Kitchen.METRIC, Kitchen.IMPERIAL),
    IMPERIAL_PINT(Measure.PINT, IMPERIAL_GALLON.part(8), Kitchen.METRIC, Kitchen.IMPERIAL),
    IMPERIAL_CUP(Measure.CUP, IMPERIAL_PINT.part(2), Kitchen.IMPERIAL),
    IMPERIAL_FLUID_OUNCE(Measure.FLUID_OUNCE, IMPERIAL_GALLON.part(160), Kitchen.METRIC, Kitchen.IMPERIAL),
    US_GALLON(Measure.GALLON, exactly("3785.411784"), Kitchen.US),
    US_QUART(Measure.QUART, US_GALLON.part(4), Kitchen.US),
    US_PINT(Measure.PINT, US_GALLON.part(8), Kitchen.US),
    US_CUP(Measure.CUP, US_PINT.part(2), Kitchen.US),
    US_FLUID_OUNCE(Measure.FLUID_OUNCE, US_GALLON.part(128), Kitchen.US),
    US_TABLESPOON(Measure.TABLESPOON, US_CUP.part(16), Kitchen.US),
    US_TEASPOON(Measure.TEASPOON, US_TABLESPOON.part(3), Kitchen.US),
    /** A twentieth of a millilitre, roughly: {@code common practice, no source}. Never exact. */
    DROP(Dimension.VOLUME, "drop", exactly("0.05"), "drop, drops"),

    MILLIMETRE(Dimension.LENGTH, "mm", exactly("0.1"), "mm, mms, millimetre, millimetres, millimeter, millimeters"),
    CENTIMETRE(Dimension.LENGTH, "cm", exactly("1"), "cm, cms, centimetre, centimetres, centimeter, centimeters"),
    METRE(Dimension.LENGTH, "m", exactly("100"), "m, metre, metres, meter, meters"),
    INCH(Dimension.LENGTH, "in", exactly("2.54"), "in, ins, inch, inches, \""),
    FOOT(Dimension.LENGTH, "ft", exactly("30.48"), "ft, foot, feet"),

    CELSIUS(Dimension.TEMPERATURE, "°C", exactly("1"), temperatureNames("c", "celsius") + ", centigrade"),
    FAHRENHEIT(Dimension.TEMPERATURE, "°F", exactly("5").divide(9), temperatureNames("f", "fahrenheit")),

    SECOND(Dimension.TIME, "s", exactly("1").divide(60), "s, sec, secs, second, seconds"),
    MINUTE(Dimension.TIME, "min", exactly("1"), "min, mins, minute, minutes"),
    HOUR(Dimension.TIME, "h", exactly("60"), "h, hr, hrs, hour, hours"),
    DAY(Dimension.TIME, "day", exactly("1440"), "d, day, days"),
    WEEK(Dimension.TIME, "week", exactly("10080"), "wk, wks, week, weeks");

    /** The kitchen measures, whose size depends on the kitchen, with their symbols and names. */
    private enum Measure {
        TEASPOON("tsp", "tsp, tsps, teaspoon, teaspoons"),
        TABLESPOON("tbsp", "tbsp, tbsps, tbs, tablespoon, tablespoons"),
        FLUID_OUNCE("fl oz", "fl oz, floz, fl ozs, fl ounce, fl ounces, fluid oz, fluid ounce, fluid ounces"),
        CUP("cup", "cup, cups"),
        PINT("pint", "pt, pts, pint, pints"),
        QUART("quart", "qt, qts, quart, quarts"),
        GALLON("gallon", "gal, gals, gallon, gallons");

        final String symbol;
        final String names;

        Measure(String symbol, String names) {
            this.symbol = symbol;
            this.names = names;
        }
    }

    private static final Set<String> SPELLED_OUT =
            Set.of("cup", "pint", "quart", "gallon", "drop", "day", "week");
    private static final Set<Unit> COUNTED = EnumSet.of(POUND, OUNCE, INCH, FOOT, DROP);
    private static final BigFraction FREEZING_POINT_IN_FAHRENHEIT = BigFraction.of(32);

    private final Dimension dimension;
    private final String symbol;
    private final BigFraction size;
    private final Set<Kitchen> kitchens;
    private final List<String> names;

    Unit(Dimension dimension, String symbol, BigFraction size, String names) {
        this(dimension, symbol, size, names, EnumSet.allOf(Kitchen.class));
    }

    Unit(Measure measure, BigFraction size, Kitchen first, Kitchen... others) {
        this(Dimension.VOLUME, measure.symbol, size, measure.names, EnumSet.of(first, others));
    }

    Unit(Dimension dimension, String symbol, BigFraction size, String names, Set<Kitchen> kitchens) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.size = size;
        this.kitchens = kitchens;
        this.names = List.of(names.split(", "));
    }

    /**
     * The unit that a maker with this kitchen means by a name, such as {@code "Tbsp."} or {@code "fluid ounces"}, in
     * any letter case; empty if no unit has it. {@code C} and {@code F} are temperatures; a bare {@code T} is nothing.
     */
    public static Optional<Unit> named(String name, Kitchen kitchen) {
        return UnitNames.find(name, kitchen);
    }

    /** A unit of this dimension that a word names but for one letter; empty if there is none. */
    public static Optional<Unit> misspelt(String word, Dimension dimension, Kitchen kitchen) {
        return of(dimension, kitchen).stream().filter(unit -> UnitNames.slips(word, unit) == 1).findFirst();
    }

    /** The units of a dimension that a maker with this kitchen can write. */
    public static List<Unit> of(Dimension dimension, Kitchen kitchen) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension && unit.isIn(kitchen))
                .toList();
    }

    /** What this unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** How the unit is written after one or less of it: {@code "g"}, {@code "cup"}, {@code "°C"}. */
    public String symbol() {
        return symbol;
    }

    /** How the unit is written after this many of it: {@code "cups"} after two, {@code "g"} after any number. */
    public String symbol(BigFraction number) {
        return SPELLED_OUT.contains(symbol) && number.compareTo(BigFraction.ONE) > 0 ? symbol + "s" : symbol;
    }

    /** The size of one of this unit, or of one degree, in the dimension's base unit. */
    public BigFraction size() {
        return size;
    }

    /** Whether the size is a definition; that of a drop is not. */
    public boolean exact() {
        return this != DROP;
    }

    /** Whether a maker with this kitchen can mean this unit. */
    public boolean isIn(Kitchen kitchen) {
        return kitchens.contains(kitchen);
    }

    /** So many of this unit in the dimension's base unit; for Fahrenheit (F − 32) · 5/9 (NIST SP 811, B.8). */
    public BigFraction toBase(BigFraction number) {
        return this == FAHRENHEIT
                ? number.subtract(FREEZING_POINT_IN_FAHRENHEIT).multiply(size)
                : number.multiply(size);
    }

    /** The reverse of {@link #toBase}: how many of this unit a value in the base unit comes to. */
    public BigFraction fromBase(BigFraction value) {
        BigFraction number = value.divide(size);
        return this == FAHRENHEIT ? number.add(FREEZING_POINT_IN_FAHRENHEIT) : number;
    }

    /**
     * Whether parts of this unit are spoken of as halves and quarters (cups, spoons, inches, feet) and not as decimals.
     */
    boolean countedInFractions() {
        return kitchens.size() < Kitchen.values().length || COUNTED.contains(this);
    }

    /** All names of this unit, in lower case and without full stops. */
    List<String> names() {
        return names;
    }

    private BigFraction part(int parts) {
        return size.divide(parts);
    }

    private static BigFraction exactly(String decimal) {
        return Numbers.ofDecimal(decimal);
    }

    private static String temperatureNames(String letter, String scale) {
        return String.join(", ", letter, scale, "°" + letter, "° " + letter, "°" + scale, "° " + scale,
                "deg" + letter, "deg " + letter, "deg " + scale, "degree " + letter, "degree " + scale,
                "degrees " + letter, "degrees " + scale);
    }
}
