/**
 * Editions: everything more private than an edition is taken out of the notebook here, before anything is computed.
 *
 * <p>The law: an edition's notebook is the notebook its maker would have had without the rest.
 */
@NullMarked
package fascicle.notebook.edition;

import org.jspecify.annotations.NullMarked;
