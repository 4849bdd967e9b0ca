package fascicle.workings.plan;

import fascicle.notebook.Method;
import fascicle.notebook.Part;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is done by one method.
 *
 * @param method the method
 * @param groups its pots
 * @param whole the quantities of all pots together
 * @param solutions what the teacher makes ahead, for all pots together
 */
public record Batch(Method method, List<PotGroup> groups, Scaled whole, List<Solution> solutions) {

    /**
     * How many pots, as far as anybody knows.
     *
     * @return 1 where the vessel's measures are unknown
     */
    public int pots() {
        return groups.stream().mapToInt(PotGroup::pots).sum();
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
