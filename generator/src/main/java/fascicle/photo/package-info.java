/**
 * Colours read off photographs, and photographs made fit to be published: decoding, orientation, profiles, the light of
 * the needles against the light of a card, and copies without metadata.
 *
 * <p>This room knows no notebook and no finding: it says in words why a picture cannot be used and what to heed.
 */
@NullMarked
package fascicle.photo;

import org.jspecify.annotations.NullMarked;
