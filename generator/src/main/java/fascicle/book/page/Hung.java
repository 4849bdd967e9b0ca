package fascicle.book.page;

/**
 * An entry's bundle on the sample string.
 *
 * @param swatch its colour, hanging
 * @param entry the way to it
 */
public record Hung(Markup swatch, Link entry) {}
