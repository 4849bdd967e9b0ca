package fascicle.workings.plan;

import fascicle.notebook.Cover;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.MethodWorking;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import fascicle.workings.care.Care;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Duty;
import fascicle.workings.care.Uses;
import fascicle.workings.clock.Clock;
import fascicle.workings.clock.Schedule;
import fascicle.workings.clock.Work;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Plans a day: scales what was asked for, shares it out to pots, judges it, and sets it against shelf and clock. */
final class Planner {

    private final Workings workings;
    private final Cover cover;
    private final Care care;
    private final LargerVessel larger;
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
        larger = new LargerVessel(workings, care, ask);
    }

    DayPlan plan() {
        ask.choices().forEach(choice -> chosen(choice.id()).ifPresent(chosen -> plan(chosen, choice)));
        Schedule schedule = ask.start().map(start -> Schedule.of(pots, start)).orElseGet(() -> Schedule.of(pots));
        Shelf shelf = new Shelf(workings, batches);
        return new DayPlan(ask, larger.named(batches), List.copyOf(refused), shelf.needs(), shelf.needles(),
                shelf.dyed(), shelf.lots(), schedule, uses, duties());
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
        Solutions solutions = ask.isClass() ? Solutions.of(whole, ClassRules.asSolutions(used, ask.minors()))
                : Solutions.NONE;
        List<ClassRules.Refusal> why = refusals(used, solutions);
        if (!why.isEmpty()) {
            refused.add(new DayPlan.Refused(chosen, why));
            return;
        }
        Batch batch = new Batch(letter(batches.size()), chosen, groups, whole, solutions.made(), solutions.stillDry(),
                Optional.empty(), used);
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
        return Clock.of(work.scaledTo(scaled),
                ask.start().map(start -> start.toLocalTime()).orElse(Clock.USUAL_START));
    }

    /** Why a class may not have it; what stays dry may still be put in by a teacher, but not beside minors. */
    private List<ClassRules.Refusal> refusals(Uses used, Solutions solutions) {
        if (!ask.isClass()) {
            return List.of();
        }
        Stream<ClassRules.Refusal> dry = !ask.minors() ? Stream.empty() : solutions.stillDry().stream()
                .map(still -> new ClassRules.Refusal(Optional.of(still.part().called()), switch (still.why()) {
                    case UNWEIGHED -> ClassRules.Reason.UNWEIGHED_AND_MINORS;
                    case FINISH -> ClassRules.Reason.DRY_FINISH_AND_MINORS;
                }, List.of())).distinct();
        return Stream.concat(ClassRules.of(used, ask.minors()).refusals().stream(), dry).toList();
    }

    private List<Duty> duties() {
        return !ask.isClass() ? List.of() : Duty.of(uses, ask.minors(), thing -> batches.stream()
                .anyMatch(batch -> batch.isMadeAhead(thing.id())), thing -> batches.stream()
                .anyMatch(batch -> batch.staysDry(thing.id())));
    }
}
