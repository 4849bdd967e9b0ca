package fascicle.workings.chain;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * An amount that is known, or known to lie between two others, or neither. A value without bounds is one that somebody
 * judged.
 *
 * @param value the amount
 * @param low the least it may be
 * @param high the most it may be
 */
public record Estimate(OptionalDouble value, OptionalDouble low, OptionalDouble high) {

    /** Nothing is known. */
    public static final Estimate UNKNOWN =
            new Estimate(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * An amount as it was weighed.
     *
     * @param amount the amount, if it is known
     * @return bounds at the amount itself
     */
    public static Estimate measured(OptionalDouble amount) {
        return new Estimate(amount, amount, amount);
    }

    /**
     * An amount that somebody judged, of which nobody knows how far it is off.
     *
     * @param amount the amount
     * @return a value without bounds
     */
    public static Estimate judged(double amount) {
        return new Estimate(OptionalDouble.of(amount), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The same, off by so large a share of itself either way. */
    Estimate within(double share) {
        return new Estimate(value, scaled(low, 1 - share), scaled(high, 1 + share));
    }

    private static OptionalDouble scaled(OptionalDouble bound, double factor) {
        return bound.isPresent() ? OptionalDouble.of(bound.getAsDouble() * factor) : bound;
    }

    /**
     * Whether anything is known of it.
     *
     * @return true for a value, and for two bounds
     */
    public boolean known() {
        return value.isPresent() || low.isPresent() && high.isPresent();
    }

    Estimate plus(Estimate other) {
        return with(other, Double::sum);
    }

    /** The product of amounts that are 0 or more. */
    Estimate times(Estimate other) {
        return with(other, (one, two) -> one * two);
    }

    Estimate times(double factor) {
        return times(measured(OptionalDouble.of(factor)));
    }

    /** What is lacking to an amount; nothing where there is more of it already. */
    Estimate upTo(OptionalDouble wanted) {
        return new Estimate(lacking(wanted, value), lacking(wanted, high), lacking(wanted, low));
    }

    private static OptionalDouble lacking(OptionalDouble wanted, OptionalDouble there) {
        return wanted.isPresent() && there.isPresent()
                ? OptionalDouble.of(StrictMath.max(0, wanted.getAsDouble() - there.getAsDouble()))
                : OptionalDouble.empty();
    }

    private Estimate with(Estimate other, DoubleBinaryOperator rule) {
        return new Estimate(both(value, other.value, rule), both(low, other.low, rule), both(high, other.high, rule));
    }

    private static OptionalDouble both(OptionalDouble one, OptionalDouble other, DoubleBinaryOperator rule) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(rule.applyAsDouble(one.getAsDouble(), other.getAsDouble()))
                : OptionalDouble.empty();
    }
}
