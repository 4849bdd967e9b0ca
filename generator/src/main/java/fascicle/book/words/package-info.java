/**
 * The book's own words, all in one message file. No other class of the book holds a word that a reader sees.
 */
@NullMarked
package fascicle.book.words;

import org.jspecify.annotations.NullMarked;
