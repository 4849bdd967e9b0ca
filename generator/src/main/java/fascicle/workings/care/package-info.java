/**
 * What in a recipe can hurt someone, and what of it may be planned for a class.
 *
 * <p>{@code Care} finds what a recipe uses; {@code Hazards} and {@code ClassRules} judge that. All of it is common
 * practice of the dye pot, and never replaces a pack's label, local rules or licensed practice. There are no words for
 * people here.
 */
@NullMarked
package fascicle.workings.care;

import org.jspecify.annotations.NullMarked;
