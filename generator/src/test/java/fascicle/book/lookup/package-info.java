/** Tests of looking entries up. */
@org.jspecify.annotations.NullMarked
package fascicle.book.lookup;
