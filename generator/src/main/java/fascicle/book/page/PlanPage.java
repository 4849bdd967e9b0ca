package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * A class or a dye day on one sheet. It stands alone and belongs to no book.
 *
 * @param frame what stands round it
 * @param said who, how much and when, in sentences
 * @param refused what is not planned, and why, in sentences
 * @param layOut what to lay out
 * @param methods what to measure out, method by method
 * @param needs what it takes of each thing, against the shelf
 * @param clockHeading what the hours are
 * @param clock everything in the order of time
 * @param clockNotes what the times rest on
 * @param duties what the teacher does
 * @param cautions what may hurt someone
 */
public record PlanPage(Frame frame, List<String> said, List<String> refused, List<String> layOut,
        List<Measured> methods, List<Need> needs, String clockHeading, List<Due> clock, List<String> clockNotes,
        List<String> duties, List<String> cautions)
        implements Page {

    @Override
    public String template() {
        return "plan.ftlh";
    }

    /**
     * What to measure out for one method.
     *
     * @param title the method
     * @param pots its pots, in words
     * @param columns for how much each column is
     * @param rows what to measure out
     * @param remarks what to know beside it, in sentences
     * @param steps the maker's words on how it is done, method by method
     */
    public record Measured(String title, List<String> pots, List<String> columns, List<Scaling.Row> rows,
            List<String> remarks, List<Told> steps) {}

    /**
     * How it is done.
     *
     * @param title whose words they are; nothing where they are the method's own
     * @param words the maker's words
     */
    public record Told(Optional<String> title, List<Markup> words) {}

    /**
     * What it takes of one thing.
     *
     * @param thing its title
     * @param needed how much
     * @param left how much is on the shelf
     * @param after how much is left after the day
     * @param tooLittle that the shelf holds too little, in words
     */
    public record Need(String thing, String needed, String left, String after, Optional<String> tooLittle) {}

    /**
     * Something to be done, or going on.
     *
     * @param when the hour, after a date where a day begins
     * @param pot which pot
     * @param doing what is done
     * @param length how long it goes on
     */
    public record Due(String when, String pot, String doing, Optional<String> length) {}
}
