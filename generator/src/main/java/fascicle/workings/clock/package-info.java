/**
 * When what is done: a recipe's steps by the clock, and several pots on one stove.
 *
 * <p>Times are reckoned from what was written and from figures of the workings; nothing here asks what time it is. How
 * long a pot takes to heat, when a night ends and how many pots a stove holds is {@code common practice, no source},
 * and what rests on it is rough. Words for people live in the book.
 */
@NullMarked
package fascicle.workings.clock;

import org.jspecify.annotations.NullMarked;
