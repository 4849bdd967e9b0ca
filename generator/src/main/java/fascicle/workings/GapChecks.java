package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Outcome;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Water;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What was left out and is missed: weights, colours, densities. */
final class GapChecks {

    private final Unread unread;
    private final Findings findings;
    private final Set<String> withoutDensity = new HashSet<>();

    GapChecks(Unread unread, Findings findings) {
        this.unread = unread;
        this.findings = findings;
    }

    /** Checks an entry. */
    void check(EntryWorking working, WorkedRecipe recipe) {
        Entry entry = working.entry();
        if (working.needles().grams().isEmpty()) {
            weight(working);
        }
        if (entry.verdict().filter(Outcome.Verdict.WORKED::equals).isPresent() && entry.colour().isEmpty()) {
            findings.warning(entry.place(), "“" + entry.called() + "” worked but has no colour; add a reading of the "
                    + "dry needles under “colour:”, so that it can be found and repeated");
        }
        water(entry.called(), entry.recipe(), entry.place());
        amounts(entry, recipe);
        densities(recipe);
    }

    /** Checks a method. */
    void check(Method method, WorkedRecipe recipe) {
        Optional<Noted<Quantity>> nothing = method.forWeight().filter(noted -> noted.value().value() <= 0);
        nothing.ifPresent(noted -> findings.warning(noted.place(), "“for: " + noted.written() + "” is no weight of "
                + "needles; write what the amounts are for, such as “for: 50 g”, or leave it out"));
        if (nothing.isEmpty() && !Recipes.weight(method).known()) {
            bare(method, recipe).ifPresent(written -> findings.warning(method.place(), "“for:” is missing: “" + written
                    + "” is for a certain weight of needles, and nobody can tell which; add it, such as “for: 50 g”"));
        }
        water(method.called(), method.recipe(), method.place());
        densities(recipe);
    }

    /** A dyebath without water; what a method lends has been filled in by now. */
    private void water(String called, Recipe recipe, Place place) {
        Bath bath = recipe.bath();
        boolean mixed = !bath.dye().isEmpty() || !bath.assistants().isEmpty();
        if (mixed && bath.water().isEmpty() && bath.reuses().isEmpty()) {
            findings.warning(place, "“" + called + "” does not say how much water its bath has, so its liquor is not "
                    + "known; add “water: 3 L”, “ratio: 60” or “depth: 7 cm” under “bath:” (about is welcome)");
        }
    }

    private void weight(EntryWorking working) {
        Entry entry = working.entry();
        Needles needles = entry.needles();
        if (needles.weight().isPresent()) {
            findings.warning(needles.weight().get().place(), "“" + needles.weight().get().written()
                    + "” is no weight of needles to reckon with; write what they weighed, such as 45 g");
        } else if (needles.bundles().filter(count -> count.value() <= 0).isPresent()) {
            findings.warning(needles.bundles().get().place(), "“" + needles.bundles().get().written()
                    + "” bundles are no needles to reckon with; write how many there were, such as 3, or what they "
                    + "weighed");
        } else if (needles.bundles().isPresent()
                && working.needles().lot().map(NeedleLot::place).filter(unread::holds).isEmpty()) {
            String lot = working.needles().lot().map(found -> "“" + found.called() + "”").orElse("the lot");
            findings.warning(needles.bundles().get().place(),
                    "“" + needles.bundles().get().written() + "” bundles have "
                    + "no weight, because " + lot + " does not say what a bundle weighs; add “bundle: {weight: …, "
                    + "counted: …}” there, or the weight here");
        } else if (needles.bundles().isEmpty()) {
            findings.warning(entry.place(), "“" + entry.called() + "” does not say what its needles weighed; add a "
                    + "weight or a number of bundles under “needles:” (about is welcome)");
        }
    }

    /**
     * What went into an entry's baths, nobody knows how much. A method may leave that open. Nobody measures a finish,
     * nor a plant, nor what was drawn out of one.
     */
    private void amounts(Entry entry, WorkedRecipe recipe) {
        boolean extracted = entry.recipe().bath().extract().isPresent();
        recipe.lines().filter(line -> line.part().amount().isEmpty() && !line.thing().isPlant()
                && !recipe.finish().contains(line) && !(extracted && recipe.bath().dye().contains(line)))
                .forEach(line -> {
                    Place place = line.part().is().place();
                    boolean own = place.file().equals(entry.place().file());
                    findings.warning(own ? place : entry.place(), "no amount of “" + line.thing().called()
                            + (own ? "”" : "” (" + place + ")") + "; what it comes to is not known; write how much it "
                            + "was (about is welcome), or take the line out");
                });
    }

    private void densities(WorkedRecipe recipe) {
        recipe.lines().forEach(line -> {
            Optional<Amount> amount = Line.amount(line.part());
            Optional<Dye> dye = line.thing().dye();
            if (dye.isPresent() && !unread.holds(line) && line.thing().lacksDensity(amount)
                    && withoutDensity.add(Ids.key(line.thing().id()))) {
                findings.warning(dye.get().place(), "“" + line.thing().called() + "” is measured by spoons or cups (“"
                        + line.part().amount().map(Noted::written).orElse("") + "”) but nothing says what they weigh; "
                        + "add “level-tsp: {weight: …}” or “density:”, or “form: liquid” if it is one");
            }
        });
    }

    /** The first of a method's own amounts that is for its weight, in its maker's words. */
    private static Optional<String> bare(Method method, WorkedRecipe recipe) {
        Stream<Noted<?>> amounts = recipe.lines().filter(GapChecks::isBare)
                .flatMap(line -> line.part().amount().stream());
        return Stream.concat(waters(method.recipe()), amounts).filter(noted -> isOwn(noted.origin(), method))
                .map(Noted::written).findFirst();
    }

    private static Stream<Noted<?>> waters(Recipe recipe) {
        Stream<Noted<?>> treatments = Stream.concat(recipe.before().stream(), recipe.after().stream())
                .flatMap(treatment -> treatment.water().stream());
        Stream<Noted<?>> presoak = recipe.presoak().flatMap(Recipe.Presoak::water).<Noted<?>>map(water -> water)
                .stream();
        Stream<Noted<?>> bath = recipe.bath().water().filter(water -> water.value() instanceof Water.Poured)
                .<Noted<?>>map(water -> water).stream();
        return Stream.concat(bath, Stream.concat(presoak, treatments));
    }

    private static boolean isBare(Line line) {
        Part part = line.part();
        return line.by() != Basis.BATCH && Line.amount(part)
                .filter(amount -> !(amount instanceof Amount.OnNeedles) && !(amount instanceof Amount.PerLitre)
                        && !(amount instanceof Amount.Unsized))
                .isPresent();
    }

    private static boolean isOwn(Origin origin, Method method) {
        return !(origin instanceof Origin.Method from) || Ids.same(from.method(), method.id());
    }
}
