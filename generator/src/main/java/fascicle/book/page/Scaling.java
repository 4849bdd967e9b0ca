package fascicle.book.page;

import java.util.List;

/**
 * A recipe worked out for other weights of needles.
 *
 * @param weights the weights, one for each column
 * @param rows what to measure out
 */
public record Scaling(List<String> weights, List<Row> rows) {

    /**
     * One thing to measure out.
     *
     * @param thing what it is
     * @param cells how much of it, in every unit that is known, one cell for each weight
     */
    public record Row(String thing, List<List<String>> cells) {}
}
