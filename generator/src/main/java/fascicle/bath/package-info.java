/**
 * Vessels, liquor, acidity, uptake, heat, a recipe and its scaling.
 *
 * <p>The amounts that a recipe asks for are read here too. This room knows no notebook and no finding.
 */
@NullMarked
package fascicle.bath;

import org.jspecify.annotations.NullMarked;
