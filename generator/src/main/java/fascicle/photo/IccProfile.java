package fascicle.photo;

import fascicle.colour.Matrix;
import fascicle.colour.Xyz;
import java.util.Optional;

/**
 * An embedded profile of three curves and three colorants, as cameras, phones and picture programs write them
 * (ICC.1:2001 and ICC.1:2022, "three-component matrix-based profiles"). Profiles made of tables, as those of printers,
 * are not read.
 */
final class IccProfile {

    private static final int TAGS = 128;
    private static final int LARGEST_CURVE = 65_536;

    /** A space that these colorants span is no space. */
    private static final double FLAT = 1e-4;

    private final Bytes profile;

    IccProfile(byte[] content) {
        profile = new Bytes(content);
    }

    /** The profile; nothing where it is damaged or of another kind. */
    Optional<Profile> read() {
        try {
            if (!profile.textAt(36, 4).equals("acsp") || !profile.textAt(16, 8).equals("RGB XYZ ")) {
                return Optional.empty();
            }
            Matrix colorants = Matrix.ofColumns(colorant("rXYZ"), colorant("gXYZ"), colorant("bXYZ"));
            Xyz white = Xyz.of(colorants.times(1, 1, 1));
            if (!(colorants.determinant() > FLAT) || !(white.x() > 0.5) || !(white.y() > 0.5) || !(white.z() > 0.5)) {
                return Optional.empty();
            }
            // The colorants' sum is D50 but for rounding and for old profiles' slips: white must come out as white.
            Matrix toXyz = Xyz.adaptation(white, Xyz.D50).times(colorants);
            return Optional.of(new Profile(curve("rTRC"), curve("gTRC"), curve("bTRC"), toXyz, true))
                    .filter(IccProfile::isSound);
        } catch (Bytes.CutOff damaged) {
            return Optional.empty();
        }
    }

    /** Black is dark, white is light, and between them every figure is one. */
    private static boolean isSound(Profile read) {
        for (double[] light : read.light(255)) {
            for (double value : light) {
                if (!Double.isFinite(value)) {
                    return false;
                }
            }
            if (light[0] > 0.1 || StrictMath.abs(light[255] - 1) > 0.1) {
                return false;
            }
        }
        return true;
    }

    private double[] colorant(String tag) throws Bytes.CutOff {
        int at = find(tag);
        return new double[] {profile.fixedAt(at + 8), profile.fixedAt(at + 12), profile.fixedAt(at + 16)};
    }

    private ToneCurve curve(String tag) throws Bytes.CutOff {
        int at = find(tag);
        return switch (profile.textAt(at, 4)) {
            case "curv" -> sampled(at);
            case "para" -> parametric(at);
            default -> throw new Bytes.CutOff();
        };
    }

    /** curveType: no value for the straight line, one for an exponent with 8 binary places, else a table. */
    private ToneCurve sampled(int at) throws Bytes.CutOff {
        int count = profile.intAt(at + 8);
        if (count == 0) {
            return encoded -> encoded;
        }
        if (count == 1) {
            double exponent = profile.shortAt(at + 12) / 256.0;
            return encoded -> StrictMath.pow(encoded, exponent);
        }
        if (count < 0 || count > LARGEST_CURVE) {
            throw new Bytes.CutOff();
        }
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = profile.shortAt(at + 12 + 2 * i) / 65535.0;
        }
        return encoded -> interpolate(values, encoded);
    }

    private static double interpolate(double[] values, double encoded) {
        double place = encoded * (values.length - 1);
        int below = StrictMath.min((int) place, values.length - 2);
        return values[below] + (place - below) * (values[below + 1] - values[below]);
    }

    /** parametricCurveType, its five functions brought into one: (aX + b)^g + e from d on, and cX + f below. */
    private ToneCurve parametric(int at) throws Bytes.CutOff {
        double g = parameter(at, 0);
        return switch (profile.shortAt(at + 8)) {
            case 0 -> power(g, 1, 0, 0, 0, 0, 0);
            case 1 -> {
                double a = parameter(at, 1);
                double b = parameter(at, 2);
                yield power(g, a, b, 0, -b / a, 0, 0);
            }
            case 2 -> {
                double a = parameter(at, 1);
                double b = parameter(at, 2);
                double c = parameter(at, 3);
                yield power(g, a, b, 0, -b / a, c, c);
            }
            case 3 -> power(g, parameter(at, 1), parameter(at, 2), parameter(at, 3), parameter(at, 4), 0, 0);
            case 4 -> power(g, parameter(at, 1), parameter(at, 2), parameter(at, 3), parameter(at, 4),
                    parameter(at, 5), parameter(at, 6));
            default -> throw new Bytes.CutOff();
        };
    }

    private static ToneCurve power(double g, double a, double b, double c, double d, double e, double f) {
        return encoded -> encoded >= d
                ? StrictMath.pow(StrictMath.max(0, a * encoded + b), g) + e
                : c * encoded + f;
    }

    private double parameter(int at, int number) throws Bytes.CutOff {
        return profile.fixedAt(at + 12 + 4 * number);
    }

    /** Where a tag's data begins. */
    private int find(String tag) throws Bytes.CutOff {
        int count = profile.intAt(TAGS);
        for (int i = 0; i < count; i++) {
            int entry = TAGS + 4 + 12 * i;
            if (profile.textAt(entry, 4).equals(tag)) {
                return profile.intAt(entry + 4);
            }
        }
        throw new Bytes.CutOff();
    }
}
