package fascicle.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A volume in scoops of a kitchen's set of spoons and cups: as few scoops as come within a twentieth of it, and of as
 * few the nearest. Household spooning wanders by more than that.
 *
 * @param text such as {@code 1 tbsp + 1/2 tsp}
 * @param millilitres what the scoops hold
 * @param errorPercent how far that is from the volume that was asked for, per cent of it; below 0 where too little
 */
public record Scoops(String text, double millilitres, double errorPercent) {

    /** How far off the scoops may be before another one is taken, per cent. */
    public static final double NEAR_ENOUGH_PERCENT = 5;

    /** Beyond this a scoop says nothing: it holds twice as much as is wanted, or half. */
    public static final double USELESS_PERCENT = 50;

    /** The most scoops beside whole cups. */
    public static final int MOST_SCOOPS = 6;

    /**
     * One scoop of a set.
     *
     * @param number how much of its measure it holds, such as 1/2
     * @param measure its measure: {@code tsp}, {@code tbsp} or {@code cup}
     * @param millilitres what it holds
     */
    public record Scoop(BigFraction number, String measure, double millilitres) {

        private static Scoop of(int numerator, int denominator, String measure, Kitchen kitchen) {
            BigFraction number = BigFraction.of(numerator, denominator);
            Unit unit = Unit.named(measure, kitchen).orElseThrow();
            return new Scoop(number, measure, unit.toBase(number).doubleValue());
        }

        /**
         * Such a scoop, so many times.
         *
         * @param count from 1 on
         * @return such as {@code 2 tsp}, {@code 1/2 tsp} or {@code 2 × 1/3 cup}
         */
        public String times(int count) {
            if (number.compareTo(BigFraction.ONE) == 0) {
                return count + " " + (measure.equals("cup") && count > 1 ? "cups" : measure);
            }
            return (count == 1 ? "" : count + " × ") + Numbers.printFraction(number) + " " + measure;
        }
    }

    /**
     * The scoops that a kitchen has, from the cup down to the eighth of a teaspoon: the set that is sold
     * ({@code common practice, no source}).
     *
     * @param kitchen whose cups and spoons are meant
     * @return the scoops, largest first
     */
    public static List<Scoop> setOf(Kitchen kitchen) {
        return List.of(Scoop.of(1, 1, "cup", kitchen), Scoop.of(1, 2, "cup", kitchen), Scoop.of(1, 3, "cup", kitchen),
                Scoop.of(1, 4, "cup", kitchen), Scoop.of(1, 1, "tbsp", kitchen), Scoop.of(1, 1, "tsp", kitchen),
                Scoop.of(1, 2, "tsp", kitchen), Scoop.of(1, 4, "tsp", kitchen), Scoop.of(1, 8, "tsp", kitchen));
    }

    /**
     * A volume in scoops.
     *
     * @param millilitres the volume; 0 or more
     * @param kitchen whose cups and spoons are meant
     * @return the scoops; nothing where the volume is too small for the least of them to tell
     */
    public static Optional<Scoops> of(double millilitres, Kitchen kitchen) {
        if (!(millilitres > 0)) {
            return Optional.empty();
        }
        List<Scoop> set = setOf(kitchen);
        double cup = set.get(0).millilitres();
        int cups = (int) StrictMath.max(0, StrictMath.floor(millilitres / cup) - 1);
        Search search = new Search(set, millilitres);
        for (int scoops = 1; scoops <= MOST_SCOOPS && !search.isNearEnough(); scoops++) {
            search.tryAll(new int[scoops], 0, 0, cups * cup);
        }
        return search.errorPercent() > USELESS_PERCENT ? Optional.empty()
                : Optional.of(new Scoops(search.text(cups), search.held, search.signedErrorPercent()));
    }

    /** Tries scoops together. The browser's search adds in the same order, so that both find the same. */
    private static final class Search {

        private final List<Scoop> set;
        private final double wanted;
        private int[] best = {};
        private double held = Double.POSITIVE_INFINITY;

        Search(List<Scoop> set, double wanted) {
            this.set = set;
            this.wanted = wanted;
        }

        /** Fills the places from one on with scoops no larger than the one before. */
        void tryAll(int[] chosen, int place, int from, double sum) {
            if (place == chosen.length) {
                if (StrictMath.abs(sum - wanted) < StrictMath.abs(held - wanted)) {
                    best = chosen.clone();
                    held = sum;
                }
                return;
            }
            for (int scoop = from; scoop < set.size(); scoop++) {
                chosen[place] = scoop;
                tryAll(chosen, place + 1, scoop, sum + set.get(scoop).millilitres());
            }
        }

        boolean isNearEnough() {
            return errorPercent() <= NEAR_ENOUGH_PERCENT;
        }

        double errorPercent() {
            return StrictMath.abs(signedErrorPercent());
        }

        double signedErrorPercent() {
            return (held - wanted) / wanted * 100;
        }

        String text(int cups) {
            int[] counts = new int[set.size()];
            Arrays.stream(best).forEach(scoop -> counts[scoop]++);
            counts[0] += cups;
            return IntStream.range(0, counts.length).filter(scoop -> counts[scoop] > 0)
                    .mapToObj(scoop -> set.get(scoop).times(counts[scoop])).collect(Collectors.joining(" + "));
        }
    }
}
