package fascicle.photo;

/**
 * A needle as a picture shows it: a bow that tapers, rounded, with a line of gloss along it.
 *
 * @param x0 its thick end, in pixels
 * @param y0 its thick end
 * @param bendX where the bow is pulled to
 * @param bendY where the bow is pulled to
 * @param x1 its tip
 * @param y1 its tip
 * @param thick its thickness at the thick end, in pixels
 * @param taper how much thinner the tip is: 0 not at all, 1 to a point
 */
record Needle(double x0, double y0, double bendX, double bendY, double x1, double y1, double thick, double taper) {

    /**
     * Paints it. The light on the round of a needle is 1.12 − 0.36 u² with u from −1 to 1 across, whose mean is 1.
     *
     * @param colour linear light of its flat of the same reflectance
     * @param gloss linear light that a highlight adds at its brightest; 0 for a dull needle
     */
    void paint(Canvas canvas, double[] colour, double gloss) {
        paint(canvas, along -> colour, gloss);
    }

    /** The colour at a place along a needle, from 0 at its thick end to 1 at its tip. */
    interface Colouring {
        double[] at(double along);
    }

    /** Paints it in a colour that changes along it. */
    void paint(Canvas canvas, Colouring colouring, double gloss) {
        walk(1, 0, 0, (x, y, along, across, share) -> {
            double[] colour = colouring.at(along);
            // Where a needle is thinner than its highlight can be drawn, the highlight is broader and weaker.
            double line = StrictMath.max(0.22, 1.8 / (thick * (1 - taper * along * along)));
            double shade = 1.12 - 0.36 * StrictMath.min(1, across * across);
            double fromLine = (across + 0.35) / line;
            double shine = gloss * 0.22 / line * StrictMath.max(0, 1 - fromLine * fromLine);
            canvas.cover(x, y, new double[] {
                colour[0] * shade + shine, colour[1] * shade + shine, colour[2] * shade + shine
            }, share);
        });
    }

    /** Dims what lies under it, softly, as if the light came from the upper left. */
    void castShadow(Canvas canvas, double distance, double strength) {
        walk(2.6, distance, 1.3 * distance, (x, y, along, across, share) -> {
            double soft = StrictMath.max(0, 1 - across * across);
            canvas.dim(x, y, 1 - strength * soft * soft);
        });
    }

    /** Marks where it lies, for a shadow to be made of it. */
    void mark(Canvas mask) {
        walk(1, 0, 0, (x, y, along, across, share) -> mask.cover(x, y, new double[] {1, 1, 1}, share));
    }

    private interface Touch {
        void at(int x, int y, double along, double across, double share);
    }

    /** Steps along the bow pixel by pixel and from each step straight across it. */
    private void walk(double broader, double shiftX, double shiftY, Touch touch) {
        boolean flat = StrictMath.abs(x1 - x0) >= StrictMath.abs(y1 - y0);
        double from = flat ? x0 + shiftX : y0 + shiftY;
        double bend = flat ? bendX + shiftX : bendY + shiftY;
        double to = flat ? x1 + shiftX : y1 + shiftY;
        int step = to >= from ? 1 : -1;
        for (int main = (int) StrictMath.round(from); step * (to - main) >= 0; main += step) {
            double t = whereOnBow(from, bend, to, main);
            double middle = flat ? bow(y0, bendY, y1, t) + shiftY : bow(x0, bendX, x1, t) + shiftX;
            double runMain = slope(from, bend, to, t);
            double runSide = flat ? slope(y0, bendY, y1, t) : slope(x0, bendX, x1, t);
            double upright = StrictMath.abs(runMain) / StrictMath.sqrt(runMain * runMain + runSide * runSide);
            double half = broader * thick / 2 * (1 - taper * t * t);
            int reach = (int) StrictMath.ceil(half / upright + 1);
            int centre = (int) StrictMath.round(middle);
            for (int side = centre - reach; side <= centre + reach; side++) {
                double off = (side - middle) * upright;
                double share = StrictMath.max(0, StrictMath.min(1, half - StrictMath.abs(off) + 0.5));
                if (share > 0) {
                    touch.at(flat ? main : side, flat ? side : main, t, off / half, share);
                }
            }
        }
    }

    private static double bow(double from, double bend, double to, double t) {
        return (1 - t) * (1 - t) * from + 2 * t * (1 - t) * bend + t * t * to;
    }

    private static double slope(double from, double bend, double to, double t) {
        return 2 * (1 - t) * (bend - from) + 2 * t * (to - bend);
    }

    /** The bow never turns back along its longer side, so halving finds the place. */
    private static double whereOnBow(double from, double bend, double to, double at) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 24; i++) {
            double middle = (low + high) / 2;
            if (bow(from, bend, to, middle) < at == from < to) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
