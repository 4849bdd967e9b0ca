package fascicle.colour;

/**
 * A colour as amounts of light of the three sRGB primaries: linear light, 0 for none and 1 for the white's share.
 * Amounts outside 0 to 1 belong to colours that no sRGB screen shows.
 *
 * <p>Primaries, white and transfer function by IEC 61966-2-1:1999; the matrix is derived from the chromaticities, as
 * in CSS Color 4, since the standard's four printed decimals move Lab by up to 0.02.
 *
 * @param red amount of the red primary
 * @param green amount of the green primary
 * @param blue amount of the blue primary
 */
public record LinearRgb(double red, double green, double blue) {

    private static final Matrix TO_XYZ = primaries();
    private static final Matrix FROM_XYZ = TO_XYZ.inverse();

    private static final double HALF_STEP = 0.5 / 255;

    /** From linear sRGB to XYZ, adapted from D65 to D50 by the linear Bradford transform. */
    public static Matrix toXyzUnderD50() {
        return Xyz.adaptation(Xyz.D65, Xyz.D50).times(TO_XYZ);
    }

    /** The light of an sRGB colour. */
    public static LinearRgb of(Rgb colour) {
        return new LinearRgb(
                decode(colour.red() / 255.0), decode(colour.green() / 255.0), decode(colour.blue() / 255.0));
    }

    /** The light of a Lab colour; may lie outside 0 to 1. */
    public static LinearRgb of(Lab colour) {
        Xyz xyz = Xyz.ofLab(colour.lightness(), colour.a(), colour.b(), Xyz.D50).fromD50ToD65();
        double[] light = FROM_XYZ.times(xyz.toArray());
        return new LinearRgb(light[0], light[1], light[2]);
    }

    /** Lab of this light, adapted from D65 to D50. */
    public Lab toLab() {
        return Xyz.of(TO_XYZ.times(red, green, blue)).fromD65ToD50().toLab(Xyz.D50);
    }

    /** The nearest 8-bit sRGB colour, each channel clipped. */
    public Rgb toRgb() {
        return new Rgb(step(red), step(green), step(blue));
    }

    /** Linear light of an encoded sRGB value; both from 0 to 1. */
    public static double decode(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : StrictMath.pow((encoded + 0.055) / 1.055, 2.4);
    }

    /** The encoded sRGB value of linear light; both from 0 to 1. */
    public static double encode(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
    }

    boolean displayable() {
        return displayable(red) && displayable(green) && displayable(blue);
    }

    private static boolean displayable(double light) {
        double encoded = encode(light);
        return encoded >= -HALF_STEP && encoded <= 1 + HALF_STEP;
    }

    private static int step(double light) {
        long rounded = StrictMath.round(255 * encode(light));
        return (int) StrictMath.max(0, StrictMath.min(255, rounded));
    }

    /** Columns are the primaries' XYZ, each scaled so that together they make the white. */
    private static Matrix primaries() {
        Matrix chromaticities = Matrix.ofColumns(
                new double[] {0.64, 0.33, 0.03}, new double[] {0.30, 0.60, 0.10}, new double[] {0.15, 0.06, 0.79});
        double[] shares = chromaticities.inverse().times(Xyz.D65.toArray());
        return chromaticities.times(Matrix.ofDiagonal(shares));
    }
}
