package fascicle.workings;

import fascicle.notebook.Findings;
import fascicle.notebook.Method;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import java.util.List;
import java.util.Optional;

/**
 * Whether amounts are such as one weighs out. Of a plant any amount may be right, and of a liquid as it is sold, whose
 * strength nobody said.
 */
final class AmountChecks {

    private static final double ALL_OF_IT = 100;
    private static final double MOST_NEEDLES = 5000;

    private final Recipes recipes;
    private final Findings findings;

    AmountChecks(Recipes recipes, Findings findings) {
        this.recipes = recipes;
        this.findings = findings;
    }

    /** Checks everything that a recipe names. */
    void check(WorkedRecipe recipe) {
        recipe.bath().figures().dye().forEach(part -> check(part, true));
        recipe.bath().figures().assistants().forEach(part -> check(part, false));
        soaks(recipe.presoakFigures().stream().toList());
        soaks(WorkedRecipe.figures(recipe.before()));
        soaks(WorkedRecipe.figures(recipe.after()));
        recipe.finishFigures().forEach(part -> check(part, false));
    }

    /** Checks the weight of an entry's needles. */
    void weight(EntryWorking working) {
        Needles needles = working.entry().needles();
        Optional<Place> place = needles.weight().<Noted<?>>map(noted -> noted).or(needles::bundles).map(Noted::place);
        working.needles().grams().ifPresent(grams -> weight(grams, place.orElse(working.entry().place())));
    }

    /** Checks the weight that a method is for. */
    void weight(Method method) {
        method.forWeight().ifPresent(noted -> weight(noted.value().value(), noted.place()));
    }

    private void weight(double grams, Place place) {
        if (grams > MOST_NEEDLES) {
            findings.warning(place, Say.weight(grams) + " of needles is more than " + Say.weight(MOST_NEEDLES)
                    + " in one pot; check the figure and its unit");
        }
    }

    private void soaks(List<SoakFigures> soaks) {
        soaks.forEach(soak -> soak.with().forEach(part -> check(part, false)));
    }

    private void check(PartFigures figures, boolean amongDyes) {
        figures.part().amount().filter(amount -> amount.value().isNothing()).ifPresent(amount -> findings.warning(
                amount.place(), "“" + amount.written() + "” of " + figures.called() + " is nothing; fill in how much it "
                        + "was, or leave the line out"));
        Substance thing = recipes.thing(figures.part());
        Absurdity.limit(figures, thing, amongDyes).ifPresent(most ->
                absurd(figures, most, most < ALL_OF_IT ? "of a dye" : "of anything but a plant"));
    }

    private void absurd(PartFigures figures, double most, String ofWhat) {
        Part part = figures.part();
        Place place = part.amount().map(Noted::place).orElse(part.is().place());
        findings.warning(place, "“" + figures.asWritten().orElse("") + "” of " + figures.called() + " comes to "
                + Say.figure(figures.owfPercent().orElseThrow()) + " % owf, more than the " + Say.figure(most) + " % owf that one expects at most "
                + ofWhat + "; check the figure and its unit, or say “form: plant” in its file if it is one");
    }
}
