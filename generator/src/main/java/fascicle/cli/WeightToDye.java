package fascicle.cli;

import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;

/** A weight of dry needles as a call names it. */
final class WeightToDye {

    /** A ton, beyond which nobody dyes and figures lose their sense. */
    private static final double MOST = 1_000_000;

    private WeightToDye() {}

    /** The weight in g; a wrong call where it is none. */
    static double grams(String written, Kitchen kitchen) {
        try {
            double grams = Quantity.read(written, Dimension.MASS, kitchen).value();
            if (grams > 0 && grams <= MOST) {
                return grams;
            }
            throw new WrongCall("“" + written + "” is no weight to dye; name one above 0 g, such as 120 g"
                    + (grams > MOST ? ", and below a ton." : "."));
        } catch (UnreadableQuantity unreadable) {
            throw new WrongCall(unreadable.getMessage() + ".");
        }
    }
}
