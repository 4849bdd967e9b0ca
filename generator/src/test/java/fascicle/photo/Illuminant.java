package fascicle.photo;

/** A light to photograph by, and how the standard observer sees things in it. */
enum Illuminant {
    /** Daylight of 5003 K. */
    D50 {
        @Override
        double power(int band) {
            return Tables.D50_POWER[band];
        }
    },
    /** Daylight of 6504 K. */
    D65 {
        @Override
        double power(int band) {
            return Tables.D65_POWER[band];
        }
    },
    /** An incandescent lamp of 2856 K, by the formula of CIE 15:2004 (ISO 11664-2), 3.1. */
    A {
        @Override
        double power(int band) {
            double nanometres = 380 + 10 * band;
            return 100 * StrictMath.pow(560 / nanometres, 5)
                    * (StrictMath.exp(1.435e7 / (2848 * 560)) - 1)
                    / (StrictMath.exp(1.435e7 / (2848 * nanometres)) - 1);
        }
    };

    /** Relative spectral power of a band. */
    abstract double power(int band);

    /** X, Y and Z of a perfect white, Y being 1. */
    double[] white() {
        return tristimulus(Spectrum.grey(100));
    }

    /** X, Y and Z of a thing in this light, Y of a perfect white being 1. */
    double[] tristimulus(Spectrum thing) {
        double[] xyz = new double[3];
        double whole = 0;
        for (int band = 0; band < Spectrum.BANDS; band++) {
            for (int i = 0; i < 3; i++) {
                xyz[i] += Tables.OBSERVER[i][band] * power(band) * thing.bands()[band];
            }
            whole += Tables.OBSERVER[1][band] * power(band);
        }
        return new double[] {xyz[0] / whole, xyz[1] / whole, xyz[2] / whole};
    }

    /** Apart, because an enumeration's constants are made before its other fields. */
    private static final class Tables {
        static final Table PUBLISHED = Table.read("light.csv");
        static final double[] D50_POWER = PUBLISHED.column("d50");
        static final double[] D65_POWER = PUBLISHED.column("d65");
        static final double[][] OBSERVER = {PUBLISHED.column("x"), PUBLISHED.column("y"), PUBLISHED.column("z")};
    }
}
