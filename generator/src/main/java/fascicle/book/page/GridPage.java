package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * Dyes on conditions of the needles.
 *
 * @param frame what stands round it
 * @param grids the grid, in pieces that a browser can lay out one by one; none where there is nothing to lay out
 * @param aside how many entries have no place in it, in words
 */
public record GridPage(Frame frame, List<Grid> grids, Optional<String> aside) implements Page {

    @Override
    public String template() {
        return "grid.ftlh";
    }
}
