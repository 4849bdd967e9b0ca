package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.notebook.Cover;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
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

/** Plans a day: scales what was asked for, shares it out to pots, judges it, and sets it against shelf and clock. */
final class Planner {

    private final Workings workings;
    private final Cover cover;
    private final Care care;
    private final Stocktaking stock;
    private final Ask ask;
    private final List<Batch> batches = new ArrayList<>();
    private final List<DayPlan.Refused> refused = new ArrayList<>();
    private final List<Schedule.Pot> pots = new ArrayList<>();
    private Uses uses = Uses.NOTHING;

    Planner(Workings workings, Ask ask) {
        this.workings = workings;
        this.ask = ask;
        cover = workings.notebook().cover();
        care = Care.of(workings.notebook());
        stock = Stocktaking.of(workings);
    }

    DayPlan plan() {
        ask.choices().forEach(choice -> chosen(choice.id()).ifPresent(chosen -> plan(chosen, choice)));
        Schedule schedule = ask.start().map(start -> Schedule.of(pots, start)).orElseGet(() -> Schedule.of(pots));
        List<ClassRules.Duty> duties = ask.isClass() ? ClassRules.of(uses, ask.minors()).duties() : List.of();
        return new DayPlan(ask, List.copyOf(batches), List.copyOf(refused), needs(), lots(), schedule, uses, duties);
    }

    private Optional<Chosen> chosen(String id) {
        return workings.entry(id).map(EntryWorking::entry)
                .map(entry -> new Chosen(entry.id(), entry.called(), entry.recipe(),
                        told(entry.method().map(Noted::value)),
                        entry.needles().lot().map(Noted::value)))
                .or(() -> workings.method(id).map(MethodWorking::method)
                        .map(method -> new Chosen(method.id(), method.called(), method.recipe(),
                                told(Optional.of(method.id())),
                                method.needles().lot().map(Noted::value))));
    }

    /** What a method says, and what the one that it follows does, since a sheet on the table leads nowhere else. */
    private List<Chosen.Told> told(Optional<String> method) {
        Map<String, Chosen.Told> told = new LinkedHashMap<>();
        Optional<Method> next = method.flatMap(workings::method).map(MethodWorking::method);
        while (next.isPresent() && !told.containsKey(Ids.key(next.get().id()))) {
            told.put(Ids.key(next.get().id()), new Chosen.Told(next.get().called(), next.get().notes()));
            next = next.get().follows().map(Noted::value).flatMap(workings::method).map(MethodWorking::method);
        }
        return List.copyOf(told.values());
    }

    private void plan(Chosen chosen, Ask.Choice choice) {
        List<PotGroup> groups = Potting.of(ask.people(), ask.gramsEach(),
                grams -> workings.scale(chosen.id(), grams, choice.vessel()).orElseThrow());
        Scaled whole = Totals.of(groups);
        Uses used = care.uses(chosen.recipe(), whole.vessel());
        List<ClassRules.Refusal> why = ask.isClass() ? ClassRules.of(used, ask.minors()).refusals() : List.of();
        if (!why.isEmpty()) {
            refused.add(new DayPlan.Refused(chosen, why));
            return;
        }
        Batch batch = new Batch(letter(batches.size()), chosen, groups, whole, solutions(whole, used), used);
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

    private List<Solution> solutions(Scaled whole, Uses used) {
        return ask.isClass() ? Solutions.of(whole, ClassRules.asSolutions(used, ask.minors())) : List.of();
    }

    private List<Need> needs() {
        Map<String, List<PartFigures>> parts = new LinkedHashMap<>();
        for (Batch batch : batches) {
            batch.whole().everything().forEach(part -> parts.computeIfAbsent(Ids.key(part.is()), unused -> new ArrayList<>())
                    .add(part.amounting(batch.takenGrams(part, workings.measuring().balance()), part.ml())));
        }
        return parts.values().stream().map(this::need).toList();
    }

    private Need need(List<PartFigures> parts) {
        PartFigures first = parts.get(0);
        Magnitude density = density(first.is());
        Magnitude grams = Magnitude.ZERO;
        Magnitude millilitres = Magnitude.ZERO;
        for (PartFigures part : parts) {
            grams = grams.plus(part.mass());
            millilitres = millilitres.plus(part.volumeAsSold(density));
        }
        return new Need(first.is(), first.called(), grams, millilitres, stock.dye(first.is()));
    }

    private Magnitude density(String id) {
        return workings.notebook().dyes().stream().filter(dye -> Ids.same(dye.id(), id)).findFirst()
                .flatMap(Dye::density).map(density -> Magnitude.of(density.value())).orElse(Magnitude.UNKNOWN);
    }

    private List<DayPlan.Lot> lots() {
        Notebook notebook = workings.notebook();
        return notebook.lots().stream().map(lot -> new DayPlan.Lot(lot, stock.lot(lot.id())
                .map(supply -> supply.remainder().left()).orElse(Magnitude.UNKNOWN))).toList();
    }
}
