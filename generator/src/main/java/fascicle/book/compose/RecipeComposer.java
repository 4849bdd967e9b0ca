package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.batch.Additions;
import fascicle.book.batch.StepNames;
import fascicle.book.caution.CautionWords;
import fascicle.book.figures.Figures;
import fascicle.book.gist.Heating;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.book.page.Step;
import fascicle.book.words.Words;
import fascicle.notebook.Bath;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Recipe;
import fascicle.notebook.Water;
import fascicle.workings.ExtractFigures;
import fascicle.workings.HeatFigures;
import fascicle.workings.PartFigures;
import fascicle.workings.PotFigures;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What is done to needles, step by step. */
final class RecipeComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;
    private final Heating heating;

    RecipeComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.figures = materials.figures();
        this.heating = new Heating(materials.words());
    }

    /** All steps of a recipe, in the order of the work. */
    List<Step> steps(Worked worked) {
        Recipe recipe = worked.recipe();
        List<Step> steps = new ArrayList<>();
        recipe.presoak().ifPresent(presoak -> steps.add(presoak(presoak, worked)));
        treatments(steps, recipe.before(), worked.before());
        add(steps, step("step.bath", bath(worked),
                parts(worked.bath().parts(), worked.recipe().bath().reuses().isPresent())));
        add(steps, step("step.heat", heat(worked), List.of()));
        treatments(steps, recipe.after(), worked.after());
        add(steps, step("step.after", facts().span("fact.dry", recipe.dry()).word("fact.rinse", "rinse", recipe.rinse())
                .facts(), List.of()));
        add(steps, step("step.finish", List.of(), parts(worked.finish())));
        return List.copyOf(steps);
    }

    private Facts facts() {
        return new Facts(materials, ways);
    }

    private Step step(String key, List<Fact> facts, List<Step.PartRow> parts) {
        return new Step(words.say(key), Optional.empty(), facts, parts);
    }

    private static void add(List<Step> steps, Step step) {
        if (!step.facts().isEmpty() || !step.parts().isEmpty()) {
            steps.add(step);
        }
    }

    private Step presoak(Recipe.Presoak presoak, Worked worked) {
        Facts facts = facts().span("fact.soaked-for", presoak.time());
        worked.soaking().ifPresent(sour -> facts.fact(new AcidityComposer(words).cold(sour)));
        return soak(words.say("step.presoak"), presoak.origin(), worked.presoak(), facts.facts());
    }

    private void treatments(List<Step> steps, List<Recipe.Treatment> treatments, List<SoakFigures> figured) {
        for (int i = 0; i < treatments.size(); i++) {
            Recipe.Treatment treatment = treatments.get(i);
            String title = StepNames.treatment(treatment.as().map(as -> as.value().word()), words);
            Optional<SoakFigures> soak = i < figured.size() ? Optional.of(figured.get(i)) : Optional.empty();
            steps.add(soak(title, treatment.origin(), soak, heatSteps(treatment.heat(), false)));
        }
    }

    private Step soak(String title, Origin origin, Optional<SoakFigures> figured, List<Fact> more) {
        Facts facts = facts();
        figured.ifPresent(soak -> {
            facts.known("fact.water", figures.amount(soak.waterMl(), "ml", soak.about()));
            if (!soak.waterMl().equals(soak.liquorMl())) {
                facts.known("fact.liquor", figures.amount(soak.liquorMl(), "ml", soak.about()));
            }
        });
        more.forEach(facts::fact);
        if (figured.filter(SoakFigures::shared).isPresent()) {
            facts.known("fact.bin", Optional.of(words.say("shared.bin")));
        }
        return new Step(title, ways.whence(origin), facts.facts(),
                figured.map(soak -> parts(soak.with())).orElse(List.of()));
    }

    private List<Fact> bath(Worked worked) {
        Bath bath = worked.recipe().bath();
        boolean about = worked.bath().about();
        Facts facts = facts()
                .noted("fact.vessel", bath.vessel(), vessel -> materials.index().vessel(vessel.value())
                        .map(found -> found.called()).orElse(vessel.value()))
                .links("fact.vessel-remark", materials.care().uses(worked.recipe()).pots().stream()
                        .flatMap(pot -> CautionWords.pot(pot, words).stream()).map(Link::plain).toList())
                .noted("fact.water-fixed", bath.water(), this::waterFixed)
                .known("fact.water", figures.amount(worked.bath().waterMl(), "ml", about))
                .known("fact.liquor", figures.amount(worked.bath().liquorMl(), "ml", about))
                .known("fact.ratio", figures.amount(worked.bath().ratio(), "ratio", about))
                .known("fact.depth", pot(worked.pot(), bath.water().map(Noted::value), about))
                .word("fact.water-from", "source", bath.from())
                .link("fact.reuses", bath.reuses().map(id -> ways.entry(id.value())))
                .written("fact.left", bath.left());
        bath.ph().ifPresent(ph -> facts.noted("fact.ph", Optional.of(ph.reads()), reads -> ph.with()
                .map(with -> words.say("ph.with", Figures.atMost(reads.value(), 2),
                        words.name("ph-tool", with.value())))
                .orElse(Figures.atMost(reads.value(), 2))));
        if (worked.bath().liquorMl().isPresent() || !worked.bath().parts().isEmpty()) {
            facts.fact(new AcidityComposer(words).fact(worked.acidity(), bath.ph()));
        }
        bath.extract().ifPresent(extract -> {
            Optional<ExtractFigures> plant = worked.bath().extract();
            boolean rough = plant.filter(ExtractFigures::about).isPresent();
            facts.known("fact.extract", plant.flatMap(found -> figures.amount(found.plantGrams(), "g", rough)))
                    .written("fact.extract-state", extract.state())
                    .known("fact.extract-water", plant.flatMap(found -> figures.amount(found.waterMl(), "ml", rough)));
            heatSteps(extract.heat(), false).forEach(facts::fact);
        });
        return facts.facts();
    }

    /** How deep the liquor stands, how full that makes the vessel, and whether the needles lie in it. */
    private Optional<String> pot(PotFigures pot, Optional<Water> water, boolean about) {
        Optional<String> depth = figures.amount(pot.depthCm(), "cm", about).map(figure ->
                water.orElse(null) instanceof Water.ByDepth asked ? figures.measured(asked.depth()) : figure);
        Optional<String> full = pot.filledPercent().stream().mapToObj(percent -> words.say(
                pot.isTooFull() ? "pot.too-full" : "pot.full", filled(percent, about))).findFirst();
        Optional<String> tooShort = !pot.isTooShort() ? Optional.empty() : Optional.of(words.say("pot.too-short",
                figures.measured(pot.needles().orElseThrow()),
                figures.amount(pot.lineCm().orElseThrow(), "cm", false)));
        List<String> said = Stream.of(depth, full, tooShort).flatMap(Optional::stream).toList();
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join(words.say("pieces"), said));
    }

    private String filled(double percent, boolean about) {
        String figure = Figures.atMost(percent, 0);
        return about ? words.say("about", figure) : figure;
    }

    /** What fixed the water, as written. */
    String waterFixed(Noted<Water> noted) {
        if (noted.value() instanceof Water.ByRatio) {
            return words.say("water.by-ratio", noted.written());
        }
        return noted.value() instanceof Water.ByDepth by ? words.say("water.by-depth", figures.measured(by.depth()))
                : words.say("water.poured", noted.written());
    }

    private List<Fact> heat(Worked worked) {
        Facts facts = facts();
        heatSteps(worked.recipe().heat(), true).forEach(facts::fact);
        HeatFigures heat = worked.heat();
        if (!worked.recipe().heat().isEmpty()) {
            facts.known("fact.heat-total", figures.minutes(heat.minutesTotal(), heat.aboutMinutes()))
                    .known("fact.heat-above-80", figures.minutes(heat.minutesAbove80(), heat.aboutMinutes()))
                    .known("fact.heat-peak", heat.peak().stream().mapToObj(peak -> figures.temperature(
                            peak, Heating.thermometer(worked.recipe().heat()), heat.aboutPeak())).findFirst());
        }
        return facts.span("fact.cool", worked.recipe().cool()).facts();
    }

    private List<Fact> heatSteps(List<HeatStep> steps, boolean numbered) {
        List<Fact> facts = new ArrayList<>();
        for (HeatStep step : steps) {
            String label = numbered && steps.size() > 1
                    ? words.say("fact.heat-step", facts.size() + 1) : words.say("fact.heat");
            facts.add(new Fact(label, List.of(Link.plain(heating.step(step))),
                    step.to().flatMap(to -> ways.whence(to.origin()))));
        }
        return facts;
    }

    private List<Step.PartRow> parts(List<PartFigures> parts) {
        return parts(parts, false);
    }

    private List<Step.PartRow> parts(List<PartFigures> parts, boolean reused) {
        return parts.stream().map(part -> part(part, reused)).toList();
    }

    private Step.PartRow part(PartFigures part, boolean reused) {
        List<String> remarks = new ArrayList<>();
        if (reused && part.part().is().origin() instanceof Origin.Method) {
            remarks.add(words.say("part.on-top"));
        }
        Additions.when(part.part(), words).ifPresent(remarks::add);
        part.stockPercent().ifPresent(percent ->
                remarks.add(words.say("part.stock", figures.amount(percent, "percent", false))));
        if (part.spooned()) {
            remarks.add(words.say("part.spooned"));
        }
        return new Step.PartRow(materials.addresses().leaf(Shelf.DYES, part.is()).map(ways::leaf)
                .orElse(Link.plain(part.called())), part.asWritten(),
                figures.amount(part.mass(), "g"), figures.amount(part.volume(), "ml"),
                figures.amount(part.owfPercent(), "percent", part.isRough()),
                figures.amount(part.gramsPerLitre(), "g-per-l", part.isRough()),
                words.say("follows." + part.by().name().toLowerCase(Locale.ROOT)), remarks,
                ways.whence(part.part().is().origin()));
    }
}
