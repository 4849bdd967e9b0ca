package fascicle.workings.plan;

import fascicle.workings.Scaled;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Shares people's bundles out between pots, as evenly as whole bundles can be and in as few pots as hold them. */
final class Potting {

    private Potting() {}

    /**
     * The pots of one method.
     *
     * @param people how many bundles
     * @param each dry weight of one, g
     * @param scale works the method out for a weight, g
     * @return groups of like pots, the fuller ones first; one pot for all where nobody knows what a vessel holds
     */
    static List<PotGroup> of(int people, double each, DoubleFunction<Scaled> scale) {
        Scaled whole = scale.apply(people * each);
        if (whole.pots().orElse(1) == 1) {
            return List.of(new PotGroup(1, people, whole));
        }
        Scaled single = scale.apply(each);
        int parting = single.pots().orElse(1);
        if (parting > 1) {
            return List.of(new PotGroup((int) StrictMath.min(Integer.MAX_VALUE, (long) people * parting), 0,
                    scale.apply(each / parting).pouring(new Sharing(1.0 / (people * parting)))));
        }
        int most = most(people, each, scale);
        int pots = (people + most - 1) / most;
        int fuller = (people + pots - 1) / pots;
        int full = people - pots * (fuller - 1);
        List<PotGroup> groups = new ArrayList<>();
        groups.add(group(full, fuller, people, scale.apply(fuller * each)));
        if (full < pots) {
            groups.add(group(pots - full, fuller - 1, people, scale.apply((fuller - 1) * each)));
        }
        return List.copyOf(groups);
    }

    private static PotGroup group(int pots, int bundles, int people, Scaled scaled) {
        return new PotGroup(pots, bundles, scaled.pouring(new Sharing((double) bundles / people)));
    }

    /** The most bundles that one pot holds: at least 1, and fewer than all. */
    private static int most(int people, double each, DoubleFunction<Scaled> scale) {
        int fits = 1;
        int tooMany = people;
        while (tooMany - fits > 1) {
            int tried = (fits + tooMany) / 2;
            if (scale.apply(tried * each).pots().orElse(1) == 1) {
                fits = tried;
            } else {
                tooMany = tried;
            }
        }
        return fits;
    }
}
