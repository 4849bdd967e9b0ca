package fascicle.workings.grid;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.Unlevelness;
import fascicle.workings.ColourFigures;
import fascicle.workings.Difference;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far repeats of one recipe lie from each other.
 *
 * @param mean mean CIEDE2000 of the colours from their mean (MCDM, after ASTM E2214), as sure as the least sure colour
 * @param largest the largest CIEDE2000 between any two, as sure as two of the least sure colours
 * @param colours of how many entries
 * @param readAlike whether all were read in the same way, by meter or as screen colours
 */
public record Spread(Difference mean, Difference largest, int colours, boolean readAlike) {

    /**
     * Of more colours than these the two farthest apart are looked for among those farthest from the mean, so that a
     * thousand repeats cost no million comparisons.
     */
    private static final int COMPARED = 200;

    /** The spread of colours; nothing where there are fewer than two. */
    static Optional<Spread> of(List<ColourFigures> colours) {
        if (colours.size() < 2) {
            return Optional.empty();
        }
        List<Lab> labs = colours.stream().map(ColourFigures::lab).toList();
        boolean alike = colours.stream().map(ColourFigures::by).distinct().count() == 1
                && !colours.get(0).by().equals("mixed");
        double leastSure = colours.stream().mapToDouble(ColourFigures::uncertainty).max().orElseThrow();
        return Optional.of(new Spread(new Difference(Unlevelness.of(labs), leastSure),
                new Difference(largest(labs), StrictMath.sqrt(2) * leastSure), labs.size(), alike));
    }

    private static double largest(List<Lab> colours) {
        Lab mean = Lab.mean(colours);
        List<Lab> outer = colours.size() <= COMPARED ? colours : colours.stream()
                .sorted(Comparator.comparingDouble((Lab colour) -> -ColourDifference.ciede2000(mean, colour)))
                .limit(COMPARED).toList();
        double largest = 0;
        for (int i = 0; i < outer.size(); i++) {
            for (Lab other : outer.subList(i + 1, outer.size())) {
                // The larger of two numbers is the same on every machine.
                largest = Math.max(largest, ColourDifference.ciede2000(outer.get(i), other));
            }
        }
        return largest;
    }
}
