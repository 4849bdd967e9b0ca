package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.notebook.NeedleLot;
import fascicle.workings.Workings;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Duty;
import fascicle.workings.care.Uses;
import fascicle.workings.clock.Schedule;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A class or a dye day.
 *
 * @param ask what was asked for
 * @param batches what is planned, method by method
 * @param refused what may not be planned, and why
 * @param needs what it takes of each dye and assistant, in the order of the work
 * @param needles what it takes of each needle lot that methods name
 * @param dyed the needles that had been dyed before, of the entries that dyed such ones
 * @param lots every needle lot, and what is left of it
 * @param schedule everything by the clock, on a stove with room for two pots
 * @param uses what is used, for cautions
 * @param duties what the teacher does of it
 */
public record DayPlan(Ask ask, List<Batch> batches, List<Refused> refused, List<Need> needs,
        List<LotNeed> needles, List<DyedNeed> dyed, List<Lot> lots, Schedule schedule, Uses uses, List<Duty> duties) {

    /**
     * What may not be planned.
     *
     * @param chosen the method or entry
     * @param why each reason
     */
    public record Refused(Chosen chosen, List<ClassRules.Refusal> why) {}

    /**
     * A needle lot.
     *
     * @param lot the lot
     * @param left what is left of it, g
     */
    public record Lot(NeedleLot lot, Magnitude left) {

        /**
         * Whether it alone has so much.
         *
         * @param grams of dry needles
         * @return nothing where it is not known what is left
         */
        public Optional<Boolean> has(double grams) {
            return left.known() ? Optional.of(left.orThrow() >= grams) : Optional.empty();
        }
    }

    /**
     * Plans a day.
     *
     * @param workings of the studio's notebook
     * @param ask what is to be planned
     * @return the plan; what the notebook does not have is left out
     */
    public static DayPlan of(Workings workings, Ask ask) {
        return new Planner(workings, ask).plan();
    }

    /**
     * How many pots a plan would take, without making it.
     *
     * @param workings of the studio's notebook
     * @param ask what is to be planned
     * @return as many as fit no fewer
     */
    public static long pots(Workings workings, Ask ask) {
        return ask.choices().stream().mapToLong(choice -> Potting.of(ask.people(), ask.gramsEach(),
                        grams -> workings.scale(choice.id(), grams, choice.vessel()).orElseThrow()).stream()
                .mapToLong(PotGroup::pots).sum()).sum();
    }

    /**
     * The needles for all methods that are planned.
     *
     * @return in g
     */
    public double needlesGrams() {
        return ask.gramsOfMethod() * batches.size();
    }

    /**
     * The methods that name no needles, which have still to be found.
     *
     * @return none where each names one
     */
    public List<Batch> withoutLot() {
        List<String> named = Stream.concat(needles.stream().flatMap(need -> need.letters().stream()),
                dyed.stream().map(DyedNeed::letter)).toList();
        return batches.stream().filter(batch -> !named.contains(batch.letter())).toList();
    }

    /**
     * Whether a lot alone has so much more than is done on it anyhow.
     *
     * @param lot any lot
     * @param grams of dry needles, beside what methods that name the lot take of it
     * @return nothing where it is not known what is left of it
     */
    public Optional<Boolean> spares(Lot lot, double grams) {
        return lot.has(grams + needles.stream().filter(need -> need.lot().equals(lot.lot()))
                .mapToDouble(LotNeed::grams).sum());
    }

    /**
     * How many bundles are dyed, each of one person by one method.
     *
     * @return so many tags are wanted
     */
    public int bundles() {
        return ask.people() * batches.size();
    }
}
