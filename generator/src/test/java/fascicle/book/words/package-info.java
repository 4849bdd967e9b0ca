/** Tests of the book's own words. */
@org.jspecify.annotations.NullMarked
package fascicle.book.words;
