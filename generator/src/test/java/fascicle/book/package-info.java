/** Tests of the book, with one small notebook made of records. */
@org.jspecify.annotations.NullMarked
package fascicle.book;
