package fascicle.book.page;

/**
 * HTML that is known to be safe: drawn by the program, or cleaned.
 *
 * @param html a piece of a page's body
 */
public record Markup(String html) {}
