/**
 * What is left of needles, dyes and dyed bundles, how long it lasts, and what a pot cost.
 *
 * <p>Everything follows from what entries took and what the notebook says there was. Where a figure is unknown, the
 * lines of the notebook that would make it known are named; of the rest as much is told as is certain. No words, no
 * page.
 */
@NullMarked
package fascicle.workings.stock;

import org.jspecify.annotations.NullMarked;
