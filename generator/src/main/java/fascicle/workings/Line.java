package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.bath.Batch;
import fascicle.bath.Dose;
import fascicle.bath.Magnitude;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One line of a recipe, understood: what the thing is, and what its amount follows.
 *
 * @param part the line as written
 * @param thing what it names
 * @param by what its amount follows when the batch grows
 * @param dose how much of it
 */
record Line(Part part, Substance thing, Basis by, Dose dose) {

    /** The amount as understood, if one was written. */
    static Optional<Amount> amount(Part part) {
        return part.amount().map(Noted::value);
    }

    /** Whether its amount is written for each litre of a bath. */
    boolean goesByTheLitre() {
        return amount(part).filter(Amount.PerLitre.class::isInstance).isPresent();
    }

    /** The line for batches of any size, where this is it for one. */
    Line growingFrom(Batch batch) {
        return new Line(part, thing, by, dose.following(by, batch));
    }

    /** The line in an amount that nobody knows. */
    Line unknown() {
        return new Line(part, thing, by, dose.unknown());
    }

    /** The figures in a bath. */
    PartFigures in(Batch batch) {
        return figures(batch, dose.gramsIn(batch).over(batch.liquor()).times(1000));
    }

    /** The figures of something added beside a bath, and so not dissolved in its liquor. */
    PartFigures beside(Batch batch) {
        return figures(batch, Magnitude.UNKNOWN);
    }

    private PartFigures figures(Batch batch, Magnitude dissolved) {
        Magnitude grams = dose.gramsIn(batch);
        Magnitude millilitres = dose.millilitresIn(batch);
        Magnitude owf = writtenOwf().orElse(grams.over(batch.needles()).times(100));
        Magnitude perLitre = writtenPerLitre().orElse(dissolved);
        boolean about = amount(part).filter(Amount::about).isPresent() || Stream.of(grams, millilitres, owf, perLitre)
                .anyMatch(Magnitude::about);
        return new PartFigures(part, thing.id(), thing.called(), part.amount().map(Noted::written), grams.value(),
                millilitres.value(), owf.value(), perLitre.value(), by, about, grams.about(), millilitres.about(),
                thing.isSpooned(amount(part)), stockPercent(), thing.isBySpoon(amount(part)),
                thing.isLiquid(amount(part).filter(amount -> !(amount instanceof Amount.OfStock))), dose.liquid(),
                !thing.isPlant() && !dose.liquid());
    }

    private Optional<Magnitude> writtenOwf() {
        return amount(part).filter(Amount.OnNeedles.class::isInstance).map(Amount.OnNeedles.class::cast)
                .map(owf -> Magnitude.of(owf.percent().doubleValue(), owf.about()));
    }

    private Optional<Magnitude> writtenPerLitre() {
        return amount(part).filter(Amount.PerLitre.class::isInstance).map(Amount.PerLitre.class::cast)
                .map(perLitre -> Magnitude.of(perLitre.grams().doubleValue(), perLitre.about()));
    }

    private OptionalDouble stockPercent() {
        return amount(part).orElse(null) instanceof Amount.OfStock stock
                ? OptionalDouble.of(stock.percent().doubleValue())
                : OptionalDouble.empty();
    }
}
