package fascicle.photo;

import fascicle.colour.Lab;
import fascicle.colour.Matrix;
import fascicle.colour.Xyz;
import java.util.OptionalDouble;

/**
 * The way from a picture's light to colour under D50.
 *
 * @param against what it was found against
 * @param matrix from the picture's linear light to XYZ under D50
 * @param leftOver mean CIEDE2000 of a chart's patches from their known colours; nothing without a chart
 */
record Correction(Sample.Against against, Matrix matrix, OptionalDouble leftOver) {

    Lab lab(Light light) {
        return Xyz.of(matrix.times(light.red(), light.green(), light.blue())).toLab();
    }
}
