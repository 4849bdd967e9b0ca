/** Tests of plots. */
@NullMarked
package fascicle.book.plot;

import org.jspecify.annotations.NullMarked;
