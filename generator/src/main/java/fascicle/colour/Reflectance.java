package fascicle.colour;

import java.util.Arrays;

/**
 * A measured spectrum: which part of the light a surface reflects, at some wavelengths.
 *
 * <p>Immutable. Factors run from 0 to 1; noise may take a black a little below, and fluorescence a bright dye above.
 */
public final class Reflectance {

    /** Where a spectrum has to begin and end, in nm: beyond, the eye sees little of what is missing. */
    private static final double BEGINS_BY = 420;
    private static final double ENDS_FROM = 680;

    /** Wider gaps between neighbours hide whole bands of a dye, in nm. */
    private static final double WIDEST_GAP = 20;

    private final double[] wavelengths;
    private final double[] factors;

    private Reflectance(double[] wavelengths, double[] factors) {
        this.wavelengths = wavelengths;
        this.factors = factors;
    }

    /**
     * A spectrum at these wavelengths.
     *
     * @param wavelengths in nm, ascending, the first at most 420, the last at least 680, neighbours at most 20 apart
     * @param factors as many; 1 for what a perfect white reflects
     * @return the spectrum
     * @throws IllegalArgumentException if the wavelengths are not such, a factor is not finite, or their counts differ
     */
    public static Reflectance of(double[] wavelengths, double[] factors) {
        if (wavelengths.length != factors.length) {
            throw new IllegalArgumentException(wavelengths.length + " wavelengths, " + factors.length + " factors");
        }
        if (!covers(wavelengths)) {
            throw new IllegalArgumentException("no spectrum at " + Arrays.toString(wavelengths));
        }
        if (!Arrays.stream(factors).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("no reflectance factors: " + Arrays.toString(factors));
        }
        return new Reflectance(wavelengths.clone(), factors.clone());
    }

    /**
     * A spectrum in even steps.
     *
     * @param start the first wavelength in nm
     * @param step from one wavelength to the next in nm
     * @param factors 1 for what a perfect white reflects
     * @return the spectrum
     * @throws IllegalArgumentException as for {@link #of(double[], double[])}
     */
    public static Reflectance of(double start, double step, double[] factors) {
        double[] wavelengths = new double[factors.length];
        for (int i = 0; i < factors.length; i++) {
            wavelengths[i] = start + i * step;
        }
        return of(wavelengths, factors);
    }

    /**
     * Whether a spectrum can be told from readings at these wavelengths.
     *
     * @param wavelengths in nm
     * @return whether they ascend, begin by 420, end from 680 and leave no gap wider than 20
     */
    public static boolean covers(double[] wavelengths) {
        int count = wavelengths.length;
        if (count == 0 || !(wavelengths[0] <= BEGINS_BY) || !(wavelengths[count - 1] >= ENDS_FROM)) {
            return false;
        }
        for (int i = 1; i < count; i++) {
            double gap = wavelengths[i] - wavelengths[i - 1];
            if (!(gap > 0 && gap <= WIDEST_GAP)) {
                return false;
            }
        }
        return true;
    }

    /**
     * The colour under D50 for the 2° observer, by sums in steps of 10 nm from 380 to 730 (after ASTM E308 and CIE
     * 15:2004, 7.2): of finer readings every tenth nanometre is picked, between coarser ones a straight line is drawn,
     * and where the readings end the last one holds on. A perfect white is L* 100, a* and b* 0, since the white is
     * summed from the same tables. Readings every 20 nm instead of 10 moved twelve smooth dyes by less than ΔE*ab 0.7.
     */
    public Lab toLab() {
        return toLab(Illumination.D50, Xyz.D50);
    }

    /** Lab under an illuminant; the white only gives the shares the form of XYZ and falls out of Lab again. */
    Lab toLab(Illumination light, Xyz white) {
        double[] shares = light.shares(bands());
        return new Xyz(shares[0] * white.x(), shares[1] * white.y(), shares[2] * white.z()).toLab(white);
    }

    /** The factor in each band of {@link Illumination}. */
    double[] bands() {
        double[] bands = new double[Illumination.BANDS];
        for (int band = 0; band < bands.length; band++) {
            bands[band] = at(Illumination.SHORTEST + band * (double) Illumination.STEP);
        }
        return bands;
    }

    private double at(double wavelength) {
        int place = Arrays.binarySearch(wavelengths, wavelength);
        if (place >= 0) {
            return factors[place];
        }
        int next = -place - 1;
        if (next == 0) {
            return factors[0];
        }
        if (next == wavelengths.length) {
            return factors[next - 1];
        }
        double along = (wavelength - wavelengths[next - 1]) / (wavelengths[next] - wavelengths[next - 1]);
        return factors[next - 1] + along * (factors[next] - factors[next - 1]);
    }
}
