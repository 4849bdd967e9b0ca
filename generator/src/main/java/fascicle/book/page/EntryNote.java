package fascicle.book.page;

import java.util.Optional;

/**
 * An entry in a few words.
 *
 * @param swatch its colour, small
 * @param entry the way to it
 * @param day its dye day
 * @param verdict whether it worked
 * @param gist what was done
 */
public record EntryNote(Markup swatch, Link entry, Link day, Optional<Verdict> verdict, String gist) {}
