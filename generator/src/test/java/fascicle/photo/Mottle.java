package fascicle.photo;

/** Soft random spots between 0 and 1: values on a lattice, smoothed between its points. */
record Mottle(long seed) {

    /** The value at a place, the lattice being 1 wide. */
    double at(double x, double y) {
        double left = StrictMath.floor(x);
        double top = StrictMath.floor(y);
        double u = ease(x - left);
        double v = ease(y - top);
        double upper = knot((long) left, (long) top) * (1 - u) + knot((long) left + 1, (long) top) * u;
        double lower = knot((long) left, (long) top + 1) * (1 - u) + knot((long) left + 1, (long) top + 1) * u;
        return upper * (1 - v) + lower * v;
    }

    /** Coarse spots with finer ones on them. */
    double deep(double x, double y) {
        return 0.5 * at(x, y) + 0.25 * at(2.1 * x + 7, 2.1 * y) + 0.15 * at(4.3 * x, 4.3 * y + 3)
                + 0.1 * at(9.1 * x, 9.1 * y);
    }

    private double knot(long x, long y) {
        long mixed = (x * 0x9e3779b97f4a7c15L ^ y * 0xc2b2ae3d27d4eb4fL ^ seed) * 0xff51afd7ed558ccdL;
        mixed = (mixed ^ mixed >>> 33) * 0xc4ceb9fe1a85ec53L;
        return (mixed >>> 40) / (double) (1L << 24);
    }

    private static double ease(double t) {
        return t * t * (3 - 2 * t);
    }
}
