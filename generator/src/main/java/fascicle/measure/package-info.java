/**
 * Mass, volume, length, temperature and time as makers write them: units, kitchen measures, fractions.
 *
 * <p>Exact where a unit's definition is exact. This room knows no notebook, no finding and no dye.
 */
@NullMarked
package fascicle.measure;

import org.jspecify.annotations.NullMarked;
