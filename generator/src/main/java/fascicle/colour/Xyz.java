package fascicle.colour;

/**
 * CIE 1931 XYZ of the 2° observer, scaled so that Y of the white is 1: the crossing where Lab, sRGB and a change of
 * white meet.
 *
 * <p>Lab by CIE 15:2004 (ISO 11664-4) with the exact fractions ε = 216/24389 and κ = 24389/27. Whites are taken from
 * their chromaticities and adapted by the linear Bradford transform (K. M. Lam, 1985; as in ICC.1 and CSS Color 4).
 *
 * @param x X, 0.95 to 0.97 for a white
 * @param y Y, the luminance: 1 for the white
 * @param z Z, 0.82 to 1.09 for a white
 */
public record Xyz(double x, double y, double z) {

    /** Daylight of 6504 K, the white of sRGB. */
    public static final Xyz D65 = ofChromaticity(0.3127, 0.3290);

    /** Daylight of 5003 K, the white of print and of every {@link Lab} here. */
    public static final Xyz D50 = ofChromaticity(0.3457, 0.3585);

    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    /** Smaller than any reading, larger than what rounding leaves behind. */
    private static final double RESIDUE = 1e-9;

    private static final Matrix CONES = Matrix.ofRows(
            new double[] {0.8951, 0.2664, -0.1614},
            new double[] {-0.7502, 1.7135, 0.0367},
            new double[] {0.0389, -0.0685, 1.0296});

    private static final Matrix FROM_D65_TO_D50 = adaptation(D65, D50);
    private static final Matrix FROM_D50_TO_D65 = FROM_D65_TO_D50.inverse();

    /** X, Y and Z, in this order. */
    public static Xyz of(double[] xyz) {
        return new Xyz(xyz[0], xyz[1], xyz[2]);
    }

    /** A colour of which Lab under D50 is known. */
    public static Xyz of(Lab lab) {
        return ofLab(lab.lightness(), lab.a(), lab.b(), D50);
    }

    static Xyz ofLab(double lightness, double a, double b, Xyz white) {
        double fy = (lightness + 16) / 116;
        double y = lightness > KAPPA * EPSILON ? fy * fy * fy : lightness / KAPPA;
        return new Xyz(white.x * expand(fy + a / 500), white.y * y, white.z * expand(fy - b / 200));
    }

    /**
     * Lab, where this was taken under D50.
     *
     * @throws IllegalArgumentException if a component is not a finite number
     */
    public Lab toLab() {
        return toLab(D50);
    }

    Lab toLab(Xyz white) {
        double fx = compress(x / white.x);
        double fy = compress(y / white.y);
        double fz = compress(z / white.z);
        return new Lab(settle(116 * fy - 16), settle(500 * (fx - fy)), settle(200 * (fy - fz)));
    }

    Xyz fromD65ToD50() {
        return of(FROM_D65_TO_D50.times(toArray()));
    }

    Xyz fromD50ToD65() {
        return of(FROM_D50_TO_D65.times(toArray()));
    }

    /** X, Y and Z, in this order. */
    public double[] toArray() {
        return new double[] {x, y, z};
    }

    /** Of luminance 1. */
    private static Xyz ofChromaticity(double x, double y) {
        return new Xyz(x / y, 1, (1 - x - y) / y);
    }

    /**
     * The linear Bradford transform that carries one colour, such as a white, to another: what the eye's three kinds of
     * cones catch is multiplied by three factors.
     */
    public static Matrix adaptation(Xyz from, Xyz to) {
        double[] before = CONES.times(from.toArray());
        double[] after = CONES.times(to.toArray());
        Matrix gains = Matrix.ofDiagonal(
                new double[] {after[0] / before[0], after[1] / before[1], after[2] / before[2]});
        return CONES.inverse().times(gains).times(CONES);
    }

    private static double compress(double ratio) {
        return ratio > EPSILON ? StrictMath.cbrt(ratio) : (KAPPA * ratio + 16) / 116;
    }

    private static double expand(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }

    /** A grey has neither chroma nor hue: what rounding leaves behind must not give it one. */
    private static double settle(double coordinate) {
        return StrictMath.abs(coordinate) < RESIDUE ? 0 : coordinate;
    }
}
