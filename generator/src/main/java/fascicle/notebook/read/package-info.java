/**
 * From located trees to a notebook's records: what each key means, and every mistake as a finding.
 *
 * <p>{@link fascicle.notebook.read.NotebookReader} is the way in. Nothing is computed here.
 */
@NullMarked
package fascicle.notebook.read;

import org.jspecify.annotations.NullMarked;
