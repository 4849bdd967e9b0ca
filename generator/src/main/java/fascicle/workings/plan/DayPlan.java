package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.notebook.Cover;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.workings.EntryWorking;
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
import fascicle.workings.stock.Stocktaking;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * @param schedule everything by the clock, on a stove with room for two pots
 * @param uses what is used, for cautions
 * @param duties what the teacher does of it
 */
public record DayPlan(Ask ask, List<Batch> batches, List<Refused> refused, List<Need> needs, List<Lot> lots,
        Schedule schedule, Uses uses, List<ClassRules.Duty> duties) {

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
    public record Lot(NeedleLot lot, Magnitude left) {}

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
            ask.choices().forEach(choice -> chosen(choice.id()).ifPresent(chosen -> plan(chosen, choice)));
            Schedule schedule = ask.start().map(start -> Schedule.of(pots, start)).orElseGet(() -> Schedule.of(pots));
            List<ClassRules.Duty> duties = ask.isClass() ? ClassRules.of(uses, ask.minors()).duties() : List.of();
            return new DayPlan(ask, List.copyOf(batches), List.copyOf(refused), needs(), lots(), schedule, uses, duties);
        }

        private Optional<Chosen> chosen(String id) {
            return workings.entry(id).map(EntryWorking::entry)
                    .map(entry -> new Chosen(entry.id(), entry.called(), entry.recipe()))
                    .or(() -> workings.method(id).map(MethodWorking::method)
                            .map(method -> new Chosen(method.id(), method.called(), method.recipe())));
        }

        private void plan(Chosen chosen, Ask.Choice choice) {
            List<PotGroup> groups = Potting.of(ask.people(), ask.gramsEach(),
                    grams -> workings.scale(chosen.id(), grams, choice.vessel()).orElseThrow());
            Scaled whole = Totals.of(groups);
            Uses used = care.uses(chosen.recipe(), whole.vessel());
            List<ClassRules.Refusal> why = ask.isClass() ? ClassRules.of(used, ask.minors()).refusals() : List.of();
            if (!why.isEmpty()) {
                refused.add(new Refused(chosen, why));
                return;
            }
            Batch batch = new Batch(letter(batches.size()), chosen, groups, whole, solutions(whole, used));
            batches.add(batch);
            uses = uses.plus(used);
            for (PotGroup group : groups) {
                Clock clock = clock(chosen, group.scaled());
                for (int pot = 0; pot < group.pots(); pot++) {
                    pots.add(new Schedule.Pot(batch.potNames().get(numbered(batch)), clock));
                }
            }
        }

        /** How many pots of a batch stand in the plan already. */
        private int numbered(Batch batch) {
            return (int) pots.stream().filter(pot -> batch.potNames().contains(pot.name())).count();
        }

        /** A to Z, then AA, AB and so on. */
        private static String letter(int place) {
            return (place < 26 ? "" : letter(place / 26 - 1)) + (char) ('A' + place % 26);
        }

        private Clock clock(Chosen chosen, Scaled scaled) {
            Work work = workings.entry(chosen.id()).map(entry -> Work.of(entry, cover))
                    .or(() -> workings.method(chosen.id()).map(method -> Work.of(method, cover))).orElseThrow();
            return Clock.of(work.with(scaled.liquorMl(), scaled.before(), scaled.after()),
                    ask.start().map(start -> start.toLocalTime()).orElse(Clock.USUAL_START));
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
            return new Need(first.is(), first.called(), grams, millilitres, Stocktaking.of(workings).dye(first.is()));
        }

        private List<Lot> lots() {
            Notebook notebook = workings.notebook();
            Stocktaking stock = Stocktaking.of(workings);
            return notebook.lots().stream().map(lot -> new Lot(lot, stock.lot(lot.id())
                    .map(supply -> supply.remainder().left()).orElse(Magnitude.UNKNOWN))).toList();
        }
    }
}
