package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Method;
import fascicle.notebook.Missing;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Asks of a notebook what only its figures can tell. */
final class Checks {

    private final Workings workings;
    private final Recipes recipes;
    private final Unread unread;

    Checks(Workings workings, Recipes recipes, Unread unread) {
        this.workings = workings;
        this.recipes = recipes;
        this.unread = unread;
    }

    /** Everything found. */
    Found all() {
        Findings findings = new Findings();
        SharedFindings shared = new SharedFindings(findings, workings.methods().stream()
                .map(working -> working.method().place().file()).collect(Collectors.toSet()));
        methods(shared);
        List<Missing> faulty = new ArrayList<>();
        for (EntryWorking working : workings.entries()) {
            Findings found = found(working);
            shared.add(found.sorted(), working.entry().place(), followed(working));
            faulty(working.entry(), found.errorsSince(0)).ifPresent(faulty::add);
        }
        new AmountChecks(unread, findings).weights(workings.notebook().cover());
        new MeasureChecks(workings.notebook(), findings).check();
        new DateChecks(workings.notebook(), findings).check();
        new ReuseChecks(workings, findings).check();
        return new Found(findings.sorted(), List.copyOf(faulty));
    }

    /** What is wrong with methods by themselves comes before what they borrow from one another. */
    private void methods(SharedFindings shared) {
        List<Runnable> borrowed = new ArrayList<>();
        for (MethodWorking working : workings.methods()) {
            Place whole = working.method().place();
            List<Finding> found = found(working).sorted();
            shared.add(found.stream().filter(finding -> !shared.isLent(finding, whole)).toList(), whole,
                    List.of());
            borrowed.add(() -> shared.add(found.stream().filter(finding -> shared.isLent(finding, whole)).toList(),
                    whole, List.of()));
        }
        borrowed.forEach(Runnable::run);
    }

    private List<Place> followed(EntryWorking working) {
        return workings.followed(working).stream().flatMap(id -> workings.method(id).stream())
                .map(method -> method.method().place()).toList();
    }

    private Findings found(MethodWorking working) {
        Findings findings = new Findings();
        Method method = working.method();
        WorkedRecipe recipe = recipes.ofShown(method);
        check(method.called(), method.recipe(), recipe, working.pot(), method.place(), findings);
        new AmountChecks(unread, findings).weight(method);
        new GapChecks(unread, findings).check(method, recipe);
        return findings;
    }

    private Findings found(EntryWorking working) {
        Findings findings = new Findings();
        Entry entry = working.entry();
        WorkedRecipe recipe = workings.recipe(working);
        check(entry.called(), entry.recipe(), recipe, working.pot(), entry.place(), findings);
        AmountChecks amounts = new AmountChecks(unread, findings);
        amounts.weight(working);
        amounts.kept(working);
        new GapChecks(unread, findings).check(working, recipe);
        new GlassChecks(findings).check(working);
        return findings;
    }

    /** What is asked of a recipe, whoever has it. */
    private void check(String called, Recipe recipe, WorkedRecipe worked, PotFigures pot, Place whole,
            Findings findings) {
        Optional<Vessel> vessel = recipes.vessel(recipe);
        new BathChecks(findings, workings.notebook().cover()).check(called, recipe, worked, whole);
        new VesselChecks(unread, findings).check(called, worked, recipe.bath().water(), vessel, pot, whole);
        new HeatedVesselChecks(findings).check(called, recipe, vessel, whole);
        new AmountChecks(unread, findings).check(worked);
        new MixingChecks(findings).check(worked);
    }

    /** An entry that errors keep out, with those errors; of what stands elsewhere it is said where. */
    private static Optional<Missing> faulty(Entry entry, List<Finding> errors) {
        List<String> why = errors.stream().map(error -> error.place().file().equals(entry.place().file())
                ? error.message() : error.place() + ": " + error.message()).toList();
        return why.isEmpty() ? Optional.empty()
                : Optional.of(new Missing(entry.id(), entry.place(), entry.share(), true, why));
    }
}
