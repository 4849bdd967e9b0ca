package fascicle.bath;

import java.util.OptionalInt;

/**
 * A vessel as far as it matters to what is in it.
 *
 * <p>It is filled to three quarters of its height at most, needles included, so that it can be stirred and carried; a
 * gram of dry needles takes about 2 mL of room ({@code common practice, no source}).
 *
 * @param basin its inside
 * @param height its inside height, cm; above 0
 */
public record Pot(Basin basin, double height) {

    /** The room that a gram of dry needles takes, mL. */
    public static final double ROOM_OF_NEEDLES = 2;

    /** How much of its height is filled at most. */
    public static final double FULL = 0.75;

    /**
     * How deep a bath stands at least, needles included, cm: in less, a bundle as thick as a thumb lies bare, and a pan
     * on a stove runs dry ({@code common practice, no source}).
     */
    public static final double LEAST_DEPTH = 2;

    /** What a sum of doubles may add, as a share of a pot. */
    private static final double ROUNDING = 1e-9;

    /** Refuses a vessel without a height or a floor. */
    public Pot {
        if (!(height > 0) || !Double.isFinite(height) || !(basin.area() > 0)) {
            throw new IllegalArgumentException("a vessel has a height and a floor: " + height + " cm, " + basin);
        }
    }

    /**
     * What it holds to the brim.
     *
     * @return in mL
     */
    public double brim() {
        return basin.millilitres(height);
    }

    /**
     * What it takes when it is filled as high as it should be, needles included.
     *
     * @return in mL
     */
    public double capacity() {
        return FULL * brim();
    }

    /**
     * How much of its height is filled once the needles are in.
     *
     * @param liquor in mL
     * @param needles dry, in g
     * @return a share; above 1 it runs over
     */
    public double filledBy(double liquor, double needles) {
        return (liquor + ROOM_OF_NEEDLES * needles) / brim();
    }

    /**
     * How deep a liquor stands in it before the needles.
     *
     * @param liquor in mL
     * @return in cm
     */
    public double depthOf(double liquor) {
        return liquor / basin.area();
    }

    /**
     * Into how many equal pots like this a batch must be shared out.
     *
     * <p>Each of n pots holds V/n of the liquor, or what covers the needles if that is more, and m/n of the needles:
     * n is the least for which both V/n + 2·m/n and cover + 2·m/n are no more than the capacity.
     *
     * @param liquor of the whole batch, mL
     * @param needles of the whole batch, dry, g
     * @param cover the liquor that each pot needs whatever its needles, mL; 0 where none is asked for
     * @return how many, from 1 on; nothing where the cover alone leaves no room for needles
     */
    public OptionalInt potsFor(double liquor, double needles, double cover) {
        double room = ROOM_OF_NEEDLES * needles;
        double left = capacity() - cover;
        if (!(left > 0)) {
            return OptionalInt.empty();
        }
        double pots = StrictMath.max((liquor + room) / capacity(), room / left);
        return OptionalInt.of((int) StrictMath.max(1, StrictMath.ceil(pots - ROUNDING)));
    }
}
