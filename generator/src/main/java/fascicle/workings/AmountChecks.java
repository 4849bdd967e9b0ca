package fascicle.workings;

import fascicle.measure.Quantity;
import fascicle.notebook.Cover;
import fascicle.notebook.Findings;
import fascicle.notebook.Kept;
import fascicle.notebook.Method;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import java.util.Optional;

/**
 * Whether amounts are such as one weighs out, pours or keeps ({@code common practice, no source}). Of a plant any
 * amount may be right.
 */
final class AmountChecks {

    /** A short dry needle weighs so much, g ({@code from memory}). */
    private static final double LEAST_NEEDLES = 0.05;

    /** Dry needles weigh what they weighed, and scarcely twice that with all the glycerin that they take up. */
    private static final double MOST_KEPT_DRY = 2;

    /** Soaked needles carry their own weight or two of water, and as much again that has not dripped off. */
    private static final double MOST_KEPT_DAMP = 5;

    private static final String CHECK = "check the figure and its unit";
    private static final String PLANT = ", or say “form: plant” in its file if it is one";

    private final Unread unread;
    private final Findings findings;

    AmountChecks(Unread unread, Findings findings) {
        this.unread = unread;
        this.findings = findings;
    }

    /** Checks everything that a recipe names. */
    void check(WorkedRecipe recipe) {
        recipe.lines().forEach(line -> line.part().amount().filter(amount -> amount.value().isNothing())
                .ifPresent(amount -> findings.warning(amount.place(), written(line)
                        + " is nothing; fill in how much it was, or leave the line out")));
        recipe.finish().stream().filter(Line::goesByTheLitre).forEach(line -> findings.warning(place(line.part()),
                written(line) + " is for each litre of a bath, and a finish has none; write how much it was, such as "
                        + "12 g"));
        Absurdity.in(recipe).stream().filter(found -> !unread.holds(found.line())).forEach(found ->
                findings.warning(place(found.line().part()), written(found.line()) + said(found.excess())));
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

    /** Checks the weights that recipes are worked out for. */
    void weights(Cover cover) {
        cover.weights().forEach(noted -> weight(noted.value().value(), noted.place()));
    }

    /** Checks what an entry says it kept against what it dyed. */
    void kept(EntryWorking working) {
        working.entry().kept().ifPresent(kept -> kept.weight().ifPresent(weight -> working.needles().grams()
                .ifPresent(grams -> kept(weight, kept.how(), grams))));
    }

    private void kept(Noted<Quantity> weight, Optional<Noted<Kept.How>> how, double grams) {
        double most = how.filter(noted -> noted.value() == Kept.How.DRY).isPresent() ? MOST_KEPT_DRY : MOST_KEPT_DAMP;
        if (grams > 0 && weight.value().value() > most * grams) {
            findings.warning(weight.place(), "“" + weight.written() + "” kept"
                    + how.map(noted -> " " + noted.value().word()).orElse("") + " is "
                    + Say.figure(weight.value().value() / grams) + " times the " + Say.weight(grams) + " of needles "
                    + "that were dyed, more than the " + Say.figure(most)
                    + " times that one expects at most; check both weights");
        }
    }

    private void weight(double grams, Place place) {
        if (grams > Absurdity.MOST_NEEDLES) {
            findings.warning(place, Say.weight(grams) + " of needles is more than " + Say.weight(Absurdity.MOST_NEEDLES)
                    + " in one pot; check the figure and its unit");
        } else if (grams > 0 && grams < LEAST_NEEDLES) {
            findings.warning(place, Say.weight(grams) + " of needles is less than a single one weighs, "
                    + Say.weight(LEAST_NEEDLES) + " or more; check the figure and its unit");
        }
    }

    private static String said(Excess excess) {
        if (excess instanceof Excess.OnNeedles much) {
            return " comes to " + Say.figure(much.owf()) + " % owf, more than the " + Say.figure(much.most())
                    + " % owf that one expects at most " + switch (much.of()) {
                        case DYE -> "of a dye; " + CHECK + PLANT;
                        case ANYTHING -> "of anything but a plant; " + CHECK + PLANT;
                        case ANY_LITRES -> "of anything but a plant, in however much water; " + CHECK + PLANT;
                    };
        }
        if (excess instanceof Excess.InALitre much) {
            return " comes to " + Say.figure(much.grams()) + " g in a litre, more than the " + Say.figure(much.most())
                    + " g that one expects at most of anything but a plant; " + CHECK + PLANT;
        }
        if (excess instanceof Excess.InAPot much) {
            return " is more than the " + Say.weight(much.most()) + " that one expects at most of anything but a "
                    + "plant, for whatever needles; " + CHECK + PLANT;
        }
        if (excess instanceof Excess.Liquid much) {
            String unit = much.weighed() ? "g" : "mL";
            return " comes to " + Say.figure(much.toAGram()) + " " + unit + " to a gram of needles, more than the "
                    + Say.figure(much.most()) + " " + unit + " that one expects at most of a liquid"
                    + (much.dye() ? " dye; " + CHECK + ", or say “type: natural” in its file if it is a decoction"
                            : "; " + CHECK);
        }
        if (excess instanceof Excess.InStock much) {
            return " would be " + Say.figure(much.percent()) + " g in 100 mL, more than the " + Say.figure(much.most())
                    + " g that one expects at most in a stock solution; check its strength";
        }
        Excess.OverWater much = (Excess.OverWater) excess;
        return " is more than the " + Say.volume(much.water()) + " of water in its bin; " + CHECK;
    }

    private static Place place(Part part) {
        return part.amount().map(Noted::place).orElse(part.is().place());
    }

    private static String written(Line line) {
        return "“" + line.part().amount().map(Noted::written).orElse("") + "” of " + line.thing().called();
    }
}
