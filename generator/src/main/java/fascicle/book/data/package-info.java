/**
 * The book as data: {@code data/book.json} and {@code data/entries.csv}.
 */
@NullMarked
package fascicle.book.data;

import org.jspecify.annotations.NullMarked;
