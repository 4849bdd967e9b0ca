package fascicle.workings.plan;

import fascicle.bath.Stock;
import fascicle.notebook.Ids;
import fascicle.notebook.Part;
import fascicle.notebook.Vessel;
import fascicle.workings.BatchRemark;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import fascicle.workings.care.Uses;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is done by one method or entry.
 *
 * @param letter what its pots are called by: A for the first, whose pots are A1, A2 …
 * @param chosen the method or entry
 * @param groups its pots
 * @param whole the quantities of all pots together
 * @param solutions what the teacher makes ahead, for all pots together
 * @param stillDry what the teacher puts in herself, since no solution can be made of it
 * @param larger a vessel of the notebook that would hold all of it, where it takes several pots, and that is free
 * @param uses what is used, for cautions
 */
public record Batch(String letter, Chosen chosen, List<PotGroup> groups, Scaled whole, List<Solution> solutions,
        List<StillDry> stillDry, Optional<Vessel> larger, Uses uses) {

    /**
     * How many pots there are to work with: one, where nobody knows what the vessel holds.
     *
     * @return from 1 on; whether that is known tells {@link Scaled#pots} of the whole
     */
    public int pots() {
        return groups.stream().mapToInt(PotGroup::pots).sum();
    }

    /** The same, with a vessel that would hold all of it. */
    Batch withLarger(Optional<Vessel> found) {
        return new Batch(letter, chosen, groups, whole, solutions, stillDry, found, uses);
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
        return solution(part).map(made -> OptionalDouble.of(made.percent())).orElse(OptionalDouble.empty());
    }

    /**
     * Whether only the teacher puts in a line of the recipe, dry.
     *
     * @param part the line
     * @return false where anyone may
     */
    public boolean staysDry(Part part) {
        return stillDry.stream().anyMatch(still -> still.part().part().equals(part));
    }

    /** Whether anything of a thing stays dry. */
    boolean staysDry(String id) {
        return stillDry.stream().anyMatch(still -> Ids.same(still.part().is(), id));
    }

    /** Whether anything of a thing comes dissolved: as a solution, or from a stock, as the recipe has it. */
    boolean isMadeAhead(String id) {
        return whole.everything().stream().filter(part -> Ids.same(part.is(), id))
                .anyMatch(part -> part.stockPercent().isPresent() || solution(part.part()).isPresent());
    }

    private Optional<Solution> solution(Part part) {
        return solutions.stream().filter(made -> made.part().part().equals(part)).findFirst();
    }

    /**
     * What a part takes from its pack: of what comes as a solution as much as is dissolved, be it more than the baths
     * take of it.
     *
     * @param part a part of {@link #whole}
     * @param step the balance's smallest step, g; nothing where that is not known
     * @return in g; nothing where that is not known
     */
    public OptionalDouble takenGrams(PartFigures part, OptionalDouble step) {
        return solution(part.part()).map(made -> OptionalDouble.of(made.weighing(step))).orElse(part.grams());
    }

    /**
     * The same quantities where less water is poured, since the solutions bring some, and where no other stock is made
     * of what comes as a solution.
     *
     * @param scaled all pots, or one of them
     * @return the quantities with the water to pour beside the solutions in each bath, never below 0
     */
    public Scaled besideSolutions(Scaled scaled) {
        return scaled.pouring((water, parts) -> water.isEmpty() ? water
                : OptionalDouble.of(StrictMath.max(0, water.getAsDouble() - brought(parts))))
                .remarked(scaled.remarks().stream().filter(remark -> !isOfAnotherStock(remark)).toList());
    }

    private boolean isOfAnotherStock(BatchRemark remark) {
        return remark instanceof BatchRemark.TooMuchStock stock && solution(stock.part()).isPresent();
    }

    /**
     * Whether solutions bring more water than a bath may have.
     *
     * @return true where a stronger solution, or the thing itself, would be needed
     */
    public boolean isOverfull() {
        Stream<SoakFigures> soaks = Stream.of(whole.presoak().stream(), whole.before().stream(), whole.after().stream())
                .flatMap(found -> found);
        return brought(whole.parts()) > whole.waterMl().orElse(Double.POSITIVE_INFINITY)
                || soaks.anyMatch(soak -> brought(soak.with()) > soak.waterMl().orElse(Double.POSITIVE_INFINITY));
    }

    private double brought(List<PartFigures> parts) {
        return parts.stream().filter(part -> strength(part.part()).isPresent()).mapToDouble(part ->
                new Stock(strength(part.part()).orElseThrow()).millilitres(part.grams().orElse(0))).sum();
    }
}
