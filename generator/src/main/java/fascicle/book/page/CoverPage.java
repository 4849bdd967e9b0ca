package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * The book's first page.
 *
 * @param frame what stands round it
 * @param maker who keeps the notebook
 * @param counts what the book holds, in words
 * @param lists the ways to the lists, with what is behind them
 * @param newest the newest dye days
 * @param missing what errors kept out
 */
public record CoverPage(Frame frame, Optional<String> maker, String counts, List<ListDoor> lists,
        List<GroupRow> newest, List<Absent> missing) implements Page {

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
     * Something that errors kept out.
     *
     * @param what its id or file
     * @param why what is wrong with it
     */
    public record Absent(String what, List<String> why) {}
}
