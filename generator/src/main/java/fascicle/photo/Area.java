package fascicle.photo;

/**
 * A part of a picture that stands upright, in per cent of its width and height.
 *
 * @param x left edge
 * @param y upper edge
 * @param width above 0
 * @param height above 0
 */
public record Area(double x, double y, double width, double height) {

    /** What rounding may add to two figures in per cent that together make the whole. */
    private static final double ROUNDING = 1e-9;

    /**
     * A part of a picture.
     *
     * @throws IllegalArgumentException if it is empty or does not lie in the picture
     */
    public Area {
        if (!(x >= 0 && y >= 0 && width > 0 && height > 0 && x + width <= 100 + ROUNDING
                && y + height <= 100 + ROUNDING)) {
            throw new IllegalArgumentException("not in the picture: " + x + ", " + y + ", " + width + ", " + height);
        }
    }
}
