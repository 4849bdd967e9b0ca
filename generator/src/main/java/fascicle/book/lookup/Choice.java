package fascicle.book.lookup;

/**
 * Something that entries of this book may be chosen by.
 *
 * @param id what it is asked for by
 * @param title what it is called
 */
public record Choice(String id, String title) {}
