package fascicle.workings;

import fascicle.bath.BoilingPoint;
import fascicle.notebook.Cover;
import fascicle.notebook.Noted;
import java.util.Optional;

/**
 * At what temperature water boils in the workshop.
 *
 * @param metres the height it was reckoned for
 * @param said whether the notebook says that height; where it does not, the workshop is taken to lie at the sea
 * @param refused a height as written that is none of a workshop, and so was not used
 * @param celsius the boiling point, °C
 */
public record Boil(double metres, boolean said, Optional<String> refused, double celsius) {

    /**
     * The boil in a notebook's workshop.
     *
     * @param cover what the notebook says of itself
     * @return the boil at its height; at the sea where that is unsaid, or no height of a workshop
     */
    public static Boil of(Cover cover) {
        return cover.height().map(Noted::value).filter(Boil::isWorkable)
                .map(metres -> new Boil(metres, true, Optional.empty(), BoilingPoint.celsius(metres)))
                .orElse(new Boil(0, false, cover.height().map(Noted::written), BoilingPoint.celsius(0)));
    }

    private static boolean isWorkable(double metres) {
        return metres >= BoilingPoint.LOWEST && metres <= BoilingPoint.HIGHEST;
    }
}
