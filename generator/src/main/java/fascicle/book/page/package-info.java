/**
 * What pages say: plain records, made on demand, that templates read. Nothing here computes, looks up or formats.
 */
@NullMarked
package fascicle.book.page;

import org.jspecify.annotations.NullMarked;
