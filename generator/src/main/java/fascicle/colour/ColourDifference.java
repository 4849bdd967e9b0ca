package fascicle.colour;

/**
 * How far two colours lie apart, in units of about one just noticeable difference.
 *
 * <p>Both colours must be under the same white; nothing is adapted here.
 */
public final class ColourDifference {

    /** Opposite hues lie on the near side of the jump at 180°, whatever the last bit of an arctangent says. */
    private static final double OPPOSITE = 180 + 1e-9;

    private ColourDifference() {}

    /** ΔE*ab, the distance in Lab (CIE 1976). */
    public static double cielab(Lab one, Lab other) {
        double lightness = other.lightness() - one.lightness();
        double a = other.a() - one.a();
        double b = other.b() - one.b();
        return StrictMath.sqrt(lightness * lightness + a * a + b * b);
    }

    /**
     * ΔE00 (CIE 142:2001, ISO/CIE 11664-6) with kL = kC = kH = 1, after G. Sharma, W. Wu and E. N. Dalal (2005), "The
     * CIEDE2000 Color-Difference Formula: Implementation Notes, Supplementary Test Data, and Mathematical
     * Observations", Color Research &amp; Application 30(1), 21–30.
     */
    public static double ciede2000(Lab one, Lab other) {
        Pair pair = Pair.of(one, other);
        double hue1 = hue(pair.a1, one.b());
        double hue2 = hue(pair.a2, other.b());
        boolean grey = pair.chroma1 * pair.chroma2 == 0;
        double turn = grey ? 0 : shorterTurn(hue2 - hue1);
        double hue = grey ? hue1 + hue2 : meanHue(hue1, hue2);

        double hueTerm = 2 * StrictMath.sqrt(pair.chroma1 * pair.chroma2) * sin(turn / 2)
                / (1 + 0.015 * pair.meanChroma() * hueWeight(hue));
        double fromBlue = (hue - 275) / 25;
        double rotation = -sin(60 * StrictMath.exp(-fromBlue * fromBlue)) * pair.rotationStrength();

        double lightnessTerm = pair.lightnessTerm();
        double chromaTerm = pair.chromaTerm();
        return StrictMath.sqrt(lightnessTerm * lightnessTerm
                + chromaTerm * chromaTerm
                + hueTerm * hueTerm
                + rotation * chromaTerm * hueTerm);
    }

    /**
     * A figure that {@link #ciede2000} never falls below, an order of magnitude cheaper: whoever looks for the nearest
     * colour may pass over every colour for which this exceeds the best difference so far.
     *
     * <p>With l, c, h the weighted terms and R the rotation, ΔE00² = l² + c² + h² + R·c·h, and the last three are at
     * least (1 − |R|/2)(c² + h²). |R| is at most the rotation's strength, which is below 2; where neither b* is
     * negative the mean hue keeps 95° from the rotation's centre and |R| is below 10⁻⁶. ΔH'² follows from the
     * cosine rule without a hue, and T is at most 1 + 0.17 + 0.24 + 0.32 + 0.20.
     */
    public static double ciede2000AtLeast(Lab one, Lab other) {
        Pair pair = Pair.of(one, other);
        double hueSquared = StrictMath.max(
                0, 2 * (pair.chroma1 * pair.chroma2 - pair.a1 * pair.a2 - one.b() * other.b()));
        double hueWeight = 1 + 0.015 * pair.meanChroma() * 1.93;
        double kept = one.b() >= 0 && other.b() >= 0 ? 1 - 1e-6 : 1 - pair.rotationStrength() / 2;
        double lightnessTerm = pair.lightnessTerm();
        double chromaTerm = pair.chromaTerm();
        double squared = lightnessTerm * lightnessTerm
                + kept * (chromaTerm * chromaTerm + hueSquared / (hueWeight * hueWeight));
        // Less than any rounding on the way could have added.
        return StrictMath.sqrt(StrictMath.max(0, squared * (1 - 1e-9) - 1e-9));
    }

    /** The steps of the formula that need no hue: a' (a* stretched near the grey axis), C', and what they weigh. */
    private record Pair(Lab one, Lab other, double a1, double a2, double chroma1, double chroma2) {

        static Pair of(Lab one, Lab other) {
            double chroma = (one.chroma() + other.chroma()) / 2;
            double stretch = 1.5 - 0.5 * saturation(chroma);
            double a1 = stretch * one.a();
            double a2 = stretch * other.a();
            return new Pair(one, other, a1, a2, length(a1, one.b()), length(a2, other.b()));
        }

        double meanChroma() {
            return (chroma1 + chroma2) / 2;
        }

        /** ΔL' / SL. */
        double lightnessTerm() {
            double fromMiddle = (one.lightness() + other.lightness()) / 2 - 50;
            double square = fromMiddle * fromMiddle;
            return (other.lightness() - one.lightness()) / (1 + 0.015 * square / StrictMath.sqrt(20 + square));
        }

        /** ΔC' / SC. */
        double chromaTerm() {
            return (chroma2 - chroma1) / (1 + 0.045 * meanChroma());
        }

        /** RC, how strongly chroma and hue pull on each other among blues; below 2. */
        double rotationStrength() {
            return 2 * saturation(meanChroma());
        }

        private static double length(double a, double b) {
            return StrictMath.sqrt(a * a + b * b);
        }

        /** √(C⁷ / (C⁷ + 25⁷)). */
        private static double saturation(double chroma) {
            double cube = chroma * chroma * chroma;
            double seventh = cube * cube * chroma;
            return StrictMath.sqrt(seventh / (seventh + 6103515625.0));
        }
    }

    /** T of the formula: how the eye's sense of hue changes round the circle. */
    private static double hueWeight(double hue) {
        return 1
                - 0.17 * cos(hue - 30)
                + 0.24 * cos(2 * hue)
                + 0.32 * cos(3 * hue + 6)
                - 0.20 * cos(4 * hue - 63);
    }

    private static double shorterTurn(double turn) {
        if (StrictMath.abs(turn) <= OPPOSITE) {
            return turn;
        }
        return turn > 0 ? turn - 360 : turn + 360;
    }

    private static double meanHue(double hue1, double hue2) {
        double sum = hue1 + hue2;
        if (StrictMath.abs(hue1 - hue2) <= OPPOSITE) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double hue(double a, double b) {
        double degrees = StrictMath.toDegrees(StrictMath.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double sin(double degrees) {
        return StrictMath.sin(StrictMath.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return StrictMath.cos(StrictMath.toRadians(degrees));
    }
}
