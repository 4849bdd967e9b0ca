package fascicle.photo;

import fascicle.colour.Lab;
import fascicle.colour.Matrix;
import fascicle.colour.Xyz;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fits the matrix that carries the picture's linear light to the known XYZ of a chart's patches.
 *
 * <p>It is the least-squares fit of the differences that are seen: each patch's difference in XYZ is carried to
 * lightness, chroma and hue by the slopes of Lab at its known colour, and chroma and hue weigh less the farther from
 * grey, with the weights of CIE94 (CIE 116-1995), so that dark patches count as much as bright ones and vivid ones no
 * more than dull ones. The problem stays linear in the nine elements. Of 24 patches under tungsten light (illuminant A)
 * a fit of plain XYZ leaves a CIEDE2000 of at most 2.9, this one of 2.0.
 *
 * <p>A patch whose light is cut off is no linear reading any more and takes no part: with such patches the fit of the
 * same chart leaves up to 11, without them the others up to 2.
 */
final class Chart {

    /** Twice what a matrix needs at the least: three patches fix it, and what is left over then says nothing. */
    private static final int FEWEST = 6;

    private static final int ELEMENTS = 9;

    private Chart() {}

    /**
     * The fit.
     *
     * @return nothing where patches are too few or too much alike to fix a matrix
     */
    static Optional<Correction> correction(List<Known> patches) {
        List<Known> whole = patches.stream().filter(patch -> !patch.light().clipped()).toList();
        if (whole.size() < FEWEST || whole.stream().allMatch(Known::grey)) {
            return Optional.empty();
        }
        NormalEquations equations = new NormalEquations(ELEMENTS);
        for (Known patch : whole) {
            addTo(equations, patch);
        }
        return equations.solution().map(elements -> correction(matrix(elements), whole));
    }

    private static Correction correction(Matrix matrix, List<Known> patches) {
        return new Correction(Sample.Against.CHART, matrix, OptionalDouble.empty()).over(patches);
    }

    /** Three equations of a patch: its lightness, chroma and hue should not differ. */
    private static void addTo(NormalEquations equations, Known patch) {
        double[] known = Xyz.of(patch.lab()).toArray();
        double[] light = {patch.light().red(), patch.light().green(), patch.light().blue()};
        for (double[] slope : slopes(patch.lab(), known)) {
            double[] factors = new double[ELEMENTS];
            double wanted = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    factors[3 * i + j] = slope[i] * light[j];
                }
                wanted += slope[i] * known[i];
            }
            equations.add(factors, wanted);
        }
    }

    /** How lightness, weighted chroma and weighted hue change with X, Y and Z. */
    private static double[][] slopes(Lab lab, double[] known) {
        double[] white = Xyz.D50.toArray();
        double x = slope(known[0] / white[0]) / white[0];
        double y = slope(known[1] / white[1]) / white[1];
        double z = slope(known[2] / white[2]) / white[2];
        double chroma = lab.chroma();
        double cosine = chroma == 0 ? 1 : lab.a() / chroma;
        double sine = chroma == 0 ? 0 : lab.b() / chroma;
        double forChroma = 1 / (1 + 0.045 * chroma);
        double forHue = 1 / (1 + 0.015 * chroma);
        double[] a = {500 * x, -500 * y, 0};
        double[] b = {0, 200 * y, -200 * z};
        double[][] slopes = new double[3][3];
        slopes[0][1] = 116 * y;
        for (int i = 0; i < 3; i++) {
            slopes[1][i] = forChroma * (cosine * a[i] + sine * b[i]);
            slopes[2][i] = forHue * (cosine * b[i] - sine * a[i]);
        }
        return slopes;
    }

    /** The slope of Lab's cube root, and of the straight line that takes its place near black. */
    private static double slope(double ratio) {
        if (ratio <= 216.0 / 24389) {
            return 24389.0 / 27 / 116;
        }
        double root = StrictMath.cbrt(ratio);
        return 1 / (3 * root * root);
    }

    private static Matrix matrix(double[] elements) {
        return Matrix.ofRows(
                new double[] {elements[0], elements[1], elements[2]},
                new double[] {elements[3], elements[4], elements[5]},
                new double[] {elements[6], elements[7], elements[8]});
    }
}
