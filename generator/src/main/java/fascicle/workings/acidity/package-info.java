/**
 * The acidity of baths, estimated from what went into them, and why it is not known where it is not.
 *
 * <p>The chemistry itself is {@code fascicle.bath}'s; here are the names: which part is an acid and how strong, which
 * water was poured, what a reused bath brought along.
 */
@NullMarked
package fascicle.workings.acidity;

import org.jspecify.annotations.NullMarked;
