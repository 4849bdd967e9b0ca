package fascicle.colour;

import java.util.Collection;
import java.util.function.ToDoubleFunction;

/**
 * A colour in CIE 1976 L*a*b* under D50 for the 2° observer (CIE 15:2004, ISO 11664-4).
 *
 * <p>Neither lightness nor chroma is held to a range: fluorescent and computed colours may lie a little outside.
 *
 * @param lightness L*, from 0 for black to 100 for the white
 * @param a a*, from green (negative) to red
 * @param b b*, from blue (negative) to yellow
 */
public record Lab(double lightness, double a, double b) {

    /**
     * A colour in Lab under D50.
     *
     * @throws IllegalArgumentException if a coordinate is not a finite number
     */
    public Lab {
        if (!Double.isFinite(lightness) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("not a colour: Lab " + lightness + ", " + a + ", " + b);
        }
        // Adding zero turns -0 into 0, so that equal colours are equal records and print alike.
        lightness += 0.0;
        a += 0.0;
        b += 0.0;
    }

    /**
     * The colour whose Lab was taken under D65, adapted to D50 by the linear Bradford transform.
     *
     * @throws IllegalArgumentException if a coordinate is not a finite number
     */
    public static Lab ofD65(double lightness, double a, double b) {
        return Xyz.ofLab(lightness, a, b, Xyz.D65).fromD65ToD50().toLab(Xyz.D50);
    }

    /**
     * The colour of these XYZ under D50 (CIE 15:2004), scaled so that Y of the white is 1.
     *
     * @throws IllegalArgumentException if a value is not a finite number
     */
    public static Lab ofXyz(double x, double y, double z) {
        return new Xyz(x, y, z).toLab(Xyz.D50);
    }

    /**
     * The colour whose XYZ were taken under D65, scaled so that Y of the white is 1, adapted to D50 by the linear
     * Bradford transform.
     *
     * @throws IllegalArgumentException if a value is not a finite number
     */
    public static Lab ofXyzD65(double x, double y, double z) {
        return new Xyz(x, y, z).fromD65ToD50().toLab(Xyz.D50);
    }

    /**
     * The grey that reflects so much of the light at every wavelength.
     *
     * @param factor above 0; 1 for a perfect white
     * @throws IllegalArgumentException if the factor is 0 or less or not finite
     */
    public static Lab ofReflectance(double factor) {
        if (!(factor > 0) || !Double.isFinite(factor)) {
            throw new IllegalArgumentException("no grey reflects this much: " + factor);
        }
        return new Xyz(factor * Xyz.D50.x(), factor, factor * Xyz.D50.z()).toLab(Xyz.D50);
    }

    /**
     * Y: how much of the light the colour reflects.
     *
     * @return 1 for the white
     */
    public double reflectance() {
        return Xyz.ofLab(lightness, a, b, Xyz.D50).y();
    }

    /** C*ab: the distance from the grey axis. */
    public double chroma() {
        return StrictMath.sqrt(a * a + b * b);
    }

    /** hab in degrees: 0 red, 90 yellow, 180 green, 270 blue; 0 ≤ h &lt; 360, and 0 where the chroma is 0. */
    public double hueDegrees() {
        double degrees = StrictMath.toDegrees(StrictMath.atan2(b, a));
        double hue = degrees < 0 ? degrees + 360 : degrees;
        // A hue a hair below 0 rounds up to the full circle.
        return hue < 360 ? hue : 0;
    }

    /** The nearest 8-bit sRGB colour, each channel clipped to what a screen can show. */
    public Rgb toRgb() {
        return LinearRgb.of(this).toRgb();
    }

    /** Whether sRGB holds this colour; half a step of 8 bits beyond the edge still counts, as it rounds to the edge. */
    public boolean displayable() {
        return LinearRgb.of(this).displayable();
    }

    /**
     * The mean, coordinate by coordinate.
     *
     * @throws IllegalArgumentException if there are no colours
     */
    public static Lab mean(Collection<Lab> colours) {
        return byCoordinate(colours, Lab::meanOf);
    }

    /**
     * The median, coordinate by coordinate; of an even count the mean of the middle two (type 7 of R. J. Hyndman and
     * Y. Fan, 1996, "Sample quantiles in statistical packages").
     *
     * @throws IllegalArgumentException if there are no colours
     */
    public static Lab median(Collection<Lab> colours) {
        return byCoordinate(colours, Lab::medianOf);
    }

    private static Lab byCoordinate(Collection<Lab> colours, ToDoubleFunction<double[]> middle) {
        if (colours.isEmpty()) {
            throw new IllegalArgumentException("no middle of no colours: " + colours);
        }
        return new Lab(
                middle.applyAsDouble(colours.stream().mapToDouble(Lab::lightness).sorted().toArray()),
                middle.applyAsDouble(colours.stream().mapToDouble(Lab::a).sorted().toArray()),
                middle.applyAsDouble(colours.stream().mapToDouble(Lab::b).sorted().toArray()));
    }

    /** Summed from the smallest up, so that the order in which readings were written changes no digit. */
    private static double meanOf(double[] sorted) {
        double sum = 0;
        for (double value : sorted) {
            sum += value;
        }
        return sum / sorted.length;
    }

    private static double medianOf(double[] sorted) {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
