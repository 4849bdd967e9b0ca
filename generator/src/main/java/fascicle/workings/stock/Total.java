package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A sum of amounts of which some may be unknown.
 *
 * @param known what the known ones come to; the sum is at least this
 * @param gaps what would make the others known, in the notebook's order; none where all are
 */
public record Total(Magnitude known, List<Gap> gaps) {

    /** Nothing, and that for sure. */
    static final Total NOTHING = new Total(Magnitude.ZERO, List.of());

    /** An amount that is known. */
    static Total of(Magnitude amount) {
        return new Total(amount, List.of());
    }

    /** An amount that is not. */
    static Total unknown(Gap gap) {
        return new Total(Magnitude.ZERO, List.of(gap));
    }

    /** The sum of totals, in their order. */
    static Total sum(Collection<Total> totals) {
        Magnitude known = Magnitude.ZERO;
        Set<Gap> gaps = new LinkedHashSet<>();
        for (Total total : totals) {
            known = known.plus(total.known);
            gaps.addAll(total.gaps);
        }
        return new Total(known, List.copyOf(gaps));
    }

    /** So many times this. */
    Total times(double factor) {
        return new Total(known.times(factor), gaps);
    }

    /**
     * The whole sum.
     *
     * @return unknown where any part is
     */
    public Magnitude whole() {
        return gaps.isEmpty() ? known : Magnitude.UNKNOWN;
    }
}
