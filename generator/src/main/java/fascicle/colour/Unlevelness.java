package fascicle.colour;

import java.util.List;

/** How far the readings of one batch lie from their mean: a level dyeing has little of it. */
public final class Unlevelness {

    private Unlevelness() {}

    /**
     * The mean colour difference from the mean (MCDM, after ASTM E2214): the mean CIEDE2000 between each reading and
     * the mean Lab of all. One reading has none, which says nothing about the batch.
     *
     * @throws IllegalArgumentException if there are no readings
     */
    public static double of(List<Lab> readings) {
        Lab mean = Lab.mean(readings);
        double sum = 0;
        for (Lab reading : readings) {
            sum += ColourDifference.ciede2000(mean, reading);
        }
        return sum / readings.size();
    }
}
