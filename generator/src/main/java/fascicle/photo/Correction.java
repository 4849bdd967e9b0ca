package fascicle.photo;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.Matrix;
import fascicle.colour.Xyz;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The way from a picture's light to colour under D50.
 *
 * @param against what it was found against
 * @param matrix from the picture's linear light to XYZ under D50
 * @param leftOver mean CIEDE2000 of patches from their known colours; nothing where all are grey
 */
record Correction(Sample.Against against, Matrix matrix, OptionalDouble leftOver) {

    /** The same correction with what it leaves over of patches, where any of them has a colour. */
    Correction over(List<Known> patches) {
        return patches.stream().allMatch(Known::grey) ? this : new Correction(against, matrix, patches.stream()
                .mapToDouble(patch -> ColourDifference.ciede2000(patch.lab(), lab(patch.light()))).average());
    }

    Lab lab(Light light) {
        return Xyz.of(matrix.times(light.red(), light.green(), light.blue())).toLab();
    }
}
