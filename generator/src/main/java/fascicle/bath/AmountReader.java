package fascicle.bath;

import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.LeadingNumber;
import fascicle.measure.Numbers;
import fascicle.measure.Quantity;
import fascicle.measure.Unit;
import fascicle.measure.UnreadableQuantity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads one amount from one text, and says in plain words why it cannot. */
final class AmountReader {
    private static final String AN_AMOUNT = "an amount, such as 45 g, 60 mL or 1.5 % owf";
    private static final Set<String> ON_NEEDLES =
            Set.of("owf", "wof", "on weight of fibre", "on weight of fiber", "on weight of needles");
    private static final Set<String> STOCK = Set.of("stock", "stock solution");
    private static final Set<String> PACKS = Set.of("pack", "packs", "packet", "packets");

    /** What makers count that has no size; any other word after a number is a unit that is not known. */
    private static final Set<String> COUNTED = Set.of("handful", "pinch", "dash", "splash", "scoop", "sprig", "leaf",
            "leave", "piece", "bunch", "bunche", "knob", "glug", "capful", "cap", "jar", "bottle", "bucket", "bag",
            "basket", "stick", "slice", "skin", "hull", "husk", "cone", "nut", "gall", "root", "flower", "head",
            "blossom", "bulb", "ladle", "mug", "glas", "glasse", "squirt", "sachet", "tablet", "bundle", "grain",
            "drip", "twig", "chip", "strip", "heap", "heaped", "heaping", "level", "rounded", "scant", "large", "small",
            "big", "good", "generous", "onion", "stem", "stalk", "rhizome", "berry", "berrie", "fistful", "double");

    private static final Pattern ABOUT = Pattern.compile("(?i)(about(?![a-z])|~)[\\s\\p{Z}]*+(?=.)");
    private static final Pattern OF = Pattern.compile("(?i)[\\s\\p{Z}]of[\\s\\p{Z}]");
    private static final Pattern PER = Pattern.compile("(?i)/| per ");
    private static final Pattern NOT_A_WORD = Pattern.compile("[ ,;()0-9]++");

    private final String text;
    private final Kitchen kitchen;

    AmountReader(String text, Kitchen kitchen) {
        this.text = text.strip();
        this.kitchen = kitchen;
    }

    Amount read() throws UnreadableQuantity {
        if (!Numbers.holdsNumber(text) && text.codePoints().anyMatch(Character::isLetter)) {
            return asWritten();
        }
        LeadingNumber leading = LeadingNumber.read(text, AN_AMOUNT);
        BigFraction number = leading.number();
        boolean about = leading.about();
        String rest = leading.rest();
        if (number.signum() < 0) {
            throw unreadable("is below zero", "write " + AN_AMOUNT);
        }
        if (rest.isEmpty()) {
            throw unreadable("has no unit", "write g, mL, tsp, % owf, g/L or another unit after the number");
        }
        if (rest.startsWith("%")) {
            return new Amount.OnNeedles(onNeedles(number, rest.substring(1)), about);
        }
        if (rest.contains("%")) {
            return ofStock();
        }
        if (PER.matcher(rest).find()) {
            return new Amount.PerLitre(perLitre(number, rest), about);
        }
        if (PACKS.contains(rest.toLowerCase(Locale.ROOT))) {
            return new Amount.Packs(number, about);
        }
        Optional<Dimension> dimension = dimensionOf(rest);
        if (dimension.isPresent()) {
            return dimension.get() == Dimension.MASS
                    ? new Amount.Weighed(Quantity.read(text, Dimension.MASS, kitchen))
                    : new Amount.Measured(Quantity.read(text, Dimension.VOLUME, kitchen));
        }
        return things(rest);
    }

    private BigFraction onNeedles(BigFraction percent, String after) throws UnreadableQuantity {
        String basis = after.toLowerCase(Locale.ROOT).replace(".", "").replace(" the ", " ").replace(" dry ", " ");
        if (!ON_NEEDLES.contains(basis.strip())) {
            throw unreadable("does not say per cent of what",
                    "write % owf if it is on the weight of the dry needles, or 40 mL of 1 % stock for a solution");
        }
        return percent;
    }

    private Amount ofStock() throws UnreadableQuantity {
        String[] parts = OF.split(text, 2);
        if (parts.length < 2) {
            throw unreadable("is no amount that can be read", "write a stock solution as 40 mL of 1 % stock");
        }
        Quantity volume = Quantity.read(parts[0], Dimension.VOLUME, kitchen);
        LeadingNumber percent = LeadingNumber.read(parts[1], "a stock solution, such as 1 % stock");
        String solution = percent.rest().toLowerCase(Locale.ROOT);
        if (percent.about() || percent.number().signum() <= 0 || !solution.startsWith("%")
                || !STOCK.contains(solution.substring(1).strip())) {
            throw unreadable("is no amount that can be read", "write a stock solution as 40 mL of 1 % stock");
        }
        return new Amount.OfStock(volume, percent.number());
    }

    private BigFraction perLitre(BigFraction number, String rest) throws UnreadableQuantity {
        String[] parts = PER.split(rest, 2);
        Unit mass = Unit.named(parts[0], kitchen).orElse(null);
        Unit volume = Unit.named(parts[1], kitchen).orElse(null);
        if (mass == null || mass.dimension() != Dimension.MASS || volume != Unit.LITRE) {
            throw unreadable("is no amount that can be read", "write an amount in each litre of the bath as 12 g/L");
        }
        BigFraction grams = mass.toBase(number);
        if (!Numbers.readsBack(grams)) {
            throw unreadable("is finer than can be kept in g/L", "round it");
        }
        return grams;
    }

    /**
     * Whether a weight or a volume follows the number, as far as its first words tell. A unit of anything else counts
     * as a volume, so that the complaint says what it is.
     */
    private Optional<Dimension> dimensionOf(String rest) {
        List<String> words = words(rest);
        String first = words.isEmpty() ? "" : words.get(0);
        String firstTwo = words.size() < 2 ? first : first + " " + words.get(1);
        return Unit.named(firstTwo, kitchen)
                .or(() -> Unit.named(first, kitchen))
                .or(() -> Unit.misspelt(first, Dimension.MASS, kitchen))
                .or(() -> Unit.misspelt(first, Dimension.VOLUME, kitchen))
                .map(unit -> unit.dimension() == Dimension.MASS ? Dimension.MASS : Dimension.VOLUME);
    }

    /** A number of things that are no unit, {@code 3 handfuls}; never where a unit or a second number hides in it. */
    private Amount things(String rest) throws UnreadableQuantity {
        if (!Character.isLetter(rest.codePointAt(0))) {
            throw unreadable("has no unit that can be read", "write " + AN_AMOUNT);
        }
        if (Numbers.holdsNumber(rest)) {
            throw unreadable("holds more than one number", "write one amount");
        }
        for (String word : words(rest)) {
            boolean unit = Unit.named(word, kitchen)
                    .filter(known -> known.dimension() == Dimension.MASS || known.dimension() == Dimension.VOLUME)
                    .isPresent();
            if (unit || PACKS.contains(word.toLowerCase(Locale.ROOT))) {
                throw unreadable("has more around its unit than can be read",
                        "write the number and " + word + ", and nothing else");
            }
        }
        String first = words(rest).get(0).toLowerCase(Locale.ROOT);
        if (!COUNTED.contains(first) && !COUNTED.contains(first.replaceFirst("s$", ""))) {
            throw unreadable("has an unknown unit, “" + words(rest).get(0) + "”",
                    "write g, mL, tsp, % owf, g/L or another unit after the number; what has no size, such as a "
                            + "handful, is kept as written");
        }
        return asWritten();
    }

    private Amount asWritten() {
        var about = ABOUT.matcher(text);
        return about.lookingAt()
                ? new Amount.Unsized(text.substring(about.end()), true)
                : new Amount.Unsized(text, false);
    }

    private static List<String> words(String text) {
        return Arrays.stream(NOT_A_WORD.split(text)).filter(word -> !word.isEmpty()).toList();
    }

    private UnreadableQuantity unreadable(String problem, String mend) {
        return new UnreadableQuantity(text, problem, AN_AMOUNT, mend);
    }
}
