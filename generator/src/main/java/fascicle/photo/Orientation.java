package fascicle.photo;

/**
 * How the stored rows of a picture are turned to stand upright: tag 274 of Exif (CIPA DC-008, "Orientation"), as three
 * switches. The stored picture is mirrored first and has its axes swapped then.
 *
 * @param swapped whether stored rows are upright columns
 * @param mirroredAcross whether the stored rows run backwards
 * @param mirroredDown whether the stored columns run backwards
 */
record Orientation(boolean swapped, boolean mirroredAcross, boolean mirroredDown) {

    static final Orientation UPRIGHT = new Orientation(false, false, false);

    /** The orientation that a tag's value from 1 to 8 stands for; anything else is taken as upright. */
    static Orientation ofTag(int value) {
        return switch (value) {
            case 2 -> new Orientation(false, true, false);
            case 3 -> new Orientation(false, true, true);
            case 4 -> new Orientation(false, false, true);
            case 5 -> new Orientation(true, false, false);
            case 6 -> new Orientation(true, false, true);
            case 7 -> new Orientation(true, true, true);
            case 8 -> new Orientation(true, true, false);
            default -> UPRIGHT;
        };
    }

    /** The stored pixels that an upright rectangle shows, in a picture stored with this width and height. */
    Region stored(Region upright, int storedWidth, int storedHeight) {
        int x = swapped ? upright.y() : upright.x();
        int y = swapped ? upright.x() : upright.y();
        int width = swapped ? upright.height() : upright.width();
        int height = swapped ? upright.width() : upright.height();
        return new Region(mirroredAcross ? storedWidth - x - width : x, mirroredDown ? storedHeight - y - height : y,
                width, height);
    }
}
