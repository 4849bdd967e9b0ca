package fascicle.book.compose;

import fascicle.book.batch.StepNames;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Vessel;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.Need;
import fascicle.workings.plan.PotGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
        lines.addAll(new NeedlesLaidOut(plan, words).lines());
        vessels();
        plan.batches().forEach(this::bin);
        plan.batches().forEach(this::strainer);
        things();
        say("lay-out.tags", plan.batches().stream().flatMap(batch -> batch.groups().stream())
                .mapToInt(PotGroup::tags).sum());
        gear();
        return List.copyOf(lines);
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
        boolean alone = plan.ask().choices().size() == 1;
        plan.batches().forEach(batch -> batch.larger().ifPresent(vessel ->
                say(alone ? "lay-out.larger" : "lay-out.larger-free", batch.letter(), vessel.called(), vessel.id())));
    }

    private void bin(Batch batch) {
        if (batch.whole().presoak().isPresent()) {
            lines.add(holding(batch, scaled -> scaled.presoak().flatMap(this::liquor))
                    .map(holds -> words.say("lay-out.bin", batch.chosen().called(), holds))
                    .orElseGet(() -> words.say("lay-out.bin-unknown", batch.chosen().called())));
        }
        StepNames names = StepNames.of(batch.whole(), words);
        treatments(batch, names.before(), Scaled::before);
        treatments(batch, names.after(), Scaled::after);
    }

    /** What a plant is drawn out in and strained into. */
    private void strainer(Batch batch) {
        if (batch.whole().extract().isPresent()) {
            lines.add(holding(batch, scaled -> scaled.extract()
                    .flatMap(plant -> figures.amount(plant.waterMl(), "ml", plant.about())))
                    .map(holds -> words.say("lay-out.strainer-for", batch.chosen().called(), holds))
                    .orElseGet(() -> words.say("lay-out.strainer", batch.chosen().called())));
        }
    }

    private void treatments(Batch batch, List<String> names, Function<Scaled, List<SoakFigures>> baths) {
        for (int i = 0; i < names.size(); i++) {
            int place = i;
            String name = names.get(i);
            holding(batch, scaled -> liquor(baths.apply(scaled).get(place)))
                    .ifPresent(holds -> say("lay-out.treatment", name, batch.chosen().called(), holds));
        }
    }

    private Optional<String> liquor(SoakFigures soak) {
        return figures.amount(soak.liquorMl(), "ml", soak.about());
    }

    /** How much a bath beside the dyebath is for each pot, pots of one size together. */
    private Optional<String> holding(Batch batch, Function<Scaled, Optional<String>> bath) {
        List<String> sizes = new ArrayList<>();
        for (PotGroup group : batch.groups()) {
            Optional<String> holds = bath.apply(group.scaled());
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
