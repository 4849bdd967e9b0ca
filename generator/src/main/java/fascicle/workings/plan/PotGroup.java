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
public record PotGroup(int pots, int bundles, Scaled scaled) {}
