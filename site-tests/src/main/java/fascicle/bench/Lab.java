package fascicle.bench;

/**
 * A colour to write down, in tenths of CIE L*, a*, b*, so that it is exact.
 *
 * @param l tenths of L*
 * @param a tenths of a*
 * @param b tenths of b*
 */
record Lab(int l, int a, int b) {

    /** A strong colour of a hue in degrees, as a dye might have it. */
    static Lab ofHue(int degrees, int lightness, int chroma) {
        double angle = StrictMath.toRadians(degrees);
        return new Lab(lightness, (int) (chroma * StrictMath.cos(angle)), (int) (chroma * StrictMath.sin(angle)));
    }

    /** A colour no further than {@code tenths} on each axis. */
    Lab near(Chance chance, int tenths) {
        return new Lab(l + chance.between(-tenths, tenths), a + chance.between(-tenths, tenths), b + chance.between(-tenths, tenths));
    }

    /** The colour that lies {@code percent} of the way to another. */
    Lab towards(Lab other, int percent) {
        return new Lab(l + (other.l - l) * percent / 100, a + (other.a - a) * percent / 100, b + (other.b - b) * percent / 100);
    }

    /** As front matter has it: {@code [36.2, 27.4, 20.1]}. */
    @Override
    public String toString() {
        return "[" + Chance.tenths(l) + ", " + Chance.tenths(a) + ", " + Chance.tenths(b) + "]";
    }
}
