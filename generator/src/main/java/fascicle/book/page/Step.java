package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * One step of what is done to needles.
 *
 * @param title the step's name
 * @param whence where it comes from, when it was not written for this very thing
 * @param facts what is known of it
 * @param parts what goes into it
 */
public record Step(String title, Optional<Link> whence, List<Fact> facts, List<PartRow> parts) {

    /**
     * One part.
     *
     * @param thing what it is
     * @param written the amount in the maker's words
     * @param grams mass
     * @param millilitres volume
     * @param owf on the weight of the dry needles
     * @param gramsPerLitre in the liquor
     * @param follows what it follows when the batch grows
     * @param remarks when it is added, what it was measured from, how sure it is
     * @param whence where it comes from, when it was not written for this very thing
     */
    public record PartRow(Link thing, Optional<String> written, Optional<String> grams, Optional<String> millilitres,
            Optional<String> owf, Optional<String> gramsPerLitre, String follows, List<String> remarks,
            Optional<Link> whence) {}
}
