package fascicle.bath;

import java.util.OptionalDouble;

/**
 * A size that was worked out: known or unknown, and if known, perhaps rough. What is worked out of something unknown is
 * unknown, and what is worked out of something rough is rough.
 *
 * @param value the size in its unit; empty where unknown
 * @param about whether it is rough; never where unknown
 */
public record Magnitude(OptionalDouble value, boolean about) {

    /** A size that is not known. */
    public static final Magnitude UNKNOWN = new Magnitude(OptionalDouble.empty(), false);

    /** Nothing, and that for sure. */
    public static final Magnitude ZERO = of(0);

    /** One, and that for sure. */
    public static final Magnitude ONE = of(1);

    /** Lets no unknown size be rough, and no size be infinite. */
    public Magnitude {
        if (value.isPresent() && !Double.isFinite(value.getAsDouble())) {
            throw new IllegalArgumentException("not a size: " + value.getAsDouble());
        }
        about = about && value.isPresent();
    }

    /**
     * A size for sure.
     *
     * @param value a finite number
     * @return the size
     */
    public static Magnitude of(double value) {
        return of(value, false);
    }

    /**
     * A size.
     *
     * @param value a finite number
     * @param about whether it is rough
     * @return the size
     */
    public static Magnitude of(double value, boolean about) {
        return new Magnitude(OptionalDouble.of(value), about);
    }

    /**
     * Whether the size is known.
     *
     * @return false for {@link #UNKNOWN}
     */
    public boolean known() {
        return value.isPresent();
    }

    /**
     * The size where the caller knows that it is known.
     *
     * @return the value
     */
    public double orThrow() {
        return value.orElseThrow();
    }

    /**
     * The same size, rough if it was so before or is now.
     *
     * @param rough whether something rough has come in
     * @return the size
     */
    public Magnitude about(boolean rough) {
        return rough && !about ? new Magnitude(value, true) : this;
    }

    /**
     * The sum.
     *
     * @param other another size in the same unit
     * @return this and the other
     */
    public Magnitude plus(Magnitude other) {
        return known() && other.known() ? of(orThrow() + other.orThrow(), about || other.about) : UNKNOWN;
    }

    /**
     * The difference.
     *
     * @param other another size in the same unit
     * @return this less the other
     */
    public Magnitude minus(Magnitude other) {
        return plus(other.times(-1));
    }

    /**
     * A multiple.
     *
     * @param factor a finite number
     * @return so many times this
     */
    public Magnitude times(double factor) {
        return times(of(factor));
    }

    /**
     * The product.
     *
     * @param other another size
     * @return this times the other
     */
    public Magnitude times(Magnitude other) {
        return known() && other.known() ? of(orThrow() * other.orThrow(), about || other.about) : UNKNOWN;
    }

    /**
     * The quotient.
     *
     * @param other another size; of zero there is no knowing
     * @return this for one of the other
     */
    public Magnitude over(Magnitude other) {
        return known() && other.known() && other.orThrow() != 0
                ? of(orThrow() / other.orThrow(), about || other.about)
                : UNKNOWN;
    }
}
