/**
 * Figures computed from a notebook: of entries, then of groups of entries.
 *
 * <p>It is given one edition's notebook and never hears of editions. It knows no page and formats nothing; an unknown
 * figure is empty, never 0.
 */
@NullMarked
package fascicle.workings;

import org.jspecify.annotations.NullMarked;
