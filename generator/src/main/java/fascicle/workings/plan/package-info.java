/**
 * A class or a dye day, planned: what of which method, how much of everything against what is on the shelf, by the
 * clock, and what may not be planned at all.
 *
 * <p>Quantities come from the scaling of recipes, stock from {@code workings.stock}, times from {@code workings.clock},
 * rules from {@code workings.care}; here they only meet. There are no words for people here.
 */
@NullMarked
package fascicle.workings.plan;

import org.jspecify.annotations.NullMarked;
