package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.Optional;

/**
 * The bath looked at in a glass, in the same light.
 *
 * @param plain plain water
 * @param before the bath before the needles
 * @param after the bath after them
 * @param diluted how many times the glasses were diluted to be seen through
 * @param left how much bath was left
 */
public record Glass(Optional<Reading> plain, Optional<Reading> before, Optional<Reading> after,
        Diluted diluted, Optional<Noted<Quantity>> left) {

    /**
     * What was left, where that was anything. A bath of nothing has no glass to look at, so that 0 L was never
     * measured.
     *
     * @return how much, above 0
     */
    public Optional<Noted<Quantity>> measuredLeft() {
        return left.filter(noted -> noted.value().value() > 0);
    }

    /**
     * How many times glasses were diluted; a number without a key is for both.
     *
     * @param before the bath before the needles; nothing where it was not
     * @param after the bath after them; nothing where it was not
     */
    public record Diluted(Optional<Noted<Double>> before, Optional<Noted<Double>> after) {

        /** Neither glass. */
        public static final Diluted NOT = new Diluted(Optional.empty(), Optional.empty());
    }
}
