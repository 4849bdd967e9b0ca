package fascicle.photo;

import fascicle.colour.Lab;
import java.util.List;

/**
 * A patch of known colour, read.
 *
 * @param lab its known colour
 * @param at where it lies among the stored pixels
 * @param light its light in the picture
 * @param quarters its light in each quarter
 */
record Known(Lab lab, Region at, Light light, List<Light> quarters) {

    /** C*ab up to which a patch is grey enough to serve as a grey card. */
    private static final double GREY = 5;

    boolean grey() {
        return lab.chroma() <= GREY;
    }
}
