/**
 * Tables of readings as colour meters write them: CGATS text (ISO 28178) and plain CSV.
 *
 * <p>A table becomes colours under D50; what they are readings of is not known here.
 */
@NullMarked
package fascicle.colour.table;

import org.jspecify.annotations.NullMarked;
