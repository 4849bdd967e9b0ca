package fascicle.workings.chain;

import fascicle.bath.Magnitude;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A standing bath as it came to a batch: what was left in it, and what brings it back to the first bath's depth. All of
 * it is estimated.
 *
 * @param liquorMl liquid that stood in the pot, where the maker measured it, mL
 * @param dye what was left of each dye
 * @param assistants what was left of salt and acid
 * @param why what keeps the dye from being known; nothing where it is known
 */
public record Standing(Magnitude liquorMl, List<Dye> dye, List<Assistant> assistants, Optional<Why> why) {

    /**
     * What was left of a dye.
     *
     * @param is its id
     * @param called its title
     * @param grams what was left, g
     * @param ml the same, mL of the dye as sold
     * @param topUp what is lacking for the needles at hand at the first bath's depth, g; more than that is in it
     *     already where this is 0
     * @param topUpMl the same, mL
     */
    public record Dye(String is, String called, Estimate grams, Estimate ml, Estimate topUp, Estimate topUpMl) {}

    /**
     * What was left of salt or acid.
     *
     * @param is its id
     * @param called its title
     * @param grams what was left, g
     * @param ml what was left, mL of the thing as sold
     * @param topUpGrams what is lacking for as much in every litre as in the first bath, g
     * @param topUpMl the same, mL
     */
    public record Assistant(String is, String called, OptionalDouble grams, OptionalDouble ml,
            OptionalDouble topUpGrams, OptionalDouble topUpMl) {}

    /**
     * What keeps it from being known.
     *
     * @param kind what is missing
     * @param entry the id of the entry that could tell
     */
    public record Why(Kind kind, String entry) {}

    /** What may be missing. */
    public enum Kind {
        /** The entry whose bath it was is not there. */
        EARLIER_MISSING,
        /** The amount of a dye that went in is unknown. */
        DYE_AMOUNT,
        /** Neither glasses nor the maker say how much dye was left. */
        SHARE,
        /** The glasses tell a range only. */
        RANGE
    }
}
