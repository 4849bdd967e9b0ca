package fascicle.measure;

import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads one quantity from one text, and says in plain words why it cannot. */
final class QuantityReader {
    private static final Set<String> JOINS_A_RANGE = Set.of("-", "–", "—", "to", "or", "...", "…", "±", "+-");

    private final Dimension wanted;
    private final Kitchen kitchen;
    private final Cursor cursor;

    QuantityReader(String text, Dimension wanted, Kitchen kitchen) throws UnreadableQuantity {
        this.wanted = wanted;
        this.kitchen = kitchen;
        this.cursor = new Cursor(text, wanted.phrase() + ", such as " + wanted.example());
    }

    Quantity read() throws UnreadableQuantity {
        boolean about = cursor.about();
        BigFraction number = number();
        Unit first = unit();
        Unit last = first;
        while (!cursor.isAtEnd()) {
            BigFraction more = number();
            Unit lesser = unit();
            if (wanted == Dimension.TEMPERATURE || lesser.size().compareTo(last.size()) >= 0) {
                throw cursor.unreadable("holds two quantities",
                        "write one, or the larger unit first: " + wanted.example());
            }
            number = number.add(more.multiply(lesser.size()).divide(first.size()));
            about = about || !lesser.exact();
            last = lesser;
        }
        if (last != first && !Numbers.readsBack(number)) {
            throw cursor.unreadable("is finer than can be kept in " + first.symbol(), "round it, or use one unit");
        }
        return new Quantity(number, first, about);
    }

    private BigFraction number() throws UnreadableQuantity {
        BigFraction number = cursor.number();
        if (number.signum() < 0 && wanted != Dimension.TEMPERATURE) {
            throw cursor.unreadable("is below zero", "write " + wanted.phrase() + ", such as " + wanted.example());
        }
        return number;
    }

    private Unit unit() throws UnreadableQuantity {
        String words = cursor.words();
        if (words.isEmpty()) {
            throw cursor.isAtEnd()
                    ? cursor.unreadable("has no unit", writeOneOf(Unit.of(wanted, kitchen)) + " after the number")
                    : cursor.unreadable("has a space inside a number, or two numbers",
                            "write one number without spaces");
        }
        if (!cursor.isAtEnd() && JOINS_A_RANGE.contains(words)) {
            throw cursor.unreadable("holds more than one figure",
                    "write one figure, with about before it if it is rough");
        }
        Unit unit = Unit.named(words, kitchen).orElse(null);
        if (unit == null) {
            throw unknown(words);
        }
        if (unit.dimension() != wanted) {
            throw cursor.unreadable("is " + unit.dimension().phrase() + ", not " + wanted.phrase(),
                    wanted == Dimension.VOLUME && unit == Unit.CELSIUS
                            ? "write cup if that is what C means"
                            : writeOneOf(Unit.of(wanted, kitchen)) + " after the number");
        }
        return unit;
    }

    private UnreadableQuantity unknown(String words) {
        if (words.equalsIgnoreCase("t") || words.equalsIgnoreCase("t.")) {
            return cursor.unreadable("may mean teaspoons or tablespoons", "write tsp or tbsp");
        }
        Unit first = Unit.named(words.split(" ")[0], kitchen).orElse(null);
        if (first != null && first.dimension() == wanted) {
            return cursor.unreadable("has more after its unit than can be read",
                    "write the number and " + first.symbol() + ", and nothing else");
        }
        String problem = "has an unknown unit, “" + words + "”";
        List<Unit> nearest = Character.isLetter(words.charAt(0)) || words.startsWith("°")
                ? UnitNames.nearest(words, wanted, kitchen)
                : List.of();
        return nearest.isEmpty()
                ? cursor.unreadable(problem, writeOneOf(Unit.of(wanted, kitchen)) + " after the number")
                : cursor.unreadable(problem, writeOneOf(nearest) + " if that is what is meant");
    }

    private static String writeOneOf(List<Unit> units) {
        List<String> symbols = units.stream().map(Unit::symbol).toList();
        int last = symbols.size() - 1;
        return "write " + (last == 0
                ? symbols.get(0)
                : String.join(", ", symbols.subList(0, last)) + " or " + symbols.get(last));
    }
}
