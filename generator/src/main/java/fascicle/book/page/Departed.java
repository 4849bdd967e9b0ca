package fascicle.book.page;

import java.util.List;

/**
 * Where a pot went another way than its method; no rows where it did as the method says.
 *
 * @param method the way to the method
 * @param rows what was otherwise, in the order of the work
 */
public record Departed(Link method, List<Row> rows) {

    /**
     * One thing that was otherwise.
     *
     * @param what what it is about
     * @param here how it was
     * @param method how the method has it
     */
    public record Row(String what, String here, String method) {}
}
