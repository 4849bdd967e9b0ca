/**
 * The commands. Each reads its call, asks the rooms below, and says what came of it; nothing is computed here.
 *
 * <p>Exit status: 0 done; 1 the notebook has errors, or nothing was found; 2 the call is wrong; 3 the disk failed.
 */
@NullMarked
package fascicle.cli;

import org.jspecify.annotations.NullMarked;
