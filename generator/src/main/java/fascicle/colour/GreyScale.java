package fascicle.colour;

/**
 * Grades of the grey scales of ISO 105, reckoned from two readings.
 *
 * <p>The standard asks for instruments under D65 with the 10° observer; every {@link Lab} here is under D50 for the 2°
 * observer, and a photograph is no instrument. A grade given here is therefore approximate: half a grade away is no
 * contradiction.
 */
public final class GreyScale {

    /** Where each grade of ISO 105-A05 ends, from grade 5 down to 1-2: the difference is below it. */
    private static final double[] CHANGE_ENDS = {0.40, 1.25, 2.10, 2.95, 4.10, 5.80, 8.20, 11.60};

    /** What rounding leaves behind must not decide a grade at its very end. */
    private static final double HAIR = 1e-9;

    private GreyScale() {}

    /**
     * The grade of a change in colour (ISO 105-A05:1996, clauses 7 and 8), from 5 for none to 1; approximate.
     *
     * @param original the colour before, as of a sample kept in the dark
     * @param tested the colour after
     * @return the grade
     */
    public static Grade change(Lab original, Lab tested) {
        double difference = changeDifference(original, tested) + HAIR;
        int halves = 10;
        for (double end : CHANGE_ENDS) {
            if (difference < end) {
                break;
            }
            halves--;
        }
        return new Grade(halves);
    }

    /**
     * The grade of staining (ISO 105-A04:1989), from 5 for none to 1; approximate. The standard prints its grades as
     * 4.75–5.00, 4.25–4.74 and so on; what lies in a gap belongs to the lower one.
     *
     * @param unstained the undyed neighbour before
     * @param stained the same after
     * @return the grade
     */
    public static Grade staining(Lab unstained, Lab stained) {
        double halves = StrictMath.floor(2 * (stainingValue(unstained, stained) + 0.25) + HAIR);
        return new Grade((int) StrictMath.max(2, halves));
    }

    /** GSc of ISO 105-A05: the grade of a change as a figure, from 1 to 5. */
    static double changeValue(Lab original, Lab tested) {
        double difference = changeDifference(original, tested);
        double value = difference <= 3.4
                ? 5 - difference / 1.7
                : 5 - StrictMath.log(difference / 0.85) / StrictMath.log(2);
        return StrictMath.max(1, value);
    }

    /** SSR of ISO 105-A04: the grade of staining as a figure, from 0 to 5. */
    static double stainingValue(Lab unstained, Lab stained) {
        double difference = stainingDifference(unstained, stained);
        // No difference has no logarithm: minus infinity, which the second formula then answers with 5.
        double value = 6.1 - 1.45 * StrictMath.log(difference);
        return value > 4 ? 5 - 0.23 * difference : StrictMath.max(0, value);
    }

    /** ΔEF of ISO 105-A05. */
    static double changeDifference(Lab original, Lab tested) {
        double lightness = tested.lightness() - original.lightness();
        double chroma = tested.chroma() - original.chroma();
        double meanChroma = (original.chroma() + tested.chroma()) / 2;

        double fromBlue = StrictMath.abs(meanHue(original, tested) - 280);
        double turns = StrictMath.min(fromBlue, 360 - fromBlue) / 30;
        double shared = chroma * meanChroma * StrictMath.exp(-turns * turns) / 100;

        double chromaWeight = 20 * meanChroma / 1000;
        double hueWeight = 10 * meanChroma / 1000;
        double chromaTerm = (chroma - shared) / (1 + chromaWeight * chromaWeight);
        double hueTerm = (hueDifference(original, tested) - shared) / (1 + hueWeight * hueWeight);
        return StrictMath.sqrt(lightness * lightness + chromaTerm * chromaTerm + hueTerm * hueTerm);
    }

    /** ΔEGS of ISO 105-A04: what differs in hue and chroma counts for less than what differs in lightness. */
    static double stainingDifference(Lab unstained, Lab stained) {
        double a = stained.a() - unstained.a();
        double b = stained.b() - unstained.b();
        return ColourDifference.cielab(unstained, stained) - 0.4 * StrictMath.sqrt(a * a + b * b);
    }

    /**
     * ΔH*ab, positive where the shorter way round the circle leads to greater hues. It equals the standard's root of
     * ΔE² − ΔL² − ΔC² with its sign, and takes no root of what rounding left behind.
     */
    private static double hueDifference(Lab original, Lab tested) {
        double turn = tested.hueDegrees() - original.hueDegrees();
        double shorter = StrictMath.abs(turn) <= 180 ? turn : turn - StrictMath.copySign(360, turn);
        return 2
                * StrictMath.sqrt(original.chroma() * tested.chroma())
                * StrictMath.sin(StrictMath.toRadians(shorter) / 2);
    }

    /** The hue midway. A grey has none, of which the standard says nothing: the other colour's stands for both. */
    private static double meanHue(Lab original, Lab tested) {
        double sum = original.hueDegrees() + tested.hueDegrees();
        if (original.chroma() == 0 || tested.chroma() == 0) {
            return sum;
        }
        if (StrictMath.abs(tested.hueDegrees() - original.hueDegrees()) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? sum / 2 + 180 : sum / 2 - 180;
    }
}
