package fascicle.book.page;

/**
 * A group of entries in a list.
 *
 * @param swatch its median colour, small
 * @param group the way to it
 * @param entries how many entries
 * @param days its dye days by verdict, in words
 */
public record GroupRow(Markup swatch, Link group, int entries, String days) {}
