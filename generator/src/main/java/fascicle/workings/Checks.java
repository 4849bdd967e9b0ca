package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Missing;
import java.util.ArrayList;
import java.util.List;

/** Asks of a notebook what only its figures can tell. */
final class Checks {

    private final Workings workings;
    private final Recipes recipes;

    Checks(Workings workings, Recipes recipes) {
        this.workings = workings;
        this.recipes = recipes;
    }

    /** Everything found. */
    Found all() {
        Findings findings = new Findings();
        List<Missing> faulty = new ArrayList<>();
        BathChecks baths = new BathChecks(findings, workings.notebook().cover());
        AmountChecks amounts = new AmountChecks(recipes, findings);
        GapChecks gaps = new GapChecks(recipes, findings);
        for (MethodWorking working : workings.methods()) {
            WorkedRecipe recipe = recipes.ofShown(working.method());
            baths.check(working.method().called(), working.method().recipe(), recipe,
                    recipes.vessel(working.method().recipe()), working.method().place());
            amounts.check(recipe);
            amounts.weight(working.method());
            gaps.check(working.method(), recipe);
        }
        for (EntryWorking working : workings.entries()) {
            Entry entry = working.entry();
            WorkedRecipe recipe = workings.recipe(working);
            int mark = findings.mark();
            baths.check(entry.called(), entry.recipe(), recipe, recipes.vessel(entry.recipe()), entry.place());
            amounts.check(recipe);
            amounts.weight(working);
            gaps.check(working, recipe);
            List<String> why = findings.errorsSince(mark).stream().map(Finding::message).toList();
            if (!why.isEmpty()) {
                faulty.add(new Missing(entry.id(), entry.place(), entry.share(), true, why));
            }
        }
        new DateChecks(workings.notebook(), findings).check();
        new ReuseChecks(workings, findings).check();
        return new Found(findings.sorted(), List.copyOf(faulty));
    }
}
