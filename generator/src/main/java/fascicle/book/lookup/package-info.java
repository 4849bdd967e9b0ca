/**
 * Looking entries up: one index, made when the book is published, answered alike by the terminal and by the book's own
 * script.
 *
 * <p>Here live what may be asked and how it is answered, and the file that carries the index to the browser. Pages and
 * the words round an answer live elsewhere.
 */
@NullMarked
package fascicle.book.lookup;

import org.jspecify.annotations.NullMarked;
