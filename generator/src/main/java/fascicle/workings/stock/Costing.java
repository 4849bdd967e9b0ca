package fascicle.workings.stock;

import fascicle.notebook.Bath;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Recipe;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reckons what entries cost. */
final class Costing {

    private final Map<String, Dye> dyes;
    private final SharedBins bins;

    Costing(Map<String, Dye> dyes, SharedBins bins) {
        this.dyes = dyes;
        this.bins = bins;
    }

    /** What an entry cost. Plain water costs nothing; of an entry that tells no recipe nobody knows. */
    Cost of(EntryWorking entry) {
        if (isUntold(entry.entry().recipe())) {
            return Cost.of(Total.unknown(new Gap(Gap.Kind.RECIPE, entry.entry().place(), entry.entry().called())),
                    Taking.needles(entry));
        }
        List<Total> costs = new ArrayList<>();
        entry.presoak().map(SoakFigures::with).orElse(List.of()).forEach(part ->
                costs.add(of(entry, part).times(bins.shareOf(entry))));
        entry.partsBesidePresoak().forEach(part -> costs.add(of(entry, part)));
        return Cost.of(Total.sum(costs), Taking.needles(entry));
    }

    private Total of(EntryWorking entry, PartFigures part) {
        Optional<Dye> dye = Optional.ofNullable(dyes.get(Ids.key(part.is())));
        if (dye.isEmpty()) {
            return Total.unknown(new Gap(Gap.Kind.PACK, part.part().is().place(), part.called()));
        }
        Packs packs = new Packs(dye.get());
        Total price = packs.price();
        Total amount = new Taking(entry, part).amount(packs.measured(), dye.get());
        return new Total(price.known().times(amount.known()), Total.sum(List.of(price, amount)).gaps());
    }

    private static boolean isUntold(Recipe recipe) {
        Bath bath = recipe.bath();
        return recipe.parts().isEmpty() && recipe.presoak().isEmpty() && recipe.before().isEmpty()
                && recipe.after().isEmpty() && bath.water().isEmpty() && bath.reuses().isEmpty();
    }
}
