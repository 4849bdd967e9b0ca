package fascicle.notebook;

import java.util.List;
import java.util.Optional;

/**
 * How an entry came out.
 *
 * @param verdict whether it worked
 * @param evenness how evenly the batch took, 1 to 5
 * @param feel how the needles feel
 * @param faults what is wrong with them
 */
public record Outcome(Optional<Noted<Verdict>> verdict, Optional<Noted<Integer>> evenness, Optional<Noted<Feel>> feel,
        List<Noted<Fault>> faults) {

    /** Whether an entry worked. */
    public enum Verdict implements Word {
        /** To be done again. */
        WORKED,
        /** Of some use. */
        PARTLY,
        /** Of no use but to learn from. */
        FAILED
    }

    /** How dyed needles feel. */
    public enum Feel implements Word {
        /** They bend. */
        SUPPLE,
        /** They bend unwillingly. */
        STIFF,
        /** They break. */
        BRITTLE
    }

    /** What is wrong with dyed needles. */
    public enum Fault implements Word {
        /** Too pale. */
        PALE,
        /** Uneven. */
        UNEVEN,
        /** Not the colour meant. */
        OFF_SHADE,
        /** The dye bled. */
        BLED,
        /** They break. */
        BRITTLE,
        /** They stick. */
        STICKY,
        /** They moulded. */
        MOULD
    }
}
