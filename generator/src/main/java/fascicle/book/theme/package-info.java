/**
 * How a book looks: a theme's templates and style, checked when they are loaded and shut in when they run.
 */
@NullMarked
package fascicle.book.theme;

import org.jspecify.annotations.NullMarked;
