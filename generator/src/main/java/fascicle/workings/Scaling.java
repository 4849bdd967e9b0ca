package fascicle.workings;

import fascicle.bath.Batch;
import fascicle.bath.Liquor;
import fascicle.bath.Magnitude;
import fascicle.bath.Pot;
import fascicle.bath.StockToMake;
import fascicle.measure.Quantity;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import fascicle.notebook.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * One recipe, ready to be worked out for any weight of needles in any vessel.
 *
 * <p>The liquor keeps its ratio to the needles, unless the recipe's depth in the chosen vessel needs more: then each of
 * its pots is filled so deep. A batch that is too much for one vessel is shared out between equal ones.
 *
 * @param of the id of the entry or method
 * @param recipe as written
 * @param worked as worked out for its own needles
 * @param own the recipe's own vessel
 * @param needleLength of the needles
 * @param dyedBefore what the needles were called that had been dyed before; nothing for bare ones, and for methods
 * @param measuring what things are measured out with
 * @param boil where water boils, °C
 */
record Scaling(String of, Recipe recipe, WorkedRecipe worked, Optional<Vessel> own, Optional<Quantity> needleLength,
        Optional<String> dyedBefore, Measuring measuring, double boil) {

    /** By how much of itself an amount may exceed another through rounding alone. */
    private static final double HARDLY = 1e-6;

    /** The recipe for a weight of dry needles, g, in a vessel; in its own where none is chosen. */
    Scaled to(double grams, Optional<Vessel> chosen) {
        Optional<Vessel> vessel = chosen.or(() -> own);
        Optional<Pot> pot = vessel.flatMap(Vessel::pot);
        double cover = depth().isPresent() && vessel.flatMap(Vessel::basin).isPresent()
                ? vessel.get().basin().get().millilitres(depth().get().value()) : 0;
        Magnitude needles = Magnitude.of(grams);
        OptionalDouble byRatio = worked.bath().ratio().times(needles).value();
        OptionalInt pots = pot.isPresent() && byRatio.isPresent()
                ? pot.get().potsFor(byRatio.getAsDouble(), grams, cover) : OptionalInt.empty();
        boolean about = worked.bath().cover().about();
        WorkedRecipe scaled = worked.scaledTo(needles, Magnitude.of(cover * pots.orElse(1), about));
        Liquor liquor = scaled.bath().liquor();
        OptionalDouble filled = pot.isPresent() && liquor.total().known() && !liquor.impossible() && pots.isPresent()
                ? OptionalDouble.of(pot.get().filledBy(liquor.total().orThrow() / pots.getAsInt(),
                        grams / pots.getAsInt()))
                : OptionalDouble.empty();
        BathFigures figures = scaled.bath().figures();
        Scaled plain = new Scaled(of, grams, figures.liquorMl(), figures.waterMl(), figures.ratio(), figures.about(),
                vessel, vessel.map(Vessel::id).or(() -> recipe.bath().vessel().map(Noted::value)), pots, filled,
                scaled.bath().reused(), scaled.bath().taken(), figures.dye(), figures.assistants(),
                figures.extract(), scaled.presoakFigures(), WorkedRecipe.figures(scaled.before()),
                WorkedRecipe.figures(scaled.after()), scaled.finishFigures(), List.of());
        return plain.remarked(remarks(plain, liquor, cover > 0));
    }

    /** The depth that the recipe asks for. */
    Optional<Quantity> depth() {
        return recipe.bath().water().map(Noted::value).filter(Water.ByDepth.class::isInstance)
                .map(water -> ((Water.ByDepth) water).depth());
    }

    private List<BatchRemark> remarks(Scaled scaled, Liquor liquor, boolean covered) {
        List<BatchRemark> remarks = new ArrayList<>();
        dyedBefore.ifPresent(called -> remarks.add(new BatchRemark.OverDye(called)));
        if (liquor.impossible()) {
            remarks.add(new BatchRemark.TooWeak());
        }
        remarks.addAll(odd());
        if (scaled.reused()) {
            remarks.add(reused(scaled));
        } else if (scaled.liquorMl().isEmpty() && !liquor.impossible() && !scaled.parts().isEmpty()) {
            remarks.add(new BatchRemark.NoLiquor());
        }
        OptionalDouble before = worked.bath().ratio().value();
        if (before.isPresent() && scaled.ratio().isPresent()
                && scaled.ratio().getAsDouble() > before.getAsDouble() * (1 + HARDLY)) {
            remarks.add(new BatchRemark.Paler(before.getAsDouble(), scaled.ratio().getAsDouble()));
        }
        scaled.vessel().ifPresent(vessel -> vessel(remarks, vessel, scaled, covered));
        int pots = scaled.pots().orElse(1);
        Stream.of(scaled.presoak().stream(), scaled.before().stream(), scaled.after().stream()).flatMap(soak -> soak)
                .forEach(soak -> stocks(remarks, soak.with(), soak.waterMl(), 1));
        stocks(remarks, scaled.parts(), scaled.waterMl(), pots);
        return List.copyOf(remarks);
    }

    private BatchRemark reused(Scaled scaled) {
        Magnitude left = worked.bath().standing();
        Magnitude taken = scaled.standingMl();
        return taken.known() && left.known() && taken.orThrow() > left.orThrow() * (1 + HARDLY)
                ? new BatchRemark.LeftTooLittle(taken, left,
                        left.times(Magnitude.of(scaled.needlesGrams())).over(taken))
                : new BatchRemark.Reused(left);
    }

    /** What is odd about the recipe itself, whatever it is scaled to. */
    List<BatchRemark.Odd> odd() {
        return Stream.<BatchRemark.Odd>concat(Absurdity.in(worked).stream()
                        .map(found -> new BatchRemark.Absurd(found.line().thing().called(), found.excess())),
                HeatLimits.beyond(recipe, boil).stream().map(BatchRemark.Heat::new)).toList();
    }

    /** Stock solutions that would be more than the water of their bath, be it one of several pots. */
    private void stocks(List<BatchRemark> remarks, List<PartFigures> parts, OptionalDouble water, int pots) {
        if (water.isEmpty()) {
            return;
        }
        double room = water.getAsDouble() / pots * (1 + HARDLY);
        for (PartFigures part : parts) {
            Optional<StockToMake> stock = measuring.stock(part.sharedBy(pots));
            if (stock.isPresent() && stock.get().millilitres() > room) {
                remarks.add(new BatchRemark.TooMuchStock(part.part(), part.called(), stock.get().millilitres()));
            }
        }
    }

    private void vessel(List<BatchRemark> remarks, Vessel vessel, Scaled scaled, boolean covered) {
        if (vessel.pot().isEmpty()) {
            remarks.add(new BatchRemark.Unmeasured(vessel.called()));
            return;
        }
        Pot pot = vessel.pot().get();
        scaled.pots().stream().filter(pots -> pots > Batch.MOST_POTS)
                .forEach(pots -> remarks.add(new BatchRemark.ManyPots(pots, Batch.MOST_POTS)));
        if (covered && scaled.pots().isEmpty() && scaled.liquorMl().isPresent()) {
            depth().ifPresent(depth -> remarks.add(new BatchRemark.NoRoom(depth, Pot.FULL * pot.height())));
        }
        scaled.depthCm().stream().filter(depth -> depth < Pot.LEAST_DEPTH)
                .forEach(depth -> remarks.add(new BatchRemark.TooShallow(depth)));
        needleLength.filter(length -> length.value() > pot.basin().longestLine())
                .ifPresent(length -> remarks.add(new BatchRemark.TooLong(length, pot.basin().longestLine())));
    }
}
