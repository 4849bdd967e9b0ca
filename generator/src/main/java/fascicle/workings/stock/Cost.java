package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import java.util.List;

/**
 * What went into a pot, in the notebook's currency: dyes and assistants of all its baths. Water, heat, needles and work
 * are not counted.
 *
 * @param total of the pot
 * @param per100g for 100 g of dry needles
 * @param gaps what would make both known; none where they are
 */
public record Cost(Magnitude total, Magnitude per100g, List<Gap> gaps) {

    static Cost of(Total total, Total needles) {
        Magnitude whole = total.whole();
        return new Cost(whole, whole.over(needles.whole()).times(100),
                Total.sum(List.of(total, needles)).gaps());
    }
}
