package fascicle.workings.plan;

import fascicle.notebook.Part;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What is done by one method or entry.
 *
 * @param letter what its pots are called by: A for the first, whose pots are A1, A2 …
 * @param chosen the method or entry
 * @param groups its pots
 * @param whole the quantities of all pots together
 * @param solutions what the teacher makes ahead, for all pots together
 */
public record Batch(String letter, Chosen chosen, List<PotGroup> groups, Scaled whole, List<Solution> solutions) {

    /**
     * How many pots, as far as anybody knows.
     *
     * @return 1 where the vessel's measures are unknown
     */
    public int pots() {
        return groups.stream().mapToInt(PotGroup::pots).sum();
    }

    /**
     * What its pots are called.
     *
     * @return such as A1 and A2, in the order of the groups; A alone where there is one
     */
    public List<String> potNames() {
        return pots() == 1 ? List.of(letter)
                : IntStream.rangeClosed(1, pots()).mapToObj(number -> letter + number).toList();
    }

    /**
     * The strength of the solution that a line of the recipe comes as.
     *
     * @param part the line
     * @return g in 100 mL; nothing where it is handled as it is
     */
    public OptionalDouble strength(Part part) {
        Optional<Solution> made = solutions.stream().filter(solution -> solution.part().part().equals(part)).findFirst();
        return made.map(solution -> OptionalDouble.of(solution.percent())).orElse(OptionalDouble.empty());
    }

    /**
     * The same quantities where less water is poured, since the solutions bring some.
     *
     * @param scaled all pots, or one of them
     * @return the quantities with the water to pour beside the solutions, never below 0
     */
    public Scaled besideSolutions(Scaled scaled) {
        double brought = scaled.parts().stream().mapToDouble(this::millilitres).sum();
        return scaled.waterMl().isEmpty() || brought == 0 ? scaled
                : scaled.pouring(StrictMath.max(0, scaled.waterMl().getAsDouble() - brought));
    }

    private double millilitres(PartFigures part) {
        OptionalDouble strength = strength(part.part());
        return strength.isPresent() && part.grams().isPresent()
                ? part.grams().getAsDouble() * 100 / strength.getAsDouble() : 0;
    }
}
