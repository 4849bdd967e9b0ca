package fascicle.workings;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far two colours lie apart, and how sure that is.
 *
 * @param de00 CIEDE2000
 * @param uncertainty how far apart readings of one and the same colour may lie, as CIEDE2000; 0 between colours that
 *     were chosen and not measured
 */
public record Difference(double de00, double uncertainty) {

    /**
     * The difference of two colours. Their uncertainties come from readings that do not know of each other, so they add
     * as the root of the sum of their squares (JCGM 100:2008, 5.1.2).
     *
     * @param one a colour
     * @param other another
     * @return how far they lie apart
     */
    public static Difference of(Sure one, Sure other) {
        return new Difference(ColourDifference.ciede2000(one.lab(), other.lab()), StrictMath.sqrt(
                one.uncertainty() * one.uncertainty() + other.uncertainty() * other.uncertainty()));
    }

    /**
     * Whether the colours differ as far as the readings tell.
     *
     * @return false where the difference is smaller than its uncertainty
     */
    public boolean tells() {
        return de00 >= uncertainty;
    }

    /**
     * The bare figure of a difference that may not be known.
     *
     * @param difference a difference, if there is one
     * @return its CIEDE2000
     */
    public static OptionalDouble figure(Optional<Difference> difference) {
        return difference.stream().mapToDouble(Difference::de00).findFirst();
    }

    /**
     * A colour with its uncertainty.
     *
     * @param lab the colour under D50
     * @param uncertainty how far from the truth it may lie, as CIEDE2000
     */
    public record Sure(Lab lab, double uncertainty) {}
}
