/**
 * What a book tells beyond the figures of single entries, reckoned once for all of its pages and files. Not here: how
 * any of it is reckoned, which is {@code workings}', and how it is told.
 */
@NullMarked
package fascicle.book.ledger;

import org.jspecify.annotations.NullMarked;
