package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import fascicle.measure.Dimension;
import fascicle.measure.Quantity;
import fascicle.notebook.Dye;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import java.util.List;
import java.util.Optional;

/** What is known of the packs that a dye or assistant is bought in. */
record Packs(Dye dye) {

    /** How it is measured: as its pack is; without one, a liquid by volume and everything else by weight. */
    Dimension measured() {
        boolean liquid = dye.form().map(Noted::value).filter(Dye.Form.LIQUID::equals).isPresent();
        return holds().map(held -> held.unit().dimension()).orElse(liquid ? Dimension.VOLUME : Dimension.MASS);
    }

    /** What is to be written where nobody knows what a pack holds. */
    Gap.Kind unknown() {
        return measured() == Dimension.VOLUME ? Gap.Kind.PACK_LIQUID : Gap.Kind.PACK;
    }

    /** All that was bought, in g or mL. */
    Total bought() {
        Optional<Quantity> holds = holds();
        Total bought = dye.bought().isEmpty()
                ? Total.unknown(new Gap(Gap.Kind.BOUGHT, dye.place(), dye.called())) : Total.NOTHING;
        if (holds.isEmpty()) {
            return Total.sum(List.of(Total.unknown(noPack()), bought));
        }
        if (dye.bought().isEmpty()) {
            return bought;
        }
        Magnitude pack = Magnitude.of(holds.get().value(), holds.get().about());
        return Total.sum(dye.bought().stream().map(purchase -> packs(purchase, pack)).toList());
    }

    /** What a gram or a millilitre costs, in the notebook's currency. A price of 0 is a price. */
    Total price() {
        Optional<Quantity> holds = holds();
        if (holds.isEmpty()) {
            return Total.unknown(noPack());
        }
        Optional<Noted<Double>> price = dye.pack().flatMap(Dye.Pack::price);
        return price.map(noted -> Total.of(Magnitude.of(noted.value())
                        .over(Magnitude.of(holds.get().value(), holds.get().about()))))
                .orElseGet(() -> Total.unknown(new Gap(Gap.Kind.PRICE, packPlace(), dye.called())));
    }

    private Total packs(Dye.Purchase purchase, Magnitude pack) {
        Place place = purchase.on().map(Noted::place).orElse(dye.place());
        return purchase.packs().map(packs -> Total.of(pack.times(packs.value())))
                .orElseGet(() -> Total.unknown(new Gap(Gap.Kind.PACKS, place, dye.called())));
    }

    private Optional<Quantity> holds() {
        return dye.pack().flatMap(Dye.Pack::holds).map(Noted::value).filter(held -> held.value() > 0);
    }

    private Gap noPack() {
        return new Gap(unknown(), packPlace(), dye.called());
    }

    private Place packPlace() {
        Optional<Place> holds = dye.pack().flatMap(Dye.Pack::holds).map(Noted::place);
        return holds.or(() -> dye.pack().flatMap(Dye.Pack::price).map(Noted::place)).orElse(dye.place());
    }
}
