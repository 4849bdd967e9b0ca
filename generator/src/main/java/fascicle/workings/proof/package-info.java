/**
 * Proofreading: what reading a notebook found, joined with what only its figures and its shelf reveal.
 *
 * <p>Nothing is worked out here. It stands above all of the workings, and nothing of them stands on it.
 */
@NullMarked
package fascicle.workings.proof;

import org.jspecify.annotations.NullMarked;
