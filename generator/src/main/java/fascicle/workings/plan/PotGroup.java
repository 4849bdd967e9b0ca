package fascicle.workings.plan;

import fascicle.workings.Scaled;

/**
 * Pots of one method that hold equally many bundles; no bundle is parted between pots unless one alone fills more than
 * one.
 *
 * @param pots how many such pots
 * @param bundles how many people's bundles are in each; 0 where a bundle is parted
 * @param scaled the quantities of one of them
 */
public record PotGroup(int pots, int bundles, Scaled scaled) {

    /**
     * How many tags are wanted for all of these pots.
     *
     * @return one for each bundle, or for each part of a bundle
     */
    public int tags() {
        return pots * StrictMath.max(1, bundles);
    }
}
