/**
 * From workings to what pages say: which facts stand on which page, in which order and under which words.
 */
@NullMarked
package fascicle.book.compose;

import org.jspecify.annotations.NullMarked;
