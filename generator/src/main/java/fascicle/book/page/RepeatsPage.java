package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * Repeats of the same recipe, side by side.
 *
 * @param frame what stands round it
 * @param groups the repeats, in groups that a browser can lay out one by one; none where nothing was repeated
 */
public record RepeatsPage(Frame frame, List<Group> groups) implements Page {

    @Override
    public String template() {
        return "repeats.ftlh";
    }

    /**
     * Some repeats.
     *
     * @param caption which ones, in words
     * @param repeats a row each
     */
    public record Group(String caption, List<Repeat> repeats) {}

    /**
     * One recipe's repeats.
     *
     * @param recipe the method and the dyes
     * @param needles the condition and species they have in common
     * @param count how many entries on how many days
     * @param samples the entries
     * @param spread how far their colours lie from their mean, or why that is not known
     * @param largest the largest difference between two
     * @param remarks what to bear in mind
     */
    public record Repeat(List<Link> recipe, List<Link> needles, String count, List<Hanging> samples, String spread,
            Optional<String> largest, List<String> remarks) {}
}
