package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.notebook.Cover;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.workings.MethodWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import fascicle.workings.care.Care;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Uses;
import fascicle.workings.clock.Clock;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Work;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A class or a dye day.
 *
 * @param ask what was asked for
 * @param batches what is planned, method by method
 * @param refused what may not be planned, and why
 * @param needs what it takes of each dye and assistant, in the order of the work
 * @param lots needle lots, and whether each alone has enough for everyone, as far as that is known
 * @param pots the names of all pots, in the order of the batches and of their groups
 * @param schedule everything by the clock, on a stove with room for two pots
 * @param uses what is used, for cautions
 * @param duties what the teacher does of it
 */
public record DayPlan(Ask ask, List<Batch> batches, List<Refused> refused, List<Need> needs, List<Lot> lots,
        List<String> pots, Schedule schedule, Uses uses, List<ClassRules.Duty> duties) {

    /**
     * A method that may not be planned.
     *
     * @param method the method
     * @param why each reason
     */
    public record Refused(Method method, List<ClassRules.Refusal> why) {}

    /**
     * A needle lot.
     *
     * @param lot the lot
     * @param left what is left of it, g
     */
    public record Lot(NeedleLot lot, Magnitude left) {}

    /**
     * Plans a day.
     *
     * @param workings of the studio's notebook
     * @param ask what is to be planned
     * @return the plan; methods that the notebook does not have are left out
     */
    public static DayPlan of(Workings workings, Ask ask) {
        return new Planner(workings, ask).plan();
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
     * How many bundles are dyed, each of one person by one method.
     *
     * @return so many tags are wanted
     */
    public int bundles() {
        return ask.people() * batches.size();
    }

    private static final class Planner {

        private final Workings workings;
        private final Cover cover;
        private final Care care;
        private final Ask ask;
        private final List<Batch> batches = new ArrayList<>();
        private final List<Refused> refused = new ArrayList<>();
        private final List<Schedule.Pot> pots = new ArrayList<>();
        private Uses uses = Uses.NOTHING;

        Planner(Workings workings, Ask ask) {
            this.workings = workings;
            this.ask = ask;
            cover = workings.notebook().cover();
            care = Care.of(workings.notebook());
        }

        DayPlan plan() {
            ask.choices().forEach(choice -> workings.method(choice.method()).ifPresent(method -> plan(method, choice)));
            Schedule schedule = ask.start().map(start -> Schedule.of(pots, start)).orElseGet(() -> Schedule.of(pots));
            List<ClassRules.Duty> duties = ask.isClass() ? ClassRules.of(uses, ask.minors()).duties() : List.of();
            return new DayPlan(ask, List.copyOf(batches), List.copyOf(refused), needs(), lots(),
                    pots.stream().map(Schedule.Pot::name).toList(), schedule, uses, duties);
        }

        private void plan(MethodWorking method, Ask.Choice choice) {
            String id = method.method().id();
            List<PotGroup> groups = Potting.of(ask.people(), ask.gramsEach(),
                    grams -> workings.scale(id, grams, choice.vessel()).orElseThrow());
            Scaled whole = Totals.of(groups);
            Uses used = care.uses(method.method().recipe(), whole.vessel());
            List<ClassRules.Refusal> why = ask.isClass() ? ClassRules.of(used, ask.minors()).refusals() : List.of();
            if (!why.isEmpty()) {
                refused.add(new Refused(method.method(), why));
                return;
            }
            Batch batch = new Batch(method.method(), groups, whole, solutions(whole, used));
            batches.add(batch);
            uses = uses.plus(used);
            int number = 0;
            for (PotGroup group : groups) {
                Clock clock = clock(method, group.scaled());
                for (int pot = 0; pot < group.pots(); pot++) {
                    number++;
                    pots.add(new Schedule.Pot(named(method.method(), number, batch.pots()), clock));
                }
            }
        }

        private Clock clock(MethodWorking method, Scaled scaled) {
            return Clock.of(Work.of(method, cover).with(scaled.liquorMl(), scaled.before(), scaled.after()),
                    ask.start().map(start -> start.toLocalTime()).orElse(Clock.USUAL_START));
        }

        /** Two methods may have one title, and one method several pots. */
        private String named(Method method, int pot, int of) {
            boolean again = ask.choices().stream().map(Ask.Choice::method).flatMap(id -> workings.method(id).stream())
                    .filter(other -> other.method().called().equals(method.called())).count() > 1;
            return method.called() + (again ? " (" + method.id() + ")" : "") + (of == 1 ? "" : " " + pot + "/" + of);
        }

        private List<Solution> solutions(Scaled scaled, Uses used) {
            if (!ask.isClass()) {
                return List.of();
            }
            Set<String> dissolved = ClassRules.asSolutions(used, ask.minors()).stream().map(Dye::id).map(Ids::key)
                    .collect(Collectors.toSet());
            return scaled.everything().stream()
                    .filter(part -> part.dissolves() && dissolved.contains(Ids.key(part.is())))
                    .filter(part -> part.grams().orElse(0) > 0)
                    .map(part -> Solution.of(part, part.grams().orElseThrow(), scaled.liquorMl().orElse(0))).toList();
        }

        private List<Need> needs() {
            Map<String, List<PartFigures>> parts = new LinkedHashMap<>();
            batches.stream().flatMap(batch -> batch.whole().everything().stream()).forEach(part ->
                    parts.computeIfAbsent(Ids.key(part.is()), unused -> new ArrayList<>()).add(part));
            return parts.values().stream().map(this::need).toList();
        }

        private Need need(List<PartFigures> parts) {
            PartFigures first = parts.get(0);
            Magnitude grams = Magnitude.ZERO;
            Magnitude millilitres = Magnitude.ZERO;
            for (PartFigures part : parts) {
                boolean rough = part.amountAbout() || part.spooned();
                grams = grams.plus(new Magnitude(part.grams(), rough));
                // Of a stock solution the volume is not that of the thing.
                millilitres = millilitres.plus(part.stockPercent().isPresent() ? Magnitude.UNKNOWN
                        : new Magnitude(part.ml(), rough));
            }
            return new Need(first.is(), first.called(), grams, millilitres, workings.stock().dye(first.is()));
        }

        private List<Lot> lots() {
            Notebook notebook = workings.notebook();
            return notebook.lots().stream().map(lot -> new Lot(lot, workings.stock().lot(lot.id())
                    .map(supply -> supply.remainder().left()).orElse(Magnitude.UNKNOWN))).toList();
        }
    }
}
