package fascicle.workings;

import fascicle.bath.BoilingPoint;
import fascicle.measure.Quantity;
import fascicle.notebook.Cover;
import fascicle.notebook.Noted;

/**
 * At what temperature water boils in the workshop.
 *
 * @param metres the height it was reckoned for
 * @param said whether the notebook says that height; where it does not, the workshop is taken to lie at the sea
 * @param celsius the boiling point, °C
 */
public record Boil(double metres, boolean said, double celsius) {

    private static final double CENTIMETRES_IN_A_METRE = 100;

    /**
     * The boil in a notebook's workshop.
     *
     * @param cover what the notebook says of itself
     * @return the boil at its height; at the sea where that is unsaid, or no height of a workshop
     */
    public static Boil of(Cover cover) {
        return cover.height().map(Noted::value).map(Boil::metres).filter(Boil::isWorkable)
                .map(metres -> new Boil(metres, true, BoilingPoint.celsius(metres)))
                .orElse(new Boil(0, false, BoilingPoint.celsius(0)));
    }

    /** Whether a workshop may stand as high as the notebook says. */
    static boolean isWorkable(double metres) {
        return metres >= BoilingPoint.LOWEST && metres <= BoilingPoint.HIGHEST;
    }

    /** A height in metres. */
    static double metres(Quantity height) {
        return height.value() / CENTIMETRES_IN_A_METRE;
    }
}
