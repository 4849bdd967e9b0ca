package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.bath.Batch;
import fascicle.bath.Magnitude;
import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Amounts that nobody weighs out or pours ({@code common practice, no source}): more than 20 % owf of a dye, more than
 * the needles weigh of anything else but what goes by the litre. Of a liquid as it is sold, whose strength nobody said,
 * only what no pot takes is too much. Of a plant any amount may be right.
 */
final class Absurdity {

    private static final double MOST_DYE = 20;
    private static final double MOST_OF_ANYTHING = 100;
    private static final double MOST_IN_A_LITRE = 100;

    /**
     * Of a liquid dye, mL or g to a gram of needles. What is sold is used by the teaspoon, some 0.2 mL to a gram; a
     * maker's own solution of 1 % makes 5 % owf of it.
     */
    private static final double MOST_LIQUID_DYE = 5;

    /** Of any other liquid, mL or g to a gram of needles: a sample of 5 g lies in a jar of a litre, and be it all of it. */
    private static final double MOST_LIQUID = 200;

    /** Dyes of which one makes the bath itself, from a plant or in a vat. */
    private static final Set<Dye.Type> BATHS = EnumSet.of(Dye.Type.NATURAL, Dye.Type.VAT);

    private Absurdity() {}

    /** The most that one expects of a part, % owf, where it comes to more; nothing where it does not. */
    static OptionalDouble limit(PartFigures figures, Substance thing, boolean amongDyes) {
        if (thing.isPlant() || figures.owfPercent().isEmpty() || isSoldLiquid(thing, Line.amount(figures.part()))) {
            return OptionalDouble.empty();
        }
        boolean dye = thing.kind().map(Dye.Kind.DYE::equals).orElse(amongDyes);
        boolean asMuchAsSaltMayBe = !dye && figures.by() == Basis.BATH
                && figures.gramsPerLitre().orElse(0) <= MOST_IN_A_LITRE;
        double most = dye ? MOST_DYE : MOST_OF_ANYTHING;
        return figures.owfPercent().getAsDouble() > most && !asMuchAsSaltMayBe ? OptionalDouble.of(most)
                : OptionalDouble.empty();
    }

    /**
     * More of a liquid than anyone pours.
     *
     * @param toAGram how much of it there is to a gram of needles
     * @param most how much one expects at most
     * @param unit mL, or g where nobody knows its density
     * @param dye whether it is taken for a liquid dye
     */
    record Flood(double toAGram, double most, String unit, boolean dye) {}

    /** Whether there is more of a liquid than anyone pours on its needles. */
    static Optional<Flood> flood(Line line, Batch batch, boolean amongDyes) {
        Magnitude millilitres = line.dose().millilitresIn(batch);
        Magnitude amount = millilitres.known() ? millilitres : line.dose().gramsIn(batch);
        Magnitude toAGram = amount.over(batch.needles());
        if (line.thing().isPlant() || !isSoldLiquid(line.thing(), Line.amount(line.part())) || !toAGram.known()) {
            return Optional.empty();
        }
        boolean dye = line.thing().kind().map(Dye.Kind.DYE::equals).orElse(amongDyes)
                && line.thing().dye().flatMap(Dye::type).map(Noted::value).filter(BATHS::contains).isEmpty();
        Flood flood = new Flood(toAGram.orThrow(), dye ? MOST_LIQUID_DYE : MOST_LIQUID, millilitres.known() ? "mL" : "g", dye);
        return Optional.of(flood).filter(much -> much.toAGram > much.most);
    }

    /** Whether a thing is poured as it is sold. */
    static boolean isSoldLiquid(Substance thing, Optional<Amount> amount) {
        boolean weighedOnNeedles = amount.filter(written -> written instanceof Amount.OnNeedles).isPresent();
        boolean stock = amount.filter(written -> written instanceof Amount.OfStock).isPresent();
        return thing.isLiquid(amount) && !weighedOnNeedles && !stock;
    }
}
