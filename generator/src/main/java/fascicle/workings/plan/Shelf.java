package fascicle.workings.plan;

import fascicle.bath.Magnitude;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Noted;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import fascicle.workings.stock.Stocktaking;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What all batches of a plan take together, against what is there. */
final class Shelf {

    private final Workings workings;
    private final List<Batch> batches;
    private final Stocktaking stock;

    Shelf(Workings workings, List<Batch> batches) {
        this.workings = workings;
        this.batches = batches;
        stock = Stocktaking.of(workings);
    }

    /** Every needle lot. */
    List<DayPlan.Lot> lots() {
        return workings.notebook().lots().stream().map(lot -> new DayPlan.Lot(lot, left(lot))).toList();
    }

    /** The lots that methods name, each once, in the order of the methods. */
    List<LotNeed> needles() {
        return batches.stream().flatMap(batch ->
                workings.notebook().lots().stream().filter(lot -> isDoneOn(batch, lot)))
                .distinct().map(this::needles).toList();
    }

    /** The dyed needles that entries dyed again. */
    List<DyedNeed> dyed() {
        return batches.stream().flatMap(batch -> workings.entry(batch.chosen().id()).stream()
                .flatMap(again -> again.entry().needles().from().stream().map(Noted::value).map(from -> new DyedNeed(
                        batch.letter(), from, workings.dyedBefore(again).orElse(from), batch.whole().needlesGrams(),
                        stock.bundle(from).map(bundle -> bundle.remainder().left()).orElse(Magnitude.UNKNOWN)))))
                .toList();
    }

    private static boolean isDoneOn(Batch batch, NeedleLot lot) {
        return batch.chosen().lot().filter(id -> Ids.same(id, lot.id())).isPresent();
    }

    private LotNeed needles(NeedleLot lot) {
        List<Batch> onIt = batches.stream().filter(batch -> isDoneOn(batch, lot)).toList();
        return new LotNeed(lot, onIt.stream().map(Batch::letter).toList(),
                onIt.stream().mapToDouble(batch -> batch.whole().needlesGrams()).sum(), left(lot));
    }

    private Magnitude left(NeedleLot lot) {
        return stock.lot(lot.id()).map(supply -> supply.remainder().left()).orElse(Magnitude.UNKNOWN);
    }

    /** Dyes and assistants, each once, in the order of the work. */
    List<Need> needs() {
        Map<String, List<PartFigures>> parts = new LinkedHashMap<>();
        for (Batch batch : batches) {
            batch.whole().everything().forEach(part ->
                    parts.computeIfAbsent(Ids.key(part.is()), unused -> new ArrayList<>())
                    .add(part.amounting(batch.takenGrams(part, workings.measuring().balance()), part.ml())));
        }
        return parts.values().stream().map(this::need).toList();
    }

    private Need need(List<PartFigures> parts) {
        PartFigures first = parts.get(0);
        Magnitude density = density(first.is());
        Magnitude grams = Magnitude.ZERO;
        Magnitude millilitres = Magnitude.ZERO;
        for (PartFigures part : parts) {
            grams = grams.plus(part.mass());
            millilitres = millilitres.plus(part.volumeAsSold(density));
        }
        return new Need(first.is(), first.called(), grams, millilitres, stock.dye(first.is()));
    }

    private Magnitude density(String id) {
        return workings.notebook().dyes().stream().filter(dye -> Ids.same(dye.id(), id)).findFirst()
                .flatMap(Dye::density).map(density -> Magnitude.of(density.value())).orElse(Magnitude.UNKNOWN);
    }
}
