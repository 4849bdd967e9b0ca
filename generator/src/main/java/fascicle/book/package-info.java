/**
 * A book: pages, styles and data, each an address and bytes made on demand.
 *
 * <p>It is given an edition's workings and computes no figure of its own; it writes no file and knows no command.
 */
@NullMarked
package fascicle.book;

import org.jspecify.annotations.NullMarked;
