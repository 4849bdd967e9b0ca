/**
 * Figures, colours and dates as a reader sees them, and as the data carries them: one rounding for both.
 */
@NullMarked
package fascicle.book.figures;

import org.jspecify.annotations.NullMarked;
