package fascicle.book.page;

/**
 * Whether an entry worked.
 *
 * @param word the notebook's word, by which its shape is chosen
 * @param text the word for readers
 */
public record Verdict(String word, String text) {}
