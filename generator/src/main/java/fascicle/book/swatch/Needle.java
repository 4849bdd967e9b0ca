package fascicle.book.swatch;

/**
 * The outline of one needle of a bundle: narrow in its sheath, widest at its middle, ending in a point.
 *
 * @param foot where it leaves the sheath, from the left
 * @param footY the same, from the top
 * @param half half its width at the foot
 * @param belly where its middle bends to, from the left
 * @param bellyY the same, from the top
 * @param bulge half its width there
 * @param tip where it ends, from the left
 * @param tipY the same, from the top
 */
record Needle(double foot, double footY, double half, double belly, double bellyY, double bulge, double tip,
        double tipY) {

    private static final double DEGREE = StrictMath.PI / 180;

    /** A needle of a fan, so far from the middle one; the middle ones are the longest. */
    static Needle fanned(int number, int needles, int usual) {
        double place = place(number, needles, usual);
        double slant = place * 3.55 * DEGREE;
        double length = 176 - StrictMath.abs(place) * 2.2 - number * 7 % 5 * 4;
        double foot = 120 + place * 1.55;
        return new Needle(foot, 188, 2.6 * usual / needles, foot + length * .45 * StrictMath.sin(slant),
                188 - length * .5 * StrictMath.cos(slant), 4.6 * usual / needles,
                foot + length * StrictMath.sin(slant) + place * 1.6, 188 - length * StrictMath.cos(slant));
    }

    /** A needle of a bundle that fills its cell, so far from the middle one. */
    static Needle sideBySide(int number, int needles, int usual) {
        double place = place(number, needles, usual);
        double width = 1.0 * usual / needles;
        return new Needle(24 + place * 2.6, 66, 2 * width, 24 + place * 6.6, 38, 6.6 * width, 24 + place * 6.4,
                2 + number * 5 % 7);
    }

    /** A needle of a bundle on the sample string, which has room for its length. */
    static Needle hanging(int number, int needles, int usual) {
        Needle needle = sideBySide(number, needles, usual);
        return new Needle(needle.foot, needle.footY, needle.half, needle.belly, 26, needle.bulge, needle.tip,
                number * 11 % 7 * 3 - 28);
    }

    /** How far from the middle, in steps of a bundle of the usual size: more needles stand closer. */
    private static double place(int number, int needles, int usual) {
        return (number - (needles - 1) / 2.0) * usual / needles;
    }

    /** A closed SVG path, in whole steps: no needle is drawn finer than it is seen, and pages hold thousands. */
    void drawTo(StringBuilder path) {
        point(path, 'M', foot - half, footY);
        point(path, 'Q', belly - bulge, bellyY);
        point(path, ' ', tip, tipY);
        point(path, ' ', belly + bulge, bellyY);
        point(path, ' ', foot + half, footY);
        path.append('z');
    }

    private static void point(StringBuilder path, char before, double x, double y) {
        path.append(before).append(StrictMath.round(x)).append(' ').append(StrictMath.round(y));
    }
}
