package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * One entry.
 *
 * @param frame what stands round it
 * @param tag its tag
 * @param day the way to its dye day
 * @param verdict whether it worked
 * @param swatch its colour, large
 * @param bare the bare needles' colour
 * @param caution what may hurt someone
 * @param result what came out
 * @param readings every colour that was kept, compared or not
 * @param needles what was dyed
 * @param steps what was done
 * @param scaling the recipe for other weights
 * @param later how it rubs and fades and what is left
 * @param ties where it belongs and what it came from
 * @param notes the maker's words
 */
public record EntryPage(Frame frame, Optional<String> tag, Link day, Optional<Verdict> verdict, Markup swatch, Optional<Markup> bare,
        Optional<String> caution, List<Fact> result, List<Fact> readings, List<Fact> needles, List<Step> steps,
        Optional<Scaling> scaling, List<Fact> later, List<Fact> ties, List<Markup> notes) implements Page {

    @Override
    public String template() {
        return "entry.ftlh";
    }
}
