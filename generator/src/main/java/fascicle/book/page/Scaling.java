package fascicle.book.page;

import java.util.List;

/**
 * A recipe worked out for other weights of needles.
 *
 * @param weights the weights, one for each column
 * @param rows what to measure out
 * @param remarks what to know beside it, in sentences
 * @param doses what the page's script works it out from for a weight that is typed there: JSON that stands in an
 *     attribute between single quotation marks
 */
public record Scaling(List<String> weights, List<Row> rows, List<String> remarks, Markup doses) {

    /**
     * One thing to measure out.
     *
     * @param thing what it is
     * @param cells how much of it, in every unit that is known, one cell for each weight
     */
    public record Row(String thing, List<List<String>> cells) {}
}
