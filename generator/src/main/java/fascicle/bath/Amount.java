package fascicle.bath;

import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Numbers;
import fascicle.measure.Quantity;
import fascicle.measure.Unit;
import fascicle.measure.UnreadableQuantity;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much of a thing a recipe asks for, as the maker wrote it. The written form decides how it scales: on the weight
 * of the needles, with the bath, or as it is.
 *
 * <p>Every amount prints so that it reads back equal in the same kitchen.
 */
public sealed interface Amount {

    /** Whether the maker, or the unit, says that the figure is rough. */
    boolean about();

    /** Whether it comes to nothing at all: {@code 0 g}, {@code 0 % owf}. */
    default boolean isNothing() {
        return false;
    }

    /**
     * Reads an amount.
     *
     * <p>A text without any number ({@code a pinch}, {@code to taste}) and a number of things that are no unit
     * ({@code 3 handfuls}) have no size and are kept as written.
     *
     * @param kitchen whose cups and spoons are meant
     * @throws UnreadableQuantity if there is a number but no amount that can be read without guessing
     */
    static Amount read(String text, Kitchen kitchen) throws UnreadableQuantity {
        return new AmountReader(text, kitchen).read();
    }

    /** So much by weight: {@code 40 g}. */
    record Weighed(Quantity mass) implements Amount {
        public Weighed {
            require(mass.unit().dimension() == Dimension.MASS, mass);
        }

        @Override
        public boolean about() {
            return mass.about();
        }

        @Override
        public boolean isNothing() {
            return mass.number().signum() == 0;
        }

        @Override
        public String toString() {
            return mass.toString();
        }
    }

    /** So much by volume: {@code 60 mL}, {@code 1 1/2 tsp}. */
    record Measured(Quantity volume) implements Amount {
        public Measured {
            require(volume.unit().dimension() == Dimension.VOLUME, volume);
        }

        @Override
        public boolean about() {
            return volume.about();
        }

        @Override
        public boolean isNothing() {
            return volume.number().signum() == 0;
        }

        @Override
        public String toString() {
            return volume.toString();
        }
    }

    /**
     * So much on the weight of the dry needles: {@code 1.5 % owf}.
     *
     * @param percent grams for 100 g of dry needles
     */
    record OnNeedles(BigFraction percent, boolean about) implements Amount {
        public OnNeedles {
            require(percent.signum() >= 0, percent);
        }

        @Override
        public boolean isNothing() {
            return percent.signum() == 0;
        }

        @Override
        public String toString() {
            return prefix(about) + Numbers.print(percent) + " % owf";
        }
    }

    /**
     * So much of a stock solution: {@code 40 mL of 1 % stock}.
     *
     * @param percent grams of the thing in 100 mL of the solution; above zero
     */
    record OfStock(Quantity volume, BigFraction percent) implements Amount {
        public OfStock {
            require(volume.unit().dimension() == Dimension.VOLUME, volume);
            require(percent.signum() > 0, percent);
        }

        @Override
        public boolean about() {
            return volume.about();
        }

        @Override
        public boolean isNothing() {
            return volume.number().signum() == 0;
        }

        @Override
        public String toString() {
            return volume + " of " + Numbers.print(percent) + " % stock";
        }
    }

    /**
     * So much in each litre of the liquor: {@code 12 g/L}.
     *
     * @param grams grams in a litre
     */
    record PerLitre(BigFraction grams, boolean about) implements Amount {
        public PerLitre {
            require(grams.signum() >= 0, grams);
        }

        @Override
        public boolean isNothing() {
            return grams.signum() == 0;
        }

        @Override
        public String toString() {
            return prefix(about) + Numbers.print(grams) + " " + Unit.GRAM.symbol() + "/" + Unit.LITRE.symbol();
        }
    }

    /**
     * So many packets as sold: {@code 1/2 packet}. What they hold is the thing's own affair.
     *
     * @param count how many packets
     */
    record Packs(BigFraction count, boolean about) implements Amount {
        public Packs {
            require(count.signum() >= 0, count);
        }

        @Override
        public boolean isNothing() {
            return count.signum() == 0;
        }

        @Override
        public String toString() {
            String word = count.compareTo(BigFraction.ONE) > 0 ? " packets" : " packet";
            return prefix(about) + Numbers.printFraction(count) + word;
        }
    }

    /**
     * An amount without a size: {@code a handful}, {@code 3 leaves}.
     *
     * @param text as written, without a leading {@code about}
     */
    record Unsized(String text, boolean about) implements Amount {
        public Unsized {
            require(!text.isBlank(), text);
        }

        @Override
        public String toString() {
            return prefix(about) + text;
        }
    }

    private static String prefix(boolean about) {
        return about ? "about " : "";
    }

    private static void require(boolean holds, Object value) {
        if (!holds) {
            throw new IllegalArgumentException("no such amount: " + value);
        }
    }
}
