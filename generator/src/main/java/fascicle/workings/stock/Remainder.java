package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is left of something.
 *
 * @param had how much there was
 * @param used how much was taken of it
 */
public record Remainder(Total had, Total used) {

    /** What sums of doubles may add, as a share. */
    private static final double ROUNDING = 1e-9;

    /**
     * How much is left.
     *
     * @return unknown where anything is; below 0 where more was used than there was
     */
    public Magnitude left() {
        return used.gaps().isEmpty() ? atMost() : Magnitude.UNKNOWN;
    }

    /**
     * How much can be left at most.
     *
     * @return what there was less what is known to be used; unknown where it is not known what there was
     */
    public Magnitude atMost() {
        Magnitude left = had.whole().minus(used.known());
        boolean rounded = left.known()
                && StrictMath.abs(left.orThrow()) <= StrictMath.abs(had.known().orThrow()) * ROUNDING;
        return rounded ? Magnitude.ZERO.about(left.about()) : left;
    }

    /**
     * Whether more was used than there was, even by what is known alone.
     *
     * @return false where it is not known what there was
     */
    public boolean isOverdrawn() {
        return atMost().known() && atMost().orThrow() < 0;
    }

    /**
     * Whether nothing can be left.
     *
     * @return false where something may be
     */
    public boolean isUsedUp() {
        return atMost().known() && atMost().orThrow() <= 0;
    }

    /**
     * What would make it known.
     *
     * @return none where it is
     */
    public List<Gap> gaps() {
        Set<Gap> gaps = new LinkedHashSet<>(had.gaps());
        gaps.addAll(used.gaps());
        return List.copyOf(gaps);
    }
}
