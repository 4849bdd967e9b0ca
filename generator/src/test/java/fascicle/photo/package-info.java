/**
 * Tests of the darkroom, with photographs that are drawn: a light, a camera and things of known reflectance.
 *
 * <p>What comes back from a drawn photograph proves the arithmetic, not a phone: a real camera's colours are not those
 * of the standard observer, and its maker bends them to please.
 */
@org.jspecify.annotations.NullMarked
package fascicle.photo;
