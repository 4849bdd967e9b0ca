/** Tests of how compose are written. */
@org.jspecify.annotations.NullMarked
package fascicle.book.compose;
