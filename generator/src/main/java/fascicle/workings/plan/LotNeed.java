package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.notebook.NeedleLot;
import java.util.List;
import java.util.Optional;

/**
 * What a plan takes of one needle lot, for all methods that are to be done on it.
 *
 * @param lot the lot
 * @param letters the letters of those methods
 * @param grams of dry needles for all of them
 * @param left what is left of it, g
 */
public record LotNeed(NeedleLot lot, List<String> letters, double grams, Magnitude left) {

    /**
     * Whether the lot has so much.
     *
     * @return nothing where it is not known what is left
     */
    public Optional<Boolean> enough() {
        return left.known() ? Optional.of(left.orThrow() >= grams) : Optional.empty();
    }
}
