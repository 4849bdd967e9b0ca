package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * The sample string: every dyed sample in an order.
 *
 * @param frame what stands round it
 * @param orders the ways to the string in each order, this one without a way
 * @param said how it is ordered, in words
 * @param lengths the string, length by length; none where no entry has a colour
 * @param without how many entries have no colour, in words
 */
public record StringPage(Frame frame, List<Link> orders, String said, List<Length> lengths, Optional<String> without)
        implements Page {

    @Override
    public String template() {
        return "string.ftlh";
    }

    /**
     * A length of the string.
     *
     * @param title what its samples have in common
     * @param groups its samples, in groups that a browser can lay out one by one
     */
    public record Length(String title, List<Group> groups) {}

    /**
     * Some samples.
     *
     * @param samples in order
     */
    public record Group(List<Hanging> samples) {}
}
