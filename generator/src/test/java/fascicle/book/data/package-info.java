/** Tests of the book as data. */
@org.jspecify.annotations.NullMarked
package fascicle.book.data;
