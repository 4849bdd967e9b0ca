package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * What stands next to an entry.
 *
 * @param alike the entries whose colours lie nearest
 * @param moreLike the way to the look-up for more of them
 * @param previous the entry before
 * @param next the entry after
 * @param repeats the other entries of the same recipe
 * @param sameDay the other pots of the day
 */
public record Nearby(List<Alike> alike, Optional<Link> moreLike, Optional<Link> previous, Optional<Link> next,
        Others repeats, Others sameDay) {

    /**
     * An entry of a like colour.
     *
     * @param swatch its colour, small
     * @param entry the way to it
     * @param difference how far it lies off
     * @param verdict whether it worked
     */
    public record Alike(Markup swatch, Link entry, String difference, Optional<Verdict> verdict) {}

    /**
     * Some other entries.
     *
     * @param entries the ways to them
     * @param more how many more there are, in words
     */
    public record Others(List<Link> entries, Optional<String> more) {}
}
