package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import java.util.List;

/** Asks of a notebook what only its figures can tell. */
final class Checks {

    private final Workings workings;
    private final Recipes recipes;

    Checks(Workings workings, Recipes recipes) {
        this.workings = workings;
        this.recipes = recipes;
    }

    /** Everything found, in order. */
    List<Finding> findings() {
        Findings findings = new Findings();
        BathChecks baths = new BathChecks(findings);
        AmountChecks amounts = new AmountChecks(recipes, findings);
        GapChecks gaps = new GapChecks(recipes, findings);
        for (MethodWorking working : workings.methods()) {
            WorkedRecipe recipe = recipes.ofMethod(working.method());
            baths.check(working.method().called(), working.method().recipe(), recipe, working.method().place());
            amounts.check(recipe);
            amounts.weight(working.method());
            gaps.check(working.method(), recipe);
        }
        for (EntryWorking working : workings.entries()) {
            Entry entry = working.entry();
            WorkedRecipe recipe = workings.recipe(working);
            baths.check(entry.called(), entry.recipe(), recipe, entry.place());
            amounts.check(recipe);
            amounts.weight(working);
            gaps.check(working, recipe);
        }
        new DateChecks(workings.notebook(), findings).check();
        new ShelfChecks(workings, findings).check();
        return findings.sorted();
    }
}
