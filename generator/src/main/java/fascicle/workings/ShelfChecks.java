package fascicle.workings;

import fascicle.measure.Dimension;
import fascicle.measure.Quantity;
import fascicle.notebook.Dye;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Kept;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Noted;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Whether more was used than there was. */
final class ShelfChecks {

    /** What sums of doubles may add, as a share. */
    private static final double ROUNDING = 1e-9;

    private final Workings workings;
    private final Findings findings;

    ShelfChecks(Workings workings, Findings findings) {
        this.workings = workings;
        this.findings = findings;
    }

    /** Checks lots, purchases and what was kept. */
    void check() {
        workings.entries().forEach(entry -> entry.entry().kept().ifPresent(this::check));
        Map<String, Double> needles = needlesUsed();
        workings.notebook().lots().forEach(lot -> check(lot, needles.getOrDefault(Ids.key(lot.id()), 0.0)));
        Map<String, Used> dyes = used();
        workings.notebook().dyes().forEach(dye -> check(dye, dyes.getOrDefault(Ids.key(dye.id()), Used.NOTHING)));
    }

    private void check(NeedleLot lot, double used) {
        lot.weight().filter(weight -> isMore(used, weight.value().value())).ifPresent(weight ->
                findings.warning(weight.place(), "entries took " + Say.weight(used) + " of “" + lot.called()
                        + "”, which weighs “" + weight.written() + "”; check the entries' weights, or the lot's"));
    }

    private void check(Kept kept) {
        double used = kept.used().stream().flatMap(use -> use.weight().stream())
                .mapToDouble(weight -> weight.value().value()).sum();
        kept.weight().filter(weight -> isMore(used, weight.value().value())).ifPresent(weight ->
                findings.warning(weight.place(), "baskets took " + Say.weight(used) + " of what was kept, which "
                        + "weighs “" + weight.written() + "”; check the weights"));
    }

    private void check(Dye dye, Used used) {
        Optional<Quantity> holds = dye.pack().flatMap(Dye.Pack::holds).map(Noted::value);
        if (holds.isEmpty() || dye.bought().isEmpty()
                || dye.bought().stream().anyMatch(purchase -> purchase.packs().isEmpty())) {
            return;
        }
        boolean byMass = holds.get().unit().dimension() == Dimension.MASS;
        double bought = holds.get().value() * dye.bought().stream()
                .flatMap(purchase -> purchase.packs().stream()).mapToDouble(Noted::value).sum();
        double taken = byMass ? used.grams() : used.millilitres();
        if (isMore(taken, bought)) {
            findings.warning(dye.place(), "entries used " + said(taken, byMass) + " of “" + dye.called() + "”, but only "
                    + said(bought, byMass) + " was bought; add the purchase under “bought:”, or check the amounts");
        }
    }

    /** Needles by lot. An over-dye takes needles that were taken before. */
    private Map<String, Double> needlesUsed() {
        Map<String, Double> used = new HashMap<>();
        for (EntryWorking entry : workings.entries()) {
            Optional<NeedleLot> lot = entry.needles().lot();
            if (entry.entry().needles().from().isEmpty() && lot.isPresent() && entry.needles().grams().isPresent()) {
                used.merge(Ids.key(lot.get().id()), entry.needles().grams().getAsDouble(), Double::sum);
            }
        }
        return used;
    }

    /** Dyes and assistants by id. A bin that pots share is filled once. */
    private Map<String, Used> used() {
        Map<String, Used> used = new HashMap<>();
        Set<String> sharedBins = new HashSet<>();
        for (EntryWorking entry : workings.entries()) {
            boolean again = entry.presoak().filter(SoakFigures::shared).isPresent()
                    && !sharedBins.add(entry.entry().place().file());
            Stream<PartFigures> parts = again ? entry.partsBesidePresoak() : entry.parts();
            parts.forEach(part -> used.merge(Ids.key(part.is()), Used.of(part), Used::plus));
        }
        return used;
    }

    private static boolean isMore(double used, double had) {
        return used > had * (1 + ROUNDING);
    }

    private static String said(double amount, boolean byMass) {
        return byMass ? Say.weight(amount) : Say.volume(amount);
    }

    /**
     * How much of a thing was used, as far as that is known.
     *
     * @param grams of the thing itself
     * @param millilitres of the thing itself, not of a solution of it
     */
    private record Used(double grams, double millilitres) {

        static final Used NOTHING = new Used(0, 0);

        static Used of(PartFigures part) {
            OptionalDouble asSold = part.stockPercent().isPresent() ? OptionalDouble.empty() : part.ml();
            return new Used(part.grams().orElse(0), asSold.orElse(0));
        }

        Used plus(Used other) {
            return new Used(grams + other.grams, millilitres + other.millilitres);
        }
    }
}
