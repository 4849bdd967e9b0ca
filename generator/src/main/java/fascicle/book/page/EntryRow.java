package fascicle.book.page;

import java.util.Optional;

/**
 * An entry in a table.
 *
 * @param swatch its colour, small
 * @param entry the way to it
 * @param tag its tag
 * @param day its dye day
 * @param verdict whether it worked
 * @param colour its colour's name
 * @param gist what was done
 */
public record EntryRow(Markup swatch, Link entry, Optional<String> tag, Link day, Optional<Verdict> verdict,
        Optional<String> colour, String gist) {}
