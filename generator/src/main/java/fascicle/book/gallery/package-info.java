/**
 * The photographs that a book shows: which files of the notebook they are, and the copies that are published of them.
 * What is in a copy is the photographs' room's business; what stands beside it is the pages'.
 */
@NullMarked
package fascicle.book.gallery;

import org.jspecify.annotations.NullMarked;
