/**
 * A batch of needles in words: what to measure out, with what, and what to know beside it. Pages, commands and the plan
 * of a class say it from here; {@code scripts/batch.js} says the same in the browser.
 *
 * <p>No quantity is worked out here, and no page is composed.
 */
@NullMarked
package fascicle.book.batch;

import org.jspecify.annotations.NullMarked;
