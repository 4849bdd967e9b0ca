/**
 * The words for what can hurt someone and for what a class may not have, for pages and commands alike.
 *
 * <p>What is to be said is found in {@code workings.care}; here it only gets its words.
 */
@NullMarked
package fascicle.book.caution;

import org.jspecify.annotations.NullMarked;
