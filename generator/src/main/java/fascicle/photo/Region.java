package fascicle.photo;

/** A rectangle of whole pixels; x and y are its left and upper edge. */
record Region(int x, int y, int width, int height) {

    /** The pixels whose middles lie in an area; at least one. */
    static Region of(Area area, int width, int height) {
        int left = first(area.x(), width);
        int top = first(area.y(), height);
        int right = first(area.x() + area.width(), width);
        int bottom = first(area.y() + area.height(), height);
        int x = StrictMath.min(left, width - 1);
        int y = StrictMath.min(top, height - 1);
        return new Region(x, y, StrictMath.max(1, StrictMath.min(right, width) - x),
                StrictMath.max(1, StrictMath.min(bottom, height) - y));
    }

    /** The smallest rectangle that holds this one and another. */
    Region with(Region other) {
        int left = StrictMath.min(x, other.x);
        int top = StrictMath.min(y, other.y);
        int right = StrictMath.max(x + width, other.x + other.width);
        int bottom = StrictMath.max(y + height, other.y + other.height);
        return new Region(left, top, right - left, bottom - top);
    }

    /** Its middle, from the left. */
    double middleX() {
        return x + width / 2.0;
    }

    /** Its middle, from the top. */
    double middleY() {
        return y + height / 2.0;
    }

    int pixels() {
        return width * height;
    }

    /** The first pixel whose middle lies at or beyond an edge. */
    private static int first(double percent, int size) {
        return (int) StrictMath.ceil(percent / 100 * size - 0.5);
    }
}
