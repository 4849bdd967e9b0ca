package fascicle.workings.chain;

import fascicle.bath.CarryOut;
import fascicle.bath.Magnitude;
import fascicle.notebook.Glass;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;

/**
 * What liquid stays in a pot when the needles are lifted out.
 *
 * @param millilitres what is left; where the maker did not measure it, the liquor less what clings to the needles
 * @param stays the share of its salt and acid that is left with it
 */
public record InThePot(Magnitude millilitres, Magnitude stays) {

    /**
     * What an entry left in its pot.
     *
     * @param entry the entry
     * @return as far as its liquor and its needles' dry weight are known
     */
    public static InThePot of(EntryWorking entry) {
        Magnitude needles = new Magnitude(entry.needles().dryGrams(), entry.needles().about());
        Magnitude left = measured(entry);
        if (!left.known()) {
            left = liquor(entry.bath()).minus(CarryOut.clinging(needles)).about(true);
            if (left.known() && left.orThrow() <= 0) {
                left = Magnitude.UNKNOWN;
            }
        }
        return new InThePot(left, CarryOut.stays(left, needles));
    }

    /**
     * The part of what was left that a next bath had room for.
     *
     * @param next the next bath
     * @return 0 to 1; all of it where nobody said how large that bath was
     */
    public double taken(BathFigures next) {
        Magnitude room = liquor(next).minus(new Magnitude(next.liquidPartsMl(), next.about()));
        if (!room.known() || !millilitres.known() || millilitres.orThrow() <= 0) {
            return 1;
        }
        return StrictMath.max(0, StrictMath.min(1, room.orThrow() / millilitres.orThrow()));
    }

    /** A bath's liquor, mL. */
    private static Magnitude liquor(BathFigures bath) {
        return new Magnitude(bath.liquorMl(), bath.about());
    }

    /** What the maker measured, mL. */
    static Magnitude measured(EntryWorking entry) {
        return entry.entry().glass().flatMap(Glass::measuredLeft)
                .map(noted -> Magnitude.of(noted.value().value(), noted.value().about())).orElse(Magnitude.UNKNOWN);
    }
}
