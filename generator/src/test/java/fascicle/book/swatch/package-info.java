/** Tests of swatches. */
@org.jspecify.annotations.NullMarked
package fascicle.book.swatch;
