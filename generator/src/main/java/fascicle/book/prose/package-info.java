/**
 * The maker's own words: from Markdown to HTML that is safe to publish, and findings about what was taken out.
 */
@NullMarked
package fascicle.book.prose;

import org.jspecify.annotations.NullMarked;
