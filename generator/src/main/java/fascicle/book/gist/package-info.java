/**
 * What was done, in a few words: amounts, heating, and the gist of an entry, said alike on pages, in the look-up and in
 * the terminal. No page is composed here.
 */
@NullMarked
package fascicle.book.gist;

import org.jspecify.annotations.NullMarked;
