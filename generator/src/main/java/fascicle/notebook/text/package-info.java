/**
 * From files to located trees: decoding, front matter, YAML nodes that know their line and column.
 *
 * <p>Knows the shape of YAML, not what a notebook's keys mean.
 */
@NullMarked
package fascicle.notebook.text;

import org.jspecify.annotations.NullMarked;
