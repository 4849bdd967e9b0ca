package fascicle.book.compose;

import fascicle.book.batch.StepNames;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import fascicle.workings.SoakFigures;
import fascicle.workings.Workings;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.DayPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to lay out for a planned day, line by line ({@code common practice, no source}). */
final class LayingOut {

    private final DayPlan plan;
    private final Workings workings;
    private final Words words;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    LayingOut(DayPlan plan, Workings workings, Words words) {
        this.plan = plan;
        this.workings = workings;
        this.words = words;
        this.figures = new Figures(words);
    }

    List<String> lines() {
        if (plan.batches().isEmpty()) {
            return List.of();
        }
        needles();
        vessels();
        plan.batches().forEach(this::bin);
        say("lay-out.tags", plan.bundles());
        gear();
        return List.copyOf(lines);
    }

    private void needles() {
        say("lay-out.needles", plan.bundles(), figures.amount(plan.ask().gramsEach(), "g", false),
                figures.amount(plan.needlesGrams(), "g", false));
        plan.batches().forEach(this::ownLot);
        if (plan.batches().stream().allMatch(batch -> lot(batch).flatMap(lot -> lot.has(batch.whole().needlesGrams()))
                .orElse(false))) {
            return;
        }
        List<String> enough = plan.lots().stream().filter(lot -> lot.has(plan.needlesGrams()).orElse(false))
                .filter(this::isAlike)
                .map(lot -> words.say("lay-out.lot", lot.lot().called(), grams(lot))).toList();
        if (enough.isEmpty()) {
            say("lay-out.no-lot");
        } else {
            say("lay-out.lots", String.join(words.say("pieces"), enough));
        }
    }

    /** The lot that an entry was done on, or that a method is for. */
    private void ownLot(Batch batch) {
        double needed = batch.whole().needlesGrams();
        lot(batch).ifPresent(lot -> {
            String key = lot.has(needed).map(enough -> enough ? "lay-out.own-lot" : "lay-out.own-lot-short")
                    .orElse("lay-out.own-lot-unknown");
            say(key, batch.letter(), lot.lot().called(), figures.amount(needed, "g", false), grams(lot));
        });
    }

    private Optional<DayPlan.Lot> lot(Batch batch) {
        return batch.chosen().lot().flatMap(id -> plan.lots().stream()
                .filter(lot -> Ids.same(lot.lot().id(), id)).findFirst());
    }

    /** Of the same condition as the lots that recipes were done on; another condition takes dye otherwise. */
    private boolean isAlike(DayPlan.Lot other) {
        return plan.batches().stream().flatMap(batch -> lot(batch).stream()).allMatch(own ->
                condition(own).isEmpty() || condition(own).equals(condition(other)));
    }

    private static Optional<String> condition(DayPlan.Lot lot) {
        return lot.lot().condition().map(Noted::value).map(Ids::key);
    }

    private String grams(DayPlan.Lot lot) {
        return figures.amount(lot.left().value(), "g", lot.left().about()).orElse("");
    }

    /** Vessels by how many are wanted; a notebook has each once. */
    private void vessels() {
        Map<Vessel, Integer> wanted = new LinkedHashMap<>();
        for (Batch batch : plan.batches()) {
            Optional<Vessel> vessel = batch.whole().vessel();
            if (vessel.isEmpty()) {
                say("lay-out.vessel-unsaid", batch.chosen().called());
            } else {
                wanted.merge(vessel.get(), batch.pots(), Integer::sum);
            }
        }
        wanted.forEach((vessel, count) ->
                say(count == 1 ? "lay-out.vessel" : "lay-out.vessels", count, vessel.called()));
        plan.batches().stream().filter(batch -> batch.pots() > 1).forEach(this::larger);
    }

    /** A vessel of the notebook that would hold all of a batch. */
    private void larger(Batch batch) {
        workings.notebook().vessels().stream().filter(vessel -> workings.scale(batch.chosen().id(),
                        batch.whole().needlesGrams(), Optional.of(vessel)).flatMap(scaled -> scaled.pots().stream().boxed()
                        .findFirst()).orElse(0) == 1).filter(vessel -> vessel.madeOf().map(Noted::value)
                        .filter(made -> made == Vessel.Material.PLASTIC || made == Vessel.Material.GLASS).isEmpty())
                .findFirst().ifPresent(vessel -> say("lay-out.larger", batch.letter(), vessel.called(), vessel.id()));
    }

    private void bin(Batch batch) {
        batch.whole().presoak().ifPresent(bin -> lines.add(figures.amount(bin.liquorMl(), "ml", bin.about())
                .map(holds -> words.say("lay-out.bin", batch.chosen().called(), holds))
                .orElseGet(() -> words.say("lay-out.bin-unknown", batch.chosen().called()))));
        StepNames names = StepNames.of(batch.whole().before().stream().map(SoakFigures::as).toList(),
                batch.whole().after().stream().map(SoakFigures::as).toList(), words);
        treatments(batch, names.before(), batch.whole().before());
        treatments(batch, names.after(), batch.whole().after());
    }

    private void treatments(Batch batch, List<String> names, List<SoakFigures> baths) {
        for (int i = 0; i < baths.size(); i++) {
            String name = names.get(i);
            figures.amount(baths.get(i).liquorMl(), "ml", baths.get(i).about())
                    .ifPresent(holds -> say("lay-out.treatment", name, batch.chosen().called(), holds));
        }
    }

    private void gear() {
        boolean powders = !plan.uses().powders().isEmpty();
        boolean sour = !plan.uses().of(Dye.Kind.ACID).isEmpty() || !plan.uses().of(Dye.Kind.ALKALI).isEmpty();
        say(plan.ask().isClass() ? "lay-out.gloves" : "lay-out.gloves-own");
        if (sour || powders) {
            say("lay-out.goggles");
        }
        if (powders) {
            say("lay-out.mask");
        }
        if (plan.uses().hot()) {
            say("lay-out.stove");
        }
        if (!plan.uses().salts().isEmpty()) {
            say("lay-out.metal");
        }
        String balance = workings.measuring().balance().stream()
                .mapToObj(step -> figures.amount(step, "g", false)).findFirst().orElse("");
        lines.add(balance.isEmpty() ? words.say("lay-out.measures") : words.say("lay-out.measures-with", balance));
    }

    private void say(String key, Object... given) {
        lines.add(words.say(key, given));
    }
}
