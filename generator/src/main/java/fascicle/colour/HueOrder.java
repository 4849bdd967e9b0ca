package fascicle.colour;

/**
 * The order of colours by hue, as they hang on a sample string and are looked up: round the circle from red by yellow,
 * green and blue to purple; then the greys, dark to light ({@code common practice, no source}).
 */
public final class HueOrder {

    /** Below this chroma C*ab a hue is hardly seen, and wanders with every reading. */
    private static final double LEAST_CHROMA = 4;

    /** Where the circle is cut, in degrees: between purple and red, since no brown lies there. */
    private static final double START = 350;

    /** Beyond every hue. */
    private static final double GREYS = 1000;

    private HueOrder() {}

    /**
     * Whether a colour has too little chroma to have a hue.
     *
     * @param colour any colour
     * @return true below a C*ab of 4
     */
    public static boolean isGrey(Lab colour) {
        return colour.chroma() < LEAST_CHROMA;
    }

    /**
     * Where a colour stands in the order.
     *
     * @param colour any colour
     * @return degrees from the cut of the circle, at least 0 and below 360; of a grey 1000 and its lightness
     */
    public static double place(Lab colour) {
        return isGrey(colour) ? GREYS + colour.lightness() : (colour.hueDegrees() - START + 360) % 360;
    }
}
