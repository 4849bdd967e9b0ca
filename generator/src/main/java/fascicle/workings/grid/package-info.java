/**
 * Entries laid side by side so that colours can be compared: dyes on conditions, depths of one dye, repeats of one
 * recipe, all samples in an order.
 *
 * <p>It computes from figures of entries and never draws: swatches and words live in the book.
 */
@NullMarked
package fascicle.workings.grid;

import org.jspecify.annotations.NullMarked;
