package fascicle.cli;

import fascicle.bath.Batch;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;

/** A weight of dry needles as a call names it; an exact one, as on a page's own form. */
final class WeightToDye {

    private WeightToDye() {}

    /** The weight in g; a wrong call where it is none, or a rough one. */
    static double grams(String written, Kitchen kitchen) {
        try {
            Quantity weight = Quantity.read(written, Dimension.MASS, kitchen);
            if (weight.about()) {
                throw new WrongCall("“" + written + "” is rough, and a weight to work out is exact; write it without "
                        + "“about”, such as 50 g.");
            }
            double grams = weight.value();
            if (grams > 0 && grams <= Batch.MOST_NEEDLES) {
                return grams;
            }
            throw new WrongCall("“" + written + "” is no weight to dye; name one above 0 g, such as 120 g"
                    + (grams > Batch.MOST_NEEDLES ? ", and below a ton." : "."));
        } catch (UnreadableQuantity unreadable) {
            throw new WrongCall(unreadable.getMessage() + ".");
        }
    }
}
