package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.notebook.Dye;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Amounts that nobody weighs out: more than 20 % owf of a dye, more than the needles weigh of anything else but what
 * goes by the litre ({@code common practice, no source}). Of a plant any amount may be right, and of a liquid as it is
 * sold, whose strength nobody said.
 */
final class Absurdity {

    private static final double MOST_DYE = 20;
    private static final double MOST_OF_ANYTHING = 100;
    private static final double MOST_IN_A_LITRE = 100;

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

    private static boolean isSoldLiquid(Substance thing, Optional<Amount> amount) {
        boolean weighedOnNeedles = amount.filter(written -> written instanceof Amount.OnNeedles).isPresent();
        boolean stock = amount.filter(written -> written instanceof Amount.OfStock).isPresent();
        return thing.isLiquid(amount) && !weighedOnNeedles && !stock;
    }
}
