/**
 * The one room that writes the target folder of a published book: it lays the new book beside the old
 * one, changes them over by renaming, and mends what an interrupted run left.
 *
 * <p>It knows a page only as an address and its bytes. What stands on a page, how it is drawn, and which
 * edition may show what is decided elsewhere; here an edition is a word that two books may differ in.
 * No other room writes to the target.
 */
@NullMarked
package fascicle.book.binding;

import org.jspecify.annotations.NullMarked;
