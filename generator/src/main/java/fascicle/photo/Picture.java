package fascicle.photo;

/**
 * A picture as it stands upright.
 *
 * @param hash of its content, as hexadecimal digits
 * @param width in pixels
 * @param height in pixels
 */
public record Picture(String hash, int width, int height) {}
