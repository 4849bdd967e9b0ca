/**
 * Swatches: a colour drawn as a bundle of needles in its sheath.
 */
@NullMarked
package fascicle.book.swatch;

import org.jspecify.annotations.NullMarked;
