package fascicle.book.lookup;

import fascicle.workings.EntryWorking;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was found.
 *
 * @param found the entries, in the order asked for
 * @param counts for each trait's choices, in their order: how many entries there would be if that choice alone were
 *     taken of its trait and everything else kept
 * @param loosen where nothing was found: what to leave out, the most entries first
 * @param instead typed words that begin no word of the book, and the words taken instead
 */
public record Answer(List<Found> found, Map<Trait, List<Integer>> counts, List<Loosened> loosen,
        List<Instead> instead) {

    /**
     * An entry that was found.
     *
     * @param entry the entry
     * @param de00 CIEDE2000 from the colour asked for; unknown where none was, or the entry has none. The
     *     colour asked for is taken as exact, so that the entry's own uncertainty is the difference's
     */
    public record Found(EntryWorking entry, OptionalDouble de00) {}

    /**
     * What there would be without a part of the question.
     *
     * @param part {@code words}, or a trait's word
     * @param found how many entries, more than 0
     */
    public record Loosened(String part, int found) {}

    /**
     * Words taken for one that is not there.
     *
     * @param typed the word, folded
     * @param taken words of the book whose beginning is one slip away, in order; none where there are none
     */
    public record Instead(String typed, List<String> taken) {}
}
