package fascicle.photo;

/** How much light a channel's number means; both from 0 to 1. */
@FunctionalInterface
interface ToneCurve {

    double decode(double encoded);

    /** The light of each whole number up to the highest, which means 1. */
    default double[] light(int highest) {
        double[] light = new double[highest + 1];
        for (int i = 0; i <= highest; i++) {
            light[i] = decode((double) i / highest);
        }
        return light;
    }
}
