package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.bath.Batch;
import fascicle.bath.Magnitude;
import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Amounts that nobody weighs out or pours ({@code common practice, no source}): more than 20 % owf of a dye, more than
 * the needles weigh of anything else but what goes by the litre. Of a liquid as it is sold, whose strength nobody said,
 * only what no pot takes is too much. Of a plant any amount may be right. Where needles or liquor are not known an
 * amount is judged by what is.
 */
final class Absurdity {

    private static final double MOST_DYE = 20;
    private static final double MOST_OF_ANYTHING = 100;
    private static final double MOST_IN_A_LITRE = 100;

    /** The most needles that lie in one pot, g; no pot takes more than their weight of anything. */
    static final double MOST_NEEDLES = 5000;

    /** A stock of more than 100 g in 100 mL would be thicker than syrup. */
    private static final double STRONGEST_STOCK = 100;

    /**
     * Of a liquid dye, mL or g to a gram of needles. What is sold is used by the teaspoon, some 0.2 mL to a gram; a
     * maker's own solution of 1 % makes 5 % owf of it.
     */
    private static final double MOST_LIQUID_DYE = 5;

    /**
     * Of any other liquid, mL or g to a gram of needles: a sample of 5 g lies in a jar of a litre, and be it all of it.
     */
    private static final double MOST_LIQUID = 200;

    /** Of what goes by the litre, % owf, where nobody knows the litres: as much as that jar takes. */
    private static final double MOST_IN_ANY_LITRES = MOST_LIQUID / 1000 * MOST_IN_A_LITRE * 100;

    /** Dyes of which one makes the bath itself, from a plant or in a vat. */
    private static final Set<Dye.Type> BATHS = EnumSet.of(Dye.Type.NATURAL, Dye.Type.VAT);

    private Absurdity() {}

    /**
     * A line with too much of its thing.
     *
     * @param line the line
     * @param excess what is too much about it
     */
    record Found(Line line, Excess excess) {}

    /** What a recipe has too much of, in whatever bath, in the order of the work. */
    static List<Found> in(WorkedRecipe recipe) {
        List<Found> found = new ArrayList<>();
        recipe.presoak().ifPresent(soak -> soak(found, soak));
        recipe.before().forEach(soak -> soak(found, soak));
        Batch batch = recipe.bath().batch();
        recipe.bath().dye().forEach(line -> judge(found, line, line.in(batch), batch, true));
        recipe.bath().others().forEach(line -> judge(found, line, line.in(batch), batch, false));
        recipe.after().forEach(soak -> soak(found, soak));
        recipe.finish().forEach(line -> judge(found, line, line.beside(batch), batch, false));
        return List.copyOf(found);
    }

    private static void soak(List<Found> found, Soak soak) {
        Batch batch = soak.mixture().batch();
        soak.mixture().lines().forEach(line -> {
            judge(found, line, line.in(batch), batch, false);
            if (soak.shared()) {
                overWater(line, soak).ifPresent(excess -> found.add(new Found(line, excess)));
            }
        });
    }

    private static void judge(List<Found> found, Line line, PartFigures figures, Batch batch, boolean amongDyes) {
        figures.stockPercent().stream().filter(percent -> percent > STRONGEST_STOCK).forEach(percent ->
                found.add(new Found(line, new Excess.InStock(percent, STRONGEST_STOCK))));
        excess(line, figures, amongDyes).ifPresent(excess -> found.add(new Found(line, excess)));
        flood(line, batch, amongDyes).ifPresent(excess -> found.add(new Found(line, excess)));
    }

    private static Optional<Excess> excess(Line line, PartFigures figures, boolean amongDyes) {
        if (line.thing().isPlant() || isSoldLiquid(line)) {
            return Optional.empty();
        }
        OptionalDouble inALitre = figures.gramsPerLitre();
        if (figures.owfPercent().isPresent()) {
            return onNeedles(figures, figures.owfPercent().getAsDouble(), isDye(line.thing(), amongDyes));
        }
        if (inALitre.isPresent()) {
            return inALitre.getAsDouble() <= MOST_IN_A_LITRE ? Optional.empty()
                    : Optional.of(new Excess.InALitre(inALitre.getAsDouble(), MOST_IN_A_LITRE));
        }
        return figures.grams().isEmpty() || figures.grams().getAsDouble() <= MOST_NEEDLES ? Optional.empty()
                : Optional.of(new Excess.InAPot(figures.grams().getAsDouble(), MOST_NEEDLES));
    }

    private static Optional<Excess> onNeedles(PartFigures figures, double owf, boolean dye) {
        OptionalDouble inALitre = figures.gramsPerLitre();
        boolean byTheLitre = !dye && figures.by() != Basis.NEEDLES;
        boolean asMuchAsSaltMayBe = byTheLitre && inALitre.isPresent() && inALitre.getAsDouble() <= MOST_IN_A_LITRE;
        Excess.Of of = dye ? Excess.Of.DYE
                : byTheLitre && inALitre.isEmpty() ? Excess.Of.ANY_LITRES : Excess.Of.ANYTHING;
        double most = switch (of) {
            case DYE -> MOST_DYE;
            case ANYTHING -> MOST_OF_ANYTHING;
            case ANY_LITRES -> MOST_IN_ANY_LITRES;
        };
        return owf > most && !asMuchAsSaltMayBe ? Optional.of(new Excess.OnNeedles(owf, most, of)) : Optional.empty();
    }

    /** Whether there is more of a liquid than anyone pours on its needles. */
    static Optional<Excess.Liquid> flood(Line line, Batch batch, boolean amongDyes) {
        Magnitude millilitres = line.dose().millilitresIn(batch);
        Magnitude amount = millilitres.known() ? millilitres : line.dose().gramsIn(batch);
        Magnitude toAGram = amount.over(batch.needles());
        if (line.thing().isPlant() || !isSoldLiquid(line) || !toAGram.known()) {
            return Optional.empty();
        }
        boolean dye = isDye(line.thing(), amongDyes)
                && line.thing().dye().flatMap(Dye::type).map(Noted::value).filter(BATHS::contains).isEmpty();
        Excess.Liquid flood = new Excess.Liquid(toAGram.orThrow(), dye ? MOST_LIQUID_DYE : MOST_LIQUID,
                !millilitres.known(), dye);
        return Optional.of(flood).filter(much -> much.toAGram() > much.most());
    }

    /** Nobody knows how many needles a bin is for that pots share; but it is water, and something in it. */
    private static Optional<Excess> overWater(Line line, Soak bin) {
        Magnitude water = bin.mixture().liquor().water();
        Magnitude liquid = line.dose().millilitresIn(bin.mixture().batch());
        return isSoldLiquid(line) && !line.thing().isPlant() && liquid.known() && water.known() && water.orThrow() > 0
                && liquid.orThrow() > water.orThrow()
                ? Optional.of(new Excess.OverWater(liquid.orThrow(), water.orThrow())) : Optional.empty();
    }

    private static boolean isDye(Substance thing, boolean amongDyes) {
        return thing.kind().map(Dye.Kind.DYE::equals).orElse(amongDyes);
    }

    /** Whether a thing is poured as it is sold. */
    private static boolean isSoldLiquid(Line line) {
        Optional<Amount> amount = Line.amount(line.part());
        boolean weighedOnNeedles = amount.filter(written -> written instanceof Amount.OnNeedles).isPresent();
        boolean stock = amount.filter(written -> written instanceof Amount.OfStock).isPresent();
        return line.thing().isLiquid(amount) && !weighedOnNeedles && !stock;
    }
}
