package fascicle.measure;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * So many of a unit, exactly as written: {@code 45 g}, {@code about 1 1/2 tsp}, {@code 190 °F}.
 *
 * <p>Two quantities are equal if number, unit and {@code about} are; {@link #isEquivalentTo} compares sizes.
 *
 * @param number how many; below zero only for a temperature
 * @param unit of what
 * @param about whether the figure is rough, as the maker says or as a unit without an exact size (a drop) makes it
 */
public record Quantity(BigFraction number, Unit unit, boolean about) {
    private static final BigInteger MINUTES_IN_AN_HOUR = BigInteger.valueOf(60);

    /** @throws IllegalArgumentException if the number is below zero and the unit is not one of temperature */
    public Quantity {
        if (number.signum() < 0 && unit.dimension() != Dimension.TEMPERATURE) {
            throw new IllegalArgumentException(unit.dimension().phrase() + " below zero: " + number + " " + unit);
        }
        about = about || !unit.exact();
    }

    /**
     * Reads a quantity as people write it. One in several units ({@code 2 h 30 min}, {@code 1 lb 4 oz}) is kept as a
     * sum in the first.
     *
     * @param wanted what must be measured here
     * @param kitchen whose cups and spoons are meant
     * @throws UnreadableQuantity if the text holds no such quantity, or one that could be read in two ways
     */
    public static Quantity read(String text, Dimension wanted, Kitchen kitchen) throws UnreadableQuantity {
        return new QuantityReader(text, wanted, kitchen).read();
    }

    /** The value in the dimension's base unit (g, mL, cm, °C, min), to the nearest double. */
    public double value() {
        return exactValue().doubleValue();
    }

    /** The value in the dimension's base unit (g, mL, cm, °C, min). */
    public BigFraction exactValue() {
        return unit.toBase(number);
    }

    /** Whether both measure the same dimension and come to exactly the same value, however written. */
    public boolean isEquivalentTo(Quantity other) {
        return unit.dimension() == other.unit.dimension() && exactValue().equals(other.exactValue());
    }

    /**
     * So many times this quantity, in the same unit.
     *
     * @throws IllegalArgumentException if the factor is below zero
     * @throws UnsupportedOperationException if this is a temperature, which has no multiples
     */
    public Quantity times(BigFraction factor) {
        if (unit.dimension() == Dimension.TEMPERATURE) {
            throw new UnsupportedOperationException("a temperature has no multiples: " + this + " × " + factor);
        }
        if (factor.signum() < 0) {
            throw new IllegalArgumentException("factor below zero: " + factor);
        }
        return new Quantity(number.multiply(factor), unit, about);
    }

    /**
     * The quantity as a maker would write it. Whatever was read prints so that it reads back equal in the same
     * kitchen; a multiple may have more digits than are read.
     */
    @Override
    public String toString() {
        return (about ? "about " : "") + withoutAbout();
    }

    private String withoutAbout() {
        BigInteger[] hours = number.getNumerator().divideAndRemainder(number.getDenominator());
        BigFraction minutes = BigFraction.of(hours[1].multiply(MINUTES_IN_AN_HOUR), number.getDenominator());
        if (unit == Unit.HOUR && hours[0].signum() > 0 && minutes.signum() > 0
                && minutes.getDenominator().equals(BigInteger.ONE)) {
            return hours[0] + " h " + minutes.getNumerator() + " min";
        }
        String figures = unit.countedInFractions() ? Numbers.printFraction(number) : Numbers.print(number);
        return figures + " " + unit.symbol(number);
    }
}
