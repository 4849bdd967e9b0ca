/**
 * Tests of what a maker meets: the launcher, and the published book in a real browser.
 *
 * <p>Everything here runs the built program in a process of its own and looks at the files that it wrote. No class of
 * the generator is called; tests of a class stand beside that class.
 */
@NullMarked
package fascicle.site;

import org.jspecify.annotations.NullMarked;
