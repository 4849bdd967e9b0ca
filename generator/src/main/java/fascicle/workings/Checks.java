package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Method;
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
        VesselChecks vessels = new VesselChecks(findings);
        AmountChecks amounts = new AmountChecks(findings);
        MixingChecks mixing = new MixingChecks(findings);
        GlassChecks glasses = new GlassChecks(findings);
        amounts.weights(workings.notebook().cover());
        GapChecks gaps = new GapChecks(recipes, findings);
        for (MethodWorking working : workings.methods()) {
            Method method = working.method();
            WorkedRecipe recipe = recipes.ofShown(method);
            baths.check(method.called(), method.recipe(), recipe, method.place());
            vessels.check(method.called(), recipe, method.recipe().bath().water(), recipes.vessel(method.recipe()),
                    working.pot(), method.place());
            amounts.check(recipe);
            amounts.weight(method);
            mixing.check(recipe);
            gaps.check(method, recipe);
        }
        for (EntryWorking working : workings.entries()) {
            Entry entry = working.entry();
            WorkedRecipe recipe = workings.recipe(working);
            int mark = findings.mark();
            baths.check(entry.called(), entry.recipe(), recipe, entry.place());
            vessels.check(entry.called(), recipe, entry.recipe().bath().water(), recipes.vessel(entry.recipe()),
                    working.pot(), entry.place());
            amounts.check(recipe);
            amounts.weight(working);
            amounts.kept(working);
            mixing.check(recipe);
            gaps.check(working, recipe);
            glasses.check(working);
            List<String> why = findings.errorsSince(mark).stream().map(Finding::message).toList();
            if (!why.isEmpty()) {
                faulty.add(new Missing(entry.id(), entry.place(), entry.share(), true, why));
            }
        }
        new MeasureChecks(workings.notebook(), findings).check();
        new DateChecks(workings.notebook(), findings).check();
        new ReuseChecks(workings, findings).check();
        return new Found(findings.sorted(), List.copyOf(faulty));
    }
}
