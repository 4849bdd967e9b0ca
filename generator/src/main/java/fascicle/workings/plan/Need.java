package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.measure.Dimension;
import fascicle.workings.stock.Supply;
import java.util.Optional;

/**
 * How much of a thing a plan needs, against what is on the shelf.
 *
 * @param is the thing's id
 * @param called its title
 * @param grams of it in all; unknown where some of it is
 * @param millilitres of it in all, of the thing as sold
 * @param supply what is left of it; nothing where nothing is known of such a thing
 */
public record Need(String is, String called, Magnitude grams, Magnitude millilitres, Optional<Supply> supply) {

    /**
     * How much is needed, measured as the pack is.
     *
     * @return g or mL; unknown where that is not known
     */
    public Magnitude needed() {
        return supply.map(Supply::measured).orElse(Dimension.MASS) == Dimension.VOLUME ? millilitres : grams;
    }

    /**
     * What is left after the day.
     *
     * @return in the measure of {@link #needed}; below 0 where the shelf holds too little
     */
    public Magnitude after() {
        return supply.map(found -> found.remainder().left().minus(needed())).orElse(Magnitude.UNKNOWN);
    }

    /**
     * Whether the shelf is known to hold too little.
     *
     * @return false where it holds enough, or nobody knows
     */
    public boolean isShort() {
        Magnitude most = supply.map(found -> found.remainder().atMost().minus(needed())).orElse(Magnitude.UNKNOWN);
        return most.known() && most.orThrow() < 0;
    }
}
