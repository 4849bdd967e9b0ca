package fascicle.workings.chain;

import fascicle.bath.Uptake;
import fascicle.notebook.Noted;
import fascicle.workings.BathFigures;
import fascicle.workings.EntryWorking;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a bath holds that may serve again.
 *
 * @param dye its dyes
 * @param salts its salt and acid
 */
record Pot(Contents dye, Contents salts) {

    /** The pot once something was put into it. */
    Pot plus(Pot added) {
        return new Pot(dye.plus(added.dye), salts.plus(added.salts));
    }

    /**
     * What is left of it for a next bath. Every dye is taken to be left in the same share.
     *
     * @param used the entry that has just dyed in it
     * @param share of the dye that it left
     * @param bath the next one, which takes no more than it has room for
     */
    Pot after(EntryWorking used, Estimate share, BathFigures bath) {
        InThePot left = InThePot.of(used);
        double taken = left.taken(bath);
        return new Pot(dye.times(share).times(Estimate.measured(OptionalDouble.of(taken))),
                salts.times(Estimate.measured(left.stays().value()).times(taken)));
    }

    /**
     * The share of its dye that an entry left.
     *
     * @param used the entry
     * @param next the one that used its bath, if there is one: what its maker judges goes before all glasses
     */
    static Estimate share(EntryWorking used, Optional<EntryWorking> next) {
        return judged(next).map(percent -> Estimate.judged(percent.value() / 100))
                .or(() -> used.uptake().map(Pot::notTaken)).orElse(Estimate.UNKNOWN);
    }

    /** What the maker of the next batch judges the one before to have left, per cent. */
    static Optional<Noted<Double>> judged(Optional<EntryWorking> next) {
        return next.flatMap(entry -> entry.entry().recipe().bath().left());
    }

    private static Estimate notTaken(Uptake uptake) {
        return new Estimate(rest(uptake.percent()), rest(uptake.high()), rest(uptake.low()));
    }

    private static OptionalDouble rest(OptionalDouble percent) {
        return percent.isPresent() ? OptionalDouble.of(1 - percent.getAsDouble() / 100) : percent;
    }
}
