/**
 * A notebook as the program holds it: entries, lots, dyes, vessels, methods, and the findings about them.
 *
 * <p>The records here are values: what a maker wrote, each with its place, its text as written and its origin.
 * {@code text} turns files into located trees, {@code resolve} fills in what was left out, {@code read} turns trees
 * into these records, {@code edition} takes out what is more private. Nothing here computes a figure.
 */
@NullMarked
package fascicle.notebook;

import org.jspecify.annotations.NullMarked;
