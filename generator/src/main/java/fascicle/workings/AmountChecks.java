package fascicle.workings;

import fascicle.bath.Batch;
import fascicle.bath.Magnitude;
import fascicle.measure.Quantity;
import fascicle.notebook.Findings;
import fascicle.notebook.Kept;
import fascicle.notebook.Method;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether amounts are such as one weighs out, pours or keeps ({@code common practice, no source}). Of a plant any amount
 * may be right.
 */
final class AmountChecks {

    private static final double ALL_OF_IT = 100;
    private static final double MOST_NEEDLES = 5000;

    /** Dry needles weigh what they weighed, and scarcely twice that with all the glycerin that they take up. */
    private static final double MOST_KEPT_DRY = 2;

    /** Soaked needles carry their own weight or two of water, and as much again that has not dripped off. */
    private static final double MOST_KEPT_DAMP = 5;

    private final Unread unread;
    private final Findings findings;

    AmountChecks(Unread unread, Findings findings) {
        this.unread = unread;
        this.findings = findings;
    }

    /** Checks everything that a recipe names. */
    void check(WorkedRecipe recipe) {
        Batch batch = recipe.bath().batch();
        recipe.bath().dye().forEach(line -> check(line, line.in(batch), batch, true));
        recipe.bath().others().forEach(line -> check(line, line.in(batch), batch, false));
        Stream.of(recipe.presoak().stream(), recipe.before().stream(), recipe.after().stream()).flatMap(soaks -> soaks)
                .forEach(this::soak);
        recipe.finish().forEach(line -> check(line, line.beside(batch), batch, false));
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
                    + Say.figure(weight.value().value() / grams) + " times the " + Say.weight(grams) + " of needles that were "
                    + "dyed, more than the " + Say.figure(most) + " times that one expects at most; check both weights");
        }
    }

    private void weight(double grams, Place place) {
        if (grams > MOST_NEEDLES) {
            findings.warning(place, Say.weight(grams) + " of needles is more than " + Say.weight(MOST_NEEDLES)
                    + " in one pot; check the figure and its unit");
        }
    }

    private void soak(Soak soak) {
        Batch batch = soak.mixture().batch();
        soak.mixture().lines().forEach(line -> {
            check(line, line.in(batch), batch, false);
            if (soak.shared()) {
                bin(line, batch, soak.mixture().liquor().water());
            }
        });
    }

    /** Nobody knows how many needles a bin is for that pots share; but it is water, and something in it. */
    private void bin(Line line, Batch batch, Magnitude water) {
        Magnitude liquid = line.dose().millilitresIn(batch);
        if (Absurdity.isSoldLiquid(line.thing(), Line.amount(line.part())) && !line.thing().isPlant() && liquid.known()
                && water.known() && water.orThrow() > 0 && liquid.orThrow() > water.orThrow()) {
            findings.warning(place(line.part()), written(line) + " is more than the " + Say.volume(water.orThrow())
                    + " of water in its bin; check the figure and its unit");
        }
    }

    private void check(Line line, PartFigures figures, Batch batch, boolean amongDyes) {
        line.part().amount().filter(amount -> amount.value().isNothing()).ifPresent(amount -> findings.warning(
                amount.place(), written(line) + " is nothing; fill in how much it was, or leave the line out"));
        if (unread.holds(line)) {
            return;
        }
        Absurdity.limit(figures, line.thing(), amongDyes).ifPresent(most -> absurd(line, figures, most,
                most < ALL_OF_IT ? "of a dye" : "of anything but a plant"));
        Absurdity.flood(line, batch, amongDyes).ifPresent(flood -> flood(line, flood));
    }

    private void absurd(Line line, PartFigures figures, double most, String ofWhat) {
        findings.warning(place(line.part()), written(line) + " comes to "
                + Say.figure(figures.owfPercent().orElseThrow()) + " % owf, more than the " + Say.figure(most) + " % owf that one expects at most "
                + ofWhat + "; check the figure and its unit, or say “form: plant” in its file if it is one");
    }

    private void flood(Line line, Absurdity.Flood flood) {
        findings.warning(place(line.part()), written(line) + " comes to " + Say.figure(flood.toAGram()) + " " + flood.unit()
                + " to a gram of needles, more than the " + Say.figure(flood.most()) + " " + flood.unit()
                + " that one expects at most of a liquid" + (flood.dye() ? " dye" : "") + "; check the figure and its unit"
                + (flood.dye() ? ", or say “type: natural” in its file if it is a decoction" : ""));
    }

    private static Place place(Part part) {
        return part.amount().map(Noted::place).orElse(part.is().place());
    }

    private static String written(Line line) {
        return "“" + line.part().amount().map(Noted::written).orElse("") + "” of " + line.thing().called();
    }
}
