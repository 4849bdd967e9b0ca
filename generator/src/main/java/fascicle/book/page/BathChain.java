package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * One bath and the batches it served, of which a page's entry is one.
 *
 * @param served how many batches it served so far, in a sentence
 * @param rungs the batches in order
 * @param found what stood in the pot when this entry came to it, and what it lacked; empty where the bath was fresh
 * @param next the bath as it stands now, on the page of the last batch
 */
public record BathChain(String served, List<Rung> rungs, List<Fact> found, Optional<Next> next) {

    /**
     * The next batch.
     *
     * @param like what it is taken to be, in words
     * @param facts what stands in the pot now, and what that batch would need on top
     */
    public record Next(String like, List<Fact> facts) {}

    /**
     * One batch.
     *
     * @param swatch its colour, small
     * @param entry the way to it
     * @param here whether it is the page's own entry
     * @param lines what was added, taken up and left
     */
    public record Rung(Markup swatch, Link entry, boolean here, List<String> lines) {}
}
