package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Liquor;
import fascicle.bath.Magnitude;
import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Cover;
import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Water;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Whether baths can be, and whether their water, heat and acidity are as such baths are. */
final class BathChecks {

    private static final double MOST_WATER = 200_000;
    private static final double LEAST_RATIO = 3;
    private static final double MOST_RATIO = 500;
    private static final double SOUREST = 2;
    private static final double SWEETEST = 12;

    private final Findings findings;
    private final HeatChecks heat;
    private final AdditionChecks additions;

    BathChecks(Findings findings, Cover cover) {
        this.findings = findings;
        this.heat = new HeatChecks(findings, cover);
        this.additions = new AdditionChecks(findings);
    }

    /**
     * Checks the baths of a recipe.
     *
     * @param called the entry or method it is of
     * @param recipe as written
     * @param worked as worked out
     * @param whole where its entry or method begins
     */
    void check(String called, Recipe recipe, WorkedRecipe worked, Place whole) {
        Bath bath = recipe.bath();
        Place place = bath.water().map(Noted::place).orElse(whole);
        if (worked.bath().liquor().impossible()) {
            impossible("“" + called + "”", worked.bath().liquor(), mend(worked.bath(), bath.water()), place);
        } else {
            worked.bath().ratio().value().ifPresent(ratio -> ratio(ratio, worked.bath(), bath.water(), place));
        }
        dry(recipe, worked);
        soaks("presoak", worked.presoak().stream().toList(), whole);
        soaks("treatment before the bath", worked.before(), whole);
        soaks("treatment after the bath", worked.after(), whole);
        waters(recipe);
        liquor(worked, bath.water());
        heat.check(recipe);
        additions.check(recipe, whole);
        bath.ph().ifPresent(this::ph);
    }

    /** What helps where the liquid parts do not fit into a bath that is filled up to a ratio or a depth. */
    private static String mend(Mixture bath, Optional<Noted<Water>> water) {
        boolean stock = bath.mostLiquid().flatMap(line -> Line.amount(line.part()))
                .filter(Amount.OfStock.class::isInstance).isPresent();
        boolean depth = water.filter(noted -> noted.value() instanceof Water.ByDepth).isPresent();
        return (stock ? "use a stronger stock, or " : "use less of them, or ")
                + (depth ? "deeper water" : "a higher ratio");
    }

    private void impossible(String what, Liquor liquor, String mend, Place place) {
        if (liquor.total().known()) {
            findings.error(place, "in " + what + " the liquid parts come to "
                    + Say.volume(liquor.liquidParts().orThrow()) + " but the liquor is only "
                    + Say.volume(liquor.total().orThrow()) + ": " + mend);
        } else {
            findings.error(place, "in " + what + " the liquid parts in g/L alone are more than a litre in every litre "
                    + "of liquor: use a stronger solution, or less of it");
        }
    }

    private void soaks(String what, List<Soak> soaks, Place whole) {
        soaks.stream().map(soak -> soak.mixture().liquor()).filter(Liquor::impossible)
                .forEach(liquor -> impossible("the " + what, liquor, "use less of them", whole));
    }

    /** Where another liquid floods the bath, that is said of its amount, and the water is not to blame. */
    private void ratio(double ratio, Mixture bath, Optional<Noted<Water>> water, Place place) {
        if (ratio < LEAST_RATIO || ratio > MOST_RATIO && !bath.isFlooded()) {
            findings.warning(place, written(water) + "gives " + Say.figure(ratio) + " mL of liquor to a gram of "
                    + "needles, where " + Say.figure(LEAST_RATIO) + " to " + Say.figure(MOST_RATIO)
                    + " is usual; check the water and the weight");
        }
    }

    private void dry(Recipe recipe, WorkedRecipe worked) {
        dry(recipe.presoak().stream().map(Recipe.Presoak::water).toList(), worked.presoak().stream().toList());
        dry(recipe.before().stream().map(Recipe.Treatment::water).toList(), worked.before());
        dry(recipe.after().stream().map(Recipe.Treatment::water).toList(), worked.after());
        recipe.bath().extract().flatMap(Bath.Extract::water)
                .ifPresent(water -> dry(water, Magnitude.ZERO, Magnitude.UNKNOWN));
        Mixture bath = worked.bath();
        recipe.bath().water().filter(water -> water.value() instanceof Water.Poured && !bath.ratio().known())
                .ifPresent(water -> dry(water.map(poured -> ((Water.Poured) poured).volume()), bath.liquor().total(),
                        bath.ratio()));
    }

    private void dry(List<Optional<Noted<Quantity>>> waters, List<Soak> soaks) {
        IntStream.range(0, waters.size()).forEach(index -> waters.get(index).ifPresent(water ->
                dry(water, soaks.get(index).mixture().liquor().total(), soaks.get(index).mixture().ratio())));
    }

    /** No water is no mistake in a bath of something else, where that is enough to lie in. */
    private void dry(Noted<Quantity> water, Magnitude liquor, Magnitude ratio) {
        boolean enough = !liquor.known() || liquor.orThrow() > 0 && (!ratio.known() || ratio.orThrow() >= LEAST_RATIO);
        if (water.value().value() <= 0 && !enough) {
            findings.warning(water.place(), "“water: " + water.written() + "” is no water; write how much it was "
                    + "(about is welcome), or leave it out");
        }
    }

    private void waters(Recipe recipe) {
        recipe.presoak().flatMap(Recipe.Presoak::water).ifPresent(this::water);
        recipe.before().forEach(treatment -> treatment.water().ifPresent(this::water));
        recipe.after().forEach(treatment -> treatment.water().ifPresent(this::water));
        recipe.bath().extract().flatMap(Bath.Extract::water).ifPresent(this::water);
        recipe.bath().water().filter(noted -> noted.value() instanceof Water.Poured)
                .ifPresent(noted -> water(noted.map(water -> ((Water.Poured) water).volume())));
    }

    private void water(Noted<Quantity> water) {
        if (water.value().value() > MOST_WATER) {
            findings.warning(water.place(), "“" + water.written() + "” of water is more than "
                    + Say.volume(MOST_WATER) + "; check the figure and its unit");
        }
    }

    /** A liquor that was not measured may still come to more than any pot. */
    private void liquor(WorkedRecipe worked, Optional<Noted<Water>> water) {
        worked.bath().liquor().total().value().ifPresent(total -> {
            if (total > MOST_WATER && water.isPresent() && !(water.get().value() instanceof Water.Poured)) {
                findings.warning(water.get().place(), written(water) + "makes " + Say.volume(total)
                        + " of liquor, more than " + Say.volume(MOST_WATER)
                        + "; check it and the weight of the needles");
            }
        });
    }

    private void ph(Bath.Ph ph) {
        double reads = ph.reads().value();
        if (reads < SOUREST || reads > SWEETEST) {
            findings.warning(ph.reads().place(), "a bath of pH “" + ph.reads().written() + "” is outside "
                    + Say.figure(SOUREST) + " to " + Say.figure(SWEETEST) + ", where dyebaths are; check the reading");
        }
    }

    private static String written(Optional<Noted<Water>> water) {
        return water.map(noted -> "“" + noted.written() + "” ").orElse("the bath ");
    }
}
