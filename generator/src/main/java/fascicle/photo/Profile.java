package fascicle.photo;

import fascicle.colour.LinearRgb;
import fascicle.colour.Matrix;

/**
 * What the numbers of a picture mean: a curve for each channel from a number to linear light, and a matrix from linear
 * light to XYZ under D50. Colours beyond sRGB keep what lies beyond: nothing is clipped.
 *
 * @param red curve of the first channel
 * @param green curve of the second
 * @param blue curve of the third
 * @param toXyz from linear light to XYZ under D50
 * @param understood whether this is the picture's own meaning, and not sRGB in place of a profile that cannot be read
 */
record Profile(ToneCurve red, ToneCurve green, ToneCurve blue, Matrix toXyz, boolean understood) {

    /** IEC 61966-2-1: what a picture means that says nothing else. */
    static final Profile SRGB = ofSrgbPrimaries(LinearRgb::decode, true);

    /** What stands in for a profile that cannot be read. */
    static final Profile NOT_UNDERSTOOD = ofSrgbPrimaries(LinearRgb::decode, false);

    /** A PNG's gAMA of sRGB, and how far it may be off: pictures in sRGB write it for those that know no better. */
    private static final int SRGB_GAMMA = 45_455;
    private static final int ABOUT_SRGB = 500;

    private static Profile ofSrgbPrimaries(ToneCurve curve, boolean understood) {
        return new Profile(curve, curve, curve, LinearRgb.toXyzUnderD50(), understood);
    }

    /** An embedded profile; sRGB where it is damaged or of a kind that is not read. */
    static Profile ofIcc(byte[] profile) {
        return new IccProfile(profile).read().orElse(NOT_UNDERSTOOD);
    }

    /**
     * A PNG's gAMA chunk.
     *
     * @param hundredThousandths the exponent by which light became numbers, times 100 000
     */
    static Profile ofGamma(int hundredThousandths) {
        if (hundredThousandths <= 0 || StrictMath.abs(hundredThousandths - SRGB_GAMMA) <= ABOUT_SRGB) {
            return SRGB;
        }
        double exponent = 100_000.0 / hundredThousandths;
        return ofSrgbPrimaries(encoded -> StrictMath.pow(encoded, exponent), true);
    }

    boolean isSrgb() {
        return this == SRGB || this == NOT_UNDERSTOOD;
    }

    /** Linear light of every number that a channel may hold, for the three channels. */
    double[][] light(int highest) {
        return new double[][] {red.light(highest), green.light(highest), blue.light(highest)};
    }
}
