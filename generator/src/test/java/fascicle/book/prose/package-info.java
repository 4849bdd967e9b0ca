/** Tests of the maker's words on the page. */
@org.jspecify.annotations.NullMarked
package fascicle.book.prose;
