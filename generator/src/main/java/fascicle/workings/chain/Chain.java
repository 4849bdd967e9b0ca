package fascicle.workings.chain;

import fascicle.workings.EntryWorking;
import java.util.List;

/**
 * One bath and all that it served.
 *
 * @param batches in the order in which they were dyed, the first with the fresh bath
 * @param next the bath as it stands now, and what another batch like the last would need on top
 */
public record Chain(List<Batch> batches, Standing next) {

    /**
     * One of them.
     *
     * @param entry the entry
     * @param left what it left of each dye
     * @param judged whether its maker judged that by eye, which goes before all glasses
     */
    public record Batch(EntryWorking entry, List<Left> left, boolean judged) {}

    /**
     * What was left of a dye.
     *
     * @param is its id
     * @param called its title
     * @param grams as estimated, g
     * @param ml the same, mL of the dye as sold
     */
    public record Left(String is, String called, Estimate grams, Estimate ml) {}

    /**
     * The entry that dyed with the fresh bath, or the first that is known.
     *
     * @return the first
     */
    public EntryWorking first() {
        return batches.get(0).entry();
    }
}
