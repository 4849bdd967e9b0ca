/**
 * Baths that were used again: who used whose, what they left, and what the next batch needs on top.
 *
 * <p>A standing bath is an exhausted bath that is used again with fresh dye for what was taken up. Its figures rest on
 * those of the entries before it. The acidity of baths has a package of its own, which stands on this one.
 */
@NullMarked
package fascicle.workings.chain;

import org.jspecify.annotations.NullMarked;
