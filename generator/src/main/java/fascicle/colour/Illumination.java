package fascicle.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * An illuminant as the CIE 1931 standard observer (2°) sees it: how much each band of 10 nm from 380 to 730 adds to X,
 * Y and Z.
 *
 * <p>Sums in steps of 10 nm, as CIE 15:2004 (7.2) allows. What lies beyond 380 and 730 nm adds less than a
 * two-thousandth to any of the three sums.
 */
final class Illumination {

    /** The shortest wavelength of a band, in nm. */
    static final int SHORTEST = 380;

    /** From one band to the next, in nm. */
    static final int STEP = 10;

    /** How many bands there are. */
    static final int BANDS = 36;

    private static final List<double[]> TABLE = load();

    /** Daylight of 5003 K. */
    static final Illumination D50 = of(TABLE.stream().mapToDouble(line -> line[4]).toArray());

    private final double[][] weights;
    private final double[] white;

    private Illumination(double[][] weights, double[] white) {
        this.weights = weights;
        this.white = white;
    }

    /** The illuminant of this relative power in each band. */
    static Illumination of(double[] power) {
        if (power.length != BANDS) {
            throw new IllegalArgumentException("not " + BANDS + " bands: " + power.length);
        }
        double[][] weights = new double[BANDS][3];
        double[] white = new double[3];
        for (int band = 0; band < BANDS; band++) {
            for (int i = 0; i < 3; i++) {
                weights[band][i] = TABLE.get(band)[i + 1] * power[band];
                white[i] += weights[band][i];
            }
        }
        return new Illumination(weights, white);
    }

    /**
     * XYZ of a surface, each as a share of the perfect white's.
     *
     * @param factors the reflectance factor in each band
     */
    double[] shares(double[] factors) {
        double[] shares = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = 0;
            for (int band = 0; band < BANDS; band++) {
                sum += weights[band][i] * factors[band];
            }
            shares[i] = sum / white[i];
        }
        return shares;
    }

    /** XYZ of the perfect white, Y being 1. */
    Xyz white() {
        return new Xyz(white[0] / white[1], 1, white[2] / white[1]);
    }

    /** What a band adds to X, Y and Z of the perfect white, unscaled. */
    double[] weights(int band) {
        return weights[band].clone();
    }

    private static List<double[]> load() {
        try (InputStream stream = Illumination.class.getResourceAsStream("observer-d50.csv")) {
            if (stream == null) {
                throw new IllegalStateException("observer-d50.csv is missing from the program");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(Illumination::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] read(String line) {
        String[] cells = line.split(",");
        double[] numbers = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            numbers[i] = Double.parseDouble(cells[i]);
        }
        return numbers;
    }
}
