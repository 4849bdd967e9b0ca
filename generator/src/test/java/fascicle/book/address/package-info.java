/** Tests of where pages are. */
@org.jspecify.annotations.NullMarked
package fascicle.book.address;
