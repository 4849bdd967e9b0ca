/**
 * How long the book takes: a notebook of any size grown from a seed, and what publishing it costs beside what the
 * libraries alone cost.
 *
 * <p>Programs to be run by hand, each with its own {@code main}. Nothing here is timed inside a test, nothing here
 * checks what a page says, and the generator knows nothing of this package.
 */
@NullMarked
package fascicle.bench;

import org.jspecify.annotations.NullMarked;
