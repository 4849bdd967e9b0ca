package fascicle.workings.stock;

import fascicle.bath.Amount;
import fascicle.bath.Magnitude;
import fascicle.measure.Dimension;
import fascicle.notebook.Dye;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import java.util.Optional;

/**
 * Something that an entry took off the shelf, as it is sold.
 *
 * @param entry which entry
 * @param part what it took
 */
record Taking(EntryWorking entry, PartFigures part) {

    /**
     * How much, in g or mL of the thing itself: of a stock solution what is dissolved in it.
     *
     * @param measured how the thing is sold
     * @param dye what its file says
     */
    Total amount(Dimension measured, Dye dye) {
        Magnitude density = dye.density().map(noted -> Magnitude.of(noted.value())).orElse(Magnitude.UNKNOWN);
        Magnitude amount = measured == Dimension.MASS ? part.mass() : part.volumeAsSold(density);
        return amount.known() ? Total.of(amount) : Total.unknown(gap(dye));
    }

    /** Why the amount is not known. */
    private Gap gap(Dye dye) {
        Optional<Noted<Amount>> written = part.part().amount();
        if (written.isEmpty()) {
            return new Gap(Gap.Kind.AMOUNT, part.part().is().place(), part.called());
        }
        Amount amount = written.get().value();
        if (part.grams().isPresent() || part.ml().isPresent()) {
            return new Gap(Gap.Kind.DENSITY, dye.place(), part.called());
        }
        if (amount instanceof Amount.Packs) {
            return new Gap(new Packs(dye).unknown(), dye.place(), part.called());
        }
        if (amount instanceof Amount.PerLitre && entry.bath().liquorMl().isEmpty()) {
            return new Gap(Gap.Kind.LIQUOR, entry.entry().place(), entry.entry().called());
        }
        boolean sized = !(amount instanceof Amount.Unsized);
        return sized && entry.needles().dryGrams().isEmpty() ? needlesGap(entry)
                : new Gap(Gap.Kind.SIZE, written.get().place(), written.get().written());
    }

    /** The dry needles of an entry, g. */
    static Total needles(EntryWorking entry) {
        Magnitude dry = new Magnitude(entry.needles().dryGrams(), entry.needles().about());
        return dry.known() ? Total.of(dry) : Total.unknown(needlesGap(entry));
    }

    private static Gap needlesGap(EntryWorking entry) {
        Needles needles = entry.entry().needles();
        Optional<NeedleLot> lot = entry.needles().lot();
        Place place = needles.lot().or(needles::from).map(Noted::place).orElse(entry.entry().place());
        if (entry.needles().grams().isPresent()) {
            return new Gap(Gap.Kind.NEEDLES_DRY, needles.weighed().map(Noted::place).orElse(place),
                    entry.entry().called());
        }
        return needles.bundles().filter(count -> count.value() > 0).isPresent() && lot.isPresent()
                ? new Gap(Gap.Kind.LOT_BUNDLE, lot.get().place(), lot.get().called())
                : new Gap(Gap.Kind.NEEDLES, needles.weight().map(Noted::place)
                        .or(() -> needles.bundles().map(Noted::place)).orElse(place), entry.entry().called());
    }
}
