/**
 * Plots: colours drawn as needles on a neutral board, against axes with units. Scales, ticks and drawings live here;
 * which entries are drawn, and the words beneath, are composed elsewhere.
 *
 * <p>Every plot is inline SVG that needs no script, with its colours in attributes only, a title, and a text that says
 * what it shows. Whatever a colour tells is told by place, length or number as well.
 */
@NullMarked
package fascicle.book.plot;

import org.jspecify.annotations.NullMarked;
