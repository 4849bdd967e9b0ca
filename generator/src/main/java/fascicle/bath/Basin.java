package fascicle.bath;

/** The inside of a vessel, with upright walls; lengths in cm. */
public sealed interface Basin {

    /**
     * The surface of the liquor.
     *
     * @return in cm²
     */
    double area();

    /**
     * The longest straight line that lies flat inside.
     *
     * @return in cm
     */
    double longestLine();

    /**
     * What it holds up to a depth: area times depth, 1 cm³ being 1 mL.
     *
     * @param depth of the liquor, in cm; 0 or more
     * @return in mL
     */
    default double millilitres(double depth) {
        if (!(depth >= 0)) {
            throw new IllegalArgumentException("a depth is 0 cm or more: " + depth);
        }
        return area() * depth;
    }

    /**
     * A round vessel.
     *
     * @param diameter in cm
     */
    record Round(double diameter) implements Basin {
        @Override
        public double area() {
            return StrictMath.PI * diameter * diameter / 4;
        }

        @Override
        public double longestLine() {
            return diameter;
        }
    }

    /**
     * An oval vessel, taken as an ellipse.
     *
     * @param length in cm
     * @param width in cm
     */
    record Oval(double length, double width) implements Basin {
        @Override
        public double area() {
            return StrictMath.PI * length * width / 4;
        }

        @Override
        public double longestLine() {
            return StrictMath.max(length, width);
        }
    }

    /**
     * A rectangular vessel.
     *
     * @param length in cm
     * @param width in cm
     */
    record Rectangular(double length, double width) implements Basin {
        @Override
        public double area() {
            return length * width;
        }

        @Override
        public double longestLine() {
            return StrictMath.hypot(length, width);
        }
    }
}
