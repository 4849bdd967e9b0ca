/**
 * Where every page of a book is: from ids to addresses, and from notebook files to pages.
 */
@NullMarked
package fascicle.book.address;

import org.jspecify.annotations.NullMarked;
