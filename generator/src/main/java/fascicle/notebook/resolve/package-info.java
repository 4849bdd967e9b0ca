/**
 * What was left out: pot, then its file's shared keys, then its method, then the method that one follows.
 *
 * <p>Works on located trees, before anything is understood as a quantity.
 */
@NullMarked
package fascicle.notebook.resolve;

import org.jspecify.annotations.NullMarked;
