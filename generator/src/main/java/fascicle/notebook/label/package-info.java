/**
 * What the labels on packs say in the words of the Globally Harmonized System, by the codes that stand on them.
 *
 * <p>It knows the system and no notebook: a code goes in, its wording comes out.
 */
@NullMarked
package fascicle.notebook.label;

import org.jspecify.annotations.NullMarked;
