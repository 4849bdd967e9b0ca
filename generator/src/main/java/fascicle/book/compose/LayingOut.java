package fascicle.book.compose;

import fascicle.bath.Magnitude;
import fascicle.book.batch.StepNames;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.LotNeed;
import fascicle.workings.plan.Need;
import fascicle.workings.plan.PotGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What to lay out for a planned day, line by line ({@code common practice, no source}). */
final class LayingOut {

    private final DayPlan plan;
    private final Measuring measuring;
    private final Words words;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    LayingOut(DayPlan plan, Measuring measuring, Words words) {
        this.plan = plan;
        this.measuring = measuring;
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
        plan.batches().forEach(this::strainer);
        things();
        say("lay-out.tags", plan.batches().stream().flatMap(batch -> batch.groups().stream())
                .mapToInt(PotGroup::tags).sum());
        gear();
        return List.copyOf(lines);
    }

    private void needles() {
        say("lay-out.needles", plan.bundles(), figures.amount(plan.ask().gramsEach(), "g", false),
                figures.amount(plan.needlesGrams(), "g", false));
        plan.needles().forEach(this::lot);
        plan.needles().stream().filter(need -> !need.enough().orElse(false)).forEach(this::instead);
        if (!plan.withoutLot().isEmpty()) {
            toFind(plan.withoutLot());
        }
    }

    /** Lots for methods that name none. */
    private void toFind(List<Batch> batches) {
        double grams = batches.size() * plan.ask().gramsOfMethod();
        String whom = batches.size() == plan.batches().size() ? words.say("lay-out.everyone")
                : methods(batches.stream().map(Batch::letter).toList(), grams);
        String enough = lots(grams, lot -> true);
        if (enough.isEmpty()) {
            say("lay-out.no-lot", whom);
        } else {
            say("lay-out.lots", whom, enough);
        }
    }

    /** Lots in the stead of one that is not known to have enough: of its condition, since another takes dye otherwise. */
    private void instead(LotNeed need) {
        Optional<String> condition = condition(need.lot());
        String whom = methods(need.letters(), need.grams());
        String enough = lots(need.grams(), lot -> condition.isEmpty() || condition.equals(condition(lot)));
        if (!enough.isEmpty()) {
            say(condition.isEmpty() ? "lay-out.other-lots" : "lay-out.lots-alike", whom, enough);
        } else {
            say(condition.isEmpty() ? "lay-out.no-other-lot" : "lay-out.no-lot-alike", whom);
        }
    }

    private String methods(List<String> letters, double grams) {
        return words.say("lay-out.for-methods", String.join(words.say("pieces"), letters),
                figures.amount(grams, "g", false));
    }

    private String lots(double grams, Predicate<NeedleLot> suits) {
        return plan.lots().stream().filter(lot -> plan.spares(lot, grams).orElse(false) && suits.test(lot.lot()))
                .map(lot -> words.say("lay-out.lot", lot.lot().called(), grams(lot.left())))
                .collect(Collectors.joining(words.say("pieces")));
    }

    /** A lot that entries were done on, or that methods are for. */
    private void lot(LotNeed need) {
        String key = need.enough().map(enough -> enough ? "lay-out.own-lot" : "lay-out.own-lot-short")
                .orElse("lay-out.own-lot-unknown");
        say(key, String.join(words.say("pieces"), need.letters()), need.lot().called(),
                figures.amount(need.grams(), "g", false), grams(need.left()));
    }

    private static Optional<String> condition(NeedleLot lot) {
        return lot.condition().map(Noted::value).map(Ids::key);
    }

    private String grams(Magnitude left) {
        return figures.amount(left.value(), "g", left.about()).orElse("");
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
        plan.batches().forEach(batch -> batch.larger().ifPresent(vessel ->
                say("lay-out.larger", batch.letter(), vessel.called(), vessel.id())));
    }

    private void bin(Batch batch) {
        if (batch.whole().presoak().isPresent()) {
            lines.add(holding(batch, scaled -> scaled.presoak().orElseThrow())
                    .map(holds -> words.say("lay-out.bin", batch.chosen().called(), holds))
                    .orElseGet(() -> words.say("lay-out.bin-unknown", batch.chosen().called())));
        }
        StepNames names = StepNames.of(batch.whole(), words);
        treatments(batch, names.before(), Scaled::before);
        treatments(batch, names.after(), Scaled::after);
    }

    /** What a plant is drawn out in and strained into. */
    private void strainer(Batch batch) {
        batch.whole().extract().ifPresent(plant -> lines.add(figures.amount(plant.waterMl(), "ml", plant.about())
                .map(holds -> words.say("lay-out.strainer-for", batch.chosen().called(), holds))
                .orElseGet(() -> words.say("lay-out.strainer", batch.chosen().called()))));
    }

    private void treatments(Batch batch, List<String> names, Function<Scaled, List<SoakFigures>> baths) {
        for (int i = 0; i < names.size(); i++) {
            int place = i;
            String name = names.get(i);
            holding(batch, scaled -> baths.apply(scaled).get(place))
                    .ifPresent(holds -> say("lay-out.treatment", name, batch.chosen().called(), holds));
        }
    }

    /** What a bath beside the dyebath holds in each pot, pots of one size together. */
    private Optional<String> holding(Batch batch, Function<Scaled, SoakFigures> bath) {
        List<String> sizes = new ArrayList<>();
        for (PotGroup group : batch.groups()) {
            SoakFigures soak = bath.apply(group.scaled());
            Optional<String> holds = figures.amount(soak.liquorMl(), "ml", soak.about());
            if (holds.isEmpty()) {
                return Optional.empty();
            }
            sizes.add(batch.pots() == 1 ? holds.get() : words.say("lay-out.some-of", group.pots(), holds.get()));
        }
        return Optional.of(String.join(words.say("pieces"), sizes));
    }

    /** Everything that is used, so that it is found before the water is hot. */
    private void things() {
        String things = plan.needs().stream().map(Need::called).collect(Collectors.joining(words.say("pieces")));
        if (!things.isEmpty()) {
            say("lay-out.things", things);
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
        } else if (plan.ask().isClass() && plan.uses().dyeLeftOpen()) {
            say("lay-out.teachers-mask");
        }
        if (plan.uses().hot()) {
            say("lay-out.stove");
        }
        say("lay-out.aprons");
        say("lay-out.rinse");
        say("lay-out.dry", plan.bundles());
        say(plan.uses().salts().isEmpty() ? "lay-out.spent" : "lay-out.metal");
        String balance = measuring.balance().stream()
                .mapToObj(step -> figures.amount(step, "g", false)).findFirst().orElse("");
        lines.add(balance.isEmpty() ? words.say("lay-out.measures") : words.say("lay-out.measures-with", balance));
    }

    private void say(String key, Object... given) {
        lines.add(words.say(key, given));
    }
}
