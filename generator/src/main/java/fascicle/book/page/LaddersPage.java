package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * The depth ladders of all dyes.
 *
 * @param frame what stands round it
 * @param ladders the dyes that were tried at more than one depth
 * @param single the dyes that were tried at one depth, in words
 */
public record LaddersPage(Frame frame, List<Ladder> ladders, Optional<String> single) implements Page {

    @Override
    public String template() {
        return "ladders.ftlh";
    }

    /**
     * A dye's ladder.
     *
     * @param dye the way to the dye
     * @param grid its depths on the conditions
     */
    public record Ladder(Link dye, Grid grid) {}
}
