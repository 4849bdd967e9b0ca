package fascicle.photo;

/** A space of red, green and blue under D65, with the curve of sRGB (IEC 61966-2-1). */
enum RgbSpace {
    /** The primaries of IEC 61966-2-1. */
    SRGB(0.640, 0.330, 0.300, 0.600, 0.150, 0.060),
    /** The primaries of SMPTE RP 431-2 with the white and the curve of sRGB, as CSS Color 4 defines it. */
    DISPLAY_P3(0.680, 0.320, 0.265, 0.690, 0.150, 0.060);

    private final double[][] toXyz;
    private final double[][] fromXyz;

    RgbSpace(double redX, double redY, double greenX, double greenY, double blueX, double blueY) {
        double[][] chromaticities = {
            {redX, greenX, blueX}, {redY, greenY, blueY}, {1 - redX - redY, 1 - greenX - greenY, 1 - blueX - blueY}
        };
        double[] shares = Square.times(Square.inverse(chromaticities), white());
        toXyz = Square.times(
                chromaticities, new double[][] {{shares[0], 0, 0}, {0, shares[1], 0}, {0, 0, shares[2]}});
        fromXyz = Square.inverse(toXyz);
    }

    /** X, Y and Z of D65 from its chromaticity 0.3127, 0.3290. */
    static double[] white() {
        return new double[] {0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290};
    }

    double[][] toXyz() {
        return toXyz;
    }

    double[] linear(double[] xyz) {
        return Square.times(fromXyz, xyz);
    }

    /** Turns linear sRGB into linear light of this space. */
    double[][] fromSrgb() {
        return Square.times(fromXyz, SRGB.toXyz);
    }

    /** The curve: linear light from 0 to 1, as a signal from 0 to 1. */
    static double encode(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
    }

    /** The curve the other way round. */
    static double decode(double signal) {
        return signal <= 0.04045 ? signal / 12.92 : StrictMath.pow((signal + 0.055) / 1.055, 2.4);
    }
}
