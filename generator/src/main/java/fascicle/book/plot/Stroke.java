package fascicle.book.plot;

import fascicle.book.figures.Figures;

/**
 * A colour as a needle in a plot: its foot stands at the place that it tells.
 *
 * @param x the foot, from the left
 * @param y the foot, from the top
 * @param length from foot to tip
 * @param degrees how far it leans from upright, clockwise
 */
record Stroke(double x, double y, double length, double degrees) {

    private static final double HALF_FOOT = 1.2;
    private static final double BULGE = 4.4;
    private static final double SHORTEST = 10;
    private static final double LONGEST = 52;

    /** How long the needle of so light a colour is: L* 0 the shortest, 100 the longest. */
    static double length(double lightness) {
        double share = StrictMath.min(100, StrictMath.max(0, lightness)) / 100;
        return SHORTEST + share * (LONGEST - SHORTEST);
    }

    /** A closed SVG path, as swatches' needles are: widest at its middle, ending in a point. */
    String path() {
        return "M" + place(-HALF_FOOT, 0) + 'Q' + place(-BULGE, .4) + ' ' + place(0, 1)
                + 'Q' + place(BULGE, .4) + ' ' + place(HALF_FOOT, 0) + 'z';
    }

    /** A place so far to the needle's right, and at such a share of its length. */
    private String place(double right, double share) {
        double lean = StrictMath.toRadians(degrees);
        double along = share * length;
        return Figures.place(x + right * StrictMath.cos(lean) + along * StrictMath.sin(lean)) + ' '
                + Figures.place(y + right * StrictMath.sin(lean) - along * StrictMath.cos(lean));
    }
}
