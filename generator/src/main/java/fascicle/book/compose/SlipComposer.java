package fascicle.book.compose;

import fascicle.book.batch.BatchSheet;
import fascicle.book.batch.PlannedBatchWords;
import fascicle.book.caution.CautionWords;
import fascicle.book.figures.Figures;
import fascicle.book.page.SlipPage;
import fascicle.book.words.Words;
import fascicle.workings.Measuring;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.PotGroup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** The slips of a planned day, one for each pot. */
final class SlipComposer {

    private final DayPlan plan;
    private final Measuring measuring;
    private final Words words;
    private final Figures figures;
    private final PlannedHours hours;
    private final PotLine potLine;

    SlipComposer(DayPlan plan, Measuring measuring, Words words, PlannedHours hours) {
        this.plan = plan;
        this.measuring = measuring;
        this.words = words;
        this.figures = new Figures(words);
        this.hours = hours;
        this.potLine = new PotLine(measuring, words);
    }

    List<SlipPage.Slip> slips() {
        List<SlipPage.Slip> slips = new ArrayList<>();
        for (Batch batch : plan.batches()) {
            List<PotGroup> groups = batch.groups().stream()
                    .flatMap(group -> Collections.nCopies(group.pots(), group).stream()).toList();
            for (int pot = 0; pot < groups.size(); pot++) {
                slips.add(slip(batch, groups.get(pot), batch.potNames().get(pot)));
            }
        }
        return List.copyOf(slips);
    }

    private SlipPage.Slip slip(Batch batch, PotGroup group, String pot) {
        return new SlipPage.Slip(words.say("plan.lettered", pot, batch.chosen().called()), potLine.ofOne(group),
                said(batch).checks(), baths(batch, group), said(batch).atThePot(group.scaled()),
                words.say(plan.ask().minors() ? "slip.defer-minors" : "slip.defer"),
                hours.of(pot), CautionWords.of(batch.uses(), words), tags(group));
    }

    /** What goes into one pot, bath by bath; a dye that is left open has a line to write it on. */
    private List<SlipPage.Bath> baths(Batch batch, PotGroup group) {
        return said(batch).sheet(group.scaled()).baths().stream().map(bath -> new SlipPage.Bath(
                bath.title().orElseGet(() -> words.say("step.bath")),
                Stream.of(bath.poured().stream().map(said(batch)::line), drawn(group, bath), dyeToWrite(batch, bath))
                        .flatMap(lines -> lines).toList())).toList();
    }

    private PlannedBatchWords said(Batch batch) {
        return new PlannedBatchWords(batch, plan.ask().isClass(), measuring, words);
    }

    private Stream<String> drawn(PotGroup group, BatchSheet.Bath bath) {
        return bath.title().isEmpty() && group.scaled().extract().isPresent() ? Stream.of(words.say("batch.drawn"))
                : Stream.empty();
    }

    private Stream<String> dyeToWrite(Batch batch, BatchSheet.Bath bath) {
        return bath.title().isEmpty() && batch.uses().dyeLeftOpen()
                ? Stream.of(words.say(plan.ask().isClass() ? "slip.dye-solution" : "slip.dye")) : Stream.empty();
    }

    private List<String> tags(PotGroup group) {
        String bundle = figures.amount(plan.ask().gramsEach(), "g", false);
        return group.bundles() > 0 ? Collections.nCopies(group.bundles(), bundle)
                : List.of(words.say("slip.part-of-bundle",
                        figures.amount(group.scaled().needlesGrams(), "g", false), bundle));
    }
}
