package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * One entry.
 *
 * @param frame what stands round it
 * @param tag its tag
 * @param day the way to its dye day
 * @param verdict whether it worked, as the beginning of a sentence
 * @param outcome how it came out, in the sentences after
 * @param again how often the same recipe worked, where it was repeated
 * @param specimens the bare needles, the result and the target
 * @param gist what was done, in a line
 * @param departed where it went another way than its method
 * @param scaling the recipe for other weights
 * @param cautions what may hurt someone, gravest first, in sentences
 * @param heed the gravest of them in a line that leads to them; nothing where there are none
 * @param photographs the photographs its colours were read off
 * @param result what came out
 * @param readings every colour that was kept, compared or not
 * @param needles what was dyed
 * @param steps what was done
 * @param chain the bath and the other batches it served
 * @param heating how hot the bath was, and for how long
 * @param clock the steps by the clock
 * @param later how it rubs and fades and what is left
 * @param fading how its colour changed in the light
 * @param notes the maker's words
 * @param nearby what stands next to it
 * @param ties where it belongs and what it came from
 */
public record EntryPage(Frame frame, Optional<String> tag, Link day, Optional<Verdict> verdict, String outcome,
        Optional<String> again, List<Specimen> specimens, String gist, Optional<Departed> departed,
        Optional<Scaling> scaling, List<String> cautions, Optional<String> heed, List<Photograph> photographs,
        List<Fact> result, List<Fact> readings, List<Fact> needles, List<Step> steps,
        Optional<BathChain> chain, Optional<Plot> heating, Optional<Timetable> clock, List<Fact> later,
        Optional<Plot> fading, List<Markup> notes, Nearby nearby, List<Fact> ties) implements Page {

    @Override
    public String template() {
        return "entry.ftlh";
    }
}
