package fascicle.photo;

import fascicle.colour.Lab;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How much of the light a thing reflects, from 380 to 730 nm by 10.
 *
 * @param bands shares of the light, 36 of them
 */
record Spectrum(double[] bands) {

    static final int BANDS = 36;

    private static final Table KNOWN = Table.read("reflectances.csv");

    /** A colour of reflectances.csv, by the six digits that it has as sRGB under D65. */
    static Spectrum of(String hex) {
        return new Spectrum(KNOWN.column(hex));
    }

    /** The colours of reflectances.csv. */
    static List<String> names() {
        return KNOWN.columns().subList(1, KNOWN.columns().size());
    }

    static Spectrum grey(double percent) {
        return of(band -> percent / 100);
    }

    /** The same stuff, dyed deeper (above 1) or paler (below 1). */
    Spectrum deeper(double power) {
        return of(band -> StrictMath.pow(bands[band], power));
    }

    /** Both laid over one another: the geometric mean. */
    Spectrum over(Spectrum other) {
        return of(band -> StrictMath.sqrt(bands[band] * other.bands[band]));
    }

    /** The known colour: Lab under D50 (CIE 15:2004), from the sums over the bands. */
    Lab lab() {
        double[] xyz = Illuminant.D50.tristimulus(this);
        double[] white = Illuminant.D50.white();
        double x = compress(xyz[0] / white[0]);
        double y = compress(xyz[1] / white[1]);
        double z = compress(xyz[2] / white[2]);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /**
     * A chart of 24 patches in rows of six: the colours of reflectances.csv, paler than the needles have them, six laid
     * over one another, and six greys. No patch has the spectrum of any needles.
     */
    static List<Spectrum> chart() {
        List<Spectrum> colours = names().stream().map(Spectrum::of).toList();
        return IntStream.range(0, 24).mapToObj(patch -> {
            if (patch < 12) {
                return colours.get(patch).deeper(patch % 2 == 0 ? 0.6 : 0.85);
            }
            if (patch < 18) {
                return colours.get(patch - 12).over(colours.get((patch - 12) * 5 % 12 + 1)).deeper(0.8);
            }
            return grey(new double[] {90, 59, 36, 19, 9, 3.2}[patch - 18]);
        }).toList();
    }

    @Override
    public String toString() {
        return Arrays.toString(bands);
    }

    private static Spectrum of(IntToDoubleFunction band) {
        return new Spectrum(IntStream.range(0, BANDS).mapToDouble(band).toArray());
    }

    private static double compress(double ratio) {
        return ratio > 216.0 / 24389 ? StrictMath.cbrt(ratio) : (24389.0 / 27 * ratio + 16) / 116;
    }
}
