package fascicle.notebook.read;

import fascicle.bath.Amount;
import fascicle.colour.Rgb;
import fascicle.colour.Grade;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Numbers;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Span;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes something of a plain value.
 *
 * @param <T> what it makes
 */
interface Scalar<T> {

    /** A text as it is. */
    Scalar<String> TEXT = (text, kitchen) -> text;

    /** A day of the calendar, as in ISO 8601. */
    Scalar<LocalDate> DATE = (text, kitchen) -> {
        try {
            return LocalDate.parse(text, Kept.STRICT);
        } catch (DateTimeException impossible) {
            throw new Unreadable("“" + shortened(text) + "” is no day of the calendar; write year, month and day as "
                    + "in 2026-05-09");
        }
    };

    /** What a recipe asks for. */
    Scalar<Amount> AMOUNT = (text, kitchen) -> {
        try {
            return Amount.read(text, kitchen);
        } catch (UnreadableQuantity unreadable) {
            throw Unreadable.because(unreadable);
        }
    };

    /** How long something takes. */
    Scalar<Span> SPAN = (text, kitchen) -> text.equalsIgnoreCase("overnight") ? new Span.Overnight()
            : new Span.Timed(quantity(Dimension.TIME).read(text, kitchen));

    /** What a heating step heats to. */
    Scalar<HeatStep.To> HEAT_TO = (text, kitchen) -> {
        for (HeatStep.Look look : HeatStep.Look.values()) {
            if (look.word().equals(text.toLowerCase(Locale.ROOT))) {
                return look;
            }
        }
        try {
            return new HeatStep.Degrees(quantity(Dimension.TEMPERATURE).read(text, kitchen));
        } catch (Unreadable unreadable) {
            throw new Unreadable(unreadable.inWords() + " (or say steaming, below-simmer, simmer or boil)");
        }
    };

    /** A colour of the screen. */
    Scalar<Rgb> HEX = (text, kitchen) -> Rgb.read(text).orElseThrow(() -> new Unreadable("“" + shortened(text)
            + "” is no colour; write six hexadecimal digits in quotes, as in \"#7f4632\""));

    /** True or false. */
    Scalar<Boolean> TRUTH = (text, kitchen) -> switch (text.toLowerCase(Locale.ROOT)) {
        case "true" -> true;
        case "false" -> false;
        default -> throw new Unreadable("“" + shortened(text) + "” is neither true nor false; write one of the two");
    };

    /** A share in percent, with or without its sign, 0 to 100. */
    Scalar<Double> PERCENT = (text, kitchen) -> within(text,
            text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text, 0, 100);

    /** A liquor ratio: {@code 60} or {@code 1:60}. */
    Scalar<Double> RATIO = (text, kitchen) -> within(text, text.replaceFirst("^1\\s*:\\s*", ""), 0.01, 100_000);

    /** A density. */
    Scalar<Double> DENSITY = FixedUnit.DENSITY;

    /** An alkalinity, mg/L as calcium carbonate. */
    Scalar<Double> ALKALINITY = FixedUnit.ALKALINITY;

    /** A height above the sea in metres; below zero for a place that lies lower. */
    Scalar<Double> HEIGHT = (text, kitchen) -> {
        String size = text.replaceFirst("^(about\\s*|~\\s*)?[-−]\\s*", "");
        double metres = quantity(Dimension.LENGTH).read(size, kitchen).value() / 100;
        return size.equals(text) ? metres : 0 - metres;
    };

    /** A grade of the grey scale: {@code 1} to {@code 5}, halves as {@code 4-5}. */
    Scalar<Grade> GRADE = (text, kitchen) -> Grade.read(text.replaceAll("\\s*[-–/]\\s*", "-")).orElseThrow(() ->
            new Unreadable("“" + shortened(text) + "” is no grade; grades run from 1 to 5, with halves as in 4-5"));

    /**
     * Reads a value.
     *
     * @param text the value without white space around it
     * @param kitchen what cups and spoons hold
     * @return what it means
     * @throws Unreadable if it means nothing
     */
    T read(String text, Kitchen kitchen) throws Unreadable;

    /** A quantity of a dimension. */
    static Scalar<Quantity> quantity(Dimension dimension) {
        return (text, kitchen) -> {
            try {
                return Quantity.read(text, dimension, kitchen);
            } catch (UnreadableQuantity unreadable) {
                throw Unreadable.because(unreadable);
            }
        };
    }

    /**
     * A quantity of which there must be some.
     *
     * @param scalar what reads it
     * @param otherwise what to say of nothing, after the value as written
     */
    static Scalar<Quantity> some(Scalar<Quantity> scalar, String otherwise) {
        return (text, kitchen) -> {
            Quantity quantity = scalar.read(text, kitchen);
            if (quantity.value() <= 0) {
                throw new Unreadable("“" + shortened(text) + "” " + otherwise);
            }
            return quantity;
        };
    }

    /** A bare number within bounds. */
    static Scalar<Double> number(double least, double most) {
        return (text, kitchen) -> within(text, text, least, most);
    }

    /** A whole number within bounds. */
    static Scalar<Integer> whole(int least, int most) {
        return (text, kitchen) -> {
            double number = number(least, most).read(text, kitchen);
            if (number != StrictMath.rint(number)) {
                throw new Unreadable("“" + shortened(text) + "” is no whole number; expected is one from " + least
                        + " to " + most);
            }
            return (int) number;
        };
    }

    /** One of a few words, spelled as an enum's constants with hyphens. */
    static <E extends Enum<E>> Scalar<E> word(Class<E> words) {
        List<String> known = Kept.SPELLED.get(words);
        return (text, kitchen) -> {
            int index = known.indexOf(text.toLowerCase(Locale.ROOT));
            if (index < 0) {
                Optional<String> near = Suggestion.of(text, known);
                throw new Unreadable("“" + shortened(text) + "” is not a word for it; "
                        + near.map(word -> "did you mean “" + word + "”? The").orElse("the") + " words are "
                        + String.join(", ", known));
            }
            return words.getEnumConstants()[index];
        };
    }

    /** A number within bounds that is part of what was written. */
    static double within(String written, String figure, double least, double most) throws Unreadable {
        double number;
        try {
            boolean negative = figure.startsWith("-") || figure.startsWith("−");
            double size = Numbers.read(negative ? figure.substring(1) : figure).doubleValue();
            number = negative ? 0 - size : size;
        } catch (UnreadableQuantity unreadable) {
            throw Unreadable.because(unreadable, written);
        }
        if (number < least || number > most) {
            throw new Unreadable("“" + shortened(written) + "” is out of range; expected is a number from "
                    + bound(least) + " to " + bound(most));
        }
        return number;
    }

    private static String bound(double bound) {
        return bound == StrictMath.rint(bound) ? String.valueOf((long) bound) : String.valueOf(bound);
    }

    /** A text as it is quoted. */
    static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= 60 ? text
                : text.substring(0, text.offsetByCodePoints(0, 57)) + "…";
    }

    /** Keeps what is made once out of the interface's own face. */
    final class Kept {
        private static final ClassValue<List<String>> SPELLED = new ClassValue<>() {
            @Override
            protected List<String> computeValue(Class<?> words) {
                return Arrays.stream(words.getEnumConstants()).map(word -> Fields.spelled((Enum<?>) word)).toList();
            }
        };

        private static final DateTimeFormatter STRICT =
                DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

        private Kept() {}
    }
}
