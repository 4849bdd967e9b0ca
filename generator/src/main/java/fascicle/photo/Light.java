package fascicle.photo;

/**
 * The trimmed mean of an area's pixels in linear light of the picture's own primaries.
 *
 * @param red amount of the first primary
 * @param green amount of the second
 * @param blue amount of the third
 * @param counted how many pixels took part
 * @param pixels how many the area has
 * @param tooBright share of those that took part of which a channel is cut off at the bright end, from 0 to 1
 * @param tooDark share of those that took part of which a channel is cut off at the dark end, from 0 to 1
 */
record Light(double red, double green, double blue, int counted, int pixels, double tooBright, double tooDark) {

    /** From this share on the mean is wrong by more than the grain of a picture; less is a speck. */
    private static final double MATTERS = 0.01;

    boolean clipped() {
        return tooBright >= MATTERS || tooDark >= MATTERS;
    }
}
