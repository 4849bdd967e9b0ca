package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * The book's first page.
 *
 * @param frame what stands round it
 * @param maker who keeps the notebook
 * @param counts what the book holds, in words
 * @param string some of what worked, in order of hue
 * @param strings the ways to the whole sample string
 * @param asks the ways into the look-up by the condition of the needles
 * @param lists the ways to the lists, with what is behind them
 * @param newest the newest dye days
 * @param missing what errors kept out
 */
public record CoverPage(Frame frame, Optional<String> maker, String counts, List<Hanging> string, List<Link> strings,
        List<ListDoor> asks, List<ListDoor> lists, List<DyeDay> newest, List<Absent> missing) implements Page {

    @Override
    public String template() {
        return "cover.ftlh";
    }

    /**
     * The way to a list.
     *
     * @param list the way
     * @param count how many it holds
     */
    public record ListDoor(Link list, int count) {}

    /**
     * A dye day.
     *
     * @param day the way to it
     * @param string its bundles
     * @param entries its entries, and how they came out
     */
    public record DyeDay(Link day, List<Hanging> string, List<Pot> entries) {}

    /**
     * An entry of a dye day.
     *
     * @param entry the way to it
     * @param verdict whether it worked
     */
    public record Pot(Link entry, Optional<Verdict> verdict) {}

    /**
     * Something that errors kept out.
     *
     * @param what its id or file
     * @param why what is wrong with it
     */
    public record Absent(String what, List<String> why) {}
}
