/** Tests of how figures are written. */
@org.jspecify.annotations.NullMarked
package fascicle.book.figures;
