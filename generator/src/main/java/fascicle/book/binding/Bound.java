package fascicle.book.binding;

/**
 * What binding a book came to, counted in files; the manifest itself is not counted.
 *
 * @param written files that are new or differ from the old book's
 * @param unchanged files that stay as the old book had them
 * @param removed files of the old book that the new one no longer has
 */
public record Bound(int written, int unchanged, int removed) {}
