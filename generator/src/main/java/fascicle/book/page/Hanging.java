package fascicle.book.page;

import java.util.Optional;

/**
 * A sample among others.
 *
 * @param swatch its colour
 * @param entry the way to its entry
 * @param day its dye day
 * @param colour its colour's name
 * @param hex its colour in sRGB
 * @param verdict whether it worked
 */
public record Hanging(Markup swatch, Link entry, String day, Optional<String> colour, Optional<String> hex,
        Optional<Verdict> verdict) {}
