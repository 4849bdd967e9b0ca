package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.Optional;

/**
 * The bundle of an entry.
 *
 * @param lot the id of its lot
 * @param from the id of the entry whose kept needles these are (an over-dye)
 * @param weight its weight
 * @param bundles how many bundles of the lot, where they were counted and not weighed
 * @param sheaths whether the sheaths are on
 * @param weighed in what state it was weighed; dry where unsaid
 */
public record Needles(Optional<Noted<String>> lot, Optional<Noted<String>> from, Optional<Noted<Quantity>> weight,
        Optional<Noted<Double>> bundles, Optional<Noted<Sheaths>> sheaths, Optional<Noted<Weighed>> weighed) {

    /** Needles of which nothing was said. */
    public static final Needles UNSAID = new Needles(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * In what state the needles were weighed.
     *
     * @return dry where the maker did not say
     */
    public Weighed state() {
        return weighed.map(Noted::value).orElse(Weighed.DRY);
    }

    /**
     * The same needles, of which it is not said from which entry they are.
     *
     * @return a copy
     */
    public Needles withoutSource() {
        return new Needles(lot, Optional.empty(), weight, bundles, sheaths, weighed);
    }

    /** The sheaths that hold a bundle of needles. */
    public enum Sheaths implements Word {
        /** Left on. */
        ON,
        /** Taken off. */
        OFF
    }

    /** In what state needles were weighed. Only dry weights carry {@code owf}. */
    public enum Weighed implements Word {
        /** Dry. */
        DRY,
        /** Damp. */
        DAMP,
        /** Green. */
        FRESH,
        /** Not weighed: the dry weight was guessed. */
        GUESSED
    }
}
