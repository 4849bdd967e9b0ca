/** Tests of what themes can and cannot do. */
@org.jspecify.annotations.NullMarked
package fascicle.book.theme;
