package fascicle.book.compose;

import fascicle.book.batch.BatchSheet;
import fascicle.book.batch.BatchWords;
import fascicle.book.batch.PlannedBatchWords;
import fascicle.book.figures.Figures;
import fascicle.book.page.PlanPage;
import fascicle.book.page.Scaling;
import fascicle.book.prose.Prose;
import fascicle.book.words.Words;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.Chosen;
import fascicle.workings.plan.DayPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What to measure out for one method of a plan, and how it is done. */
final class MeasuredComposer {

    private final DayPlan plan;
    private final Measuring measuring;
    private final Words words;
    private final Figures figures;
    private final PotLine potLine;

    MeasuredComposer(DayPlan plan, Measuring measuring, Words words) {
        this.plan = plan;
        this.measuring = measuring;
        this.words = words;
        this.figures = new Figures(words);
        this.potLine = new PotLine(measuring, words);
    }

    /** All pots together, and where there are several, one of each kind. */
    PlanPage.Measured of(Batch batch) {
        List<Scaled> columns = new ArrayList<>();
        List<String> titles = new ArrayList<>();
        columns.add(batch.whole());
        titles.add(words.say("plan.in-all", figures.amount(batch.whole().needlesGrams(), "g", false)));
        if (batch.pots() > 1) {
            batch.groups().forEach(group -> {
                columns.add(group.scaled());
                titles.add(words.say("plan.each-of", group.pots(),
                        figures.amount(group.scaled().needlesGrams(), "g", false)));
            });
        }
        PlannedBatchWords said = new PlannedBatchWords(batch, plan.ask().isClass(), measuring, words);
        return new PlanPage.Measured(words.say("plan.lettered", batch.letter(), batch.chosen().called()), pots(batch),
                titles, rows(columns.stream().map(column -> said.sheet(column).lines()).toList()), said.remarks(),
                steps(batch));
    }

    private List<Scaling.Row> rows(List<List<BatchSheet.Line>> sheets) {
        return IntStream.range(0, sheets.get(0).size()).mapToObj(line ->
                new Scaling.Row(sheets.get(0).get(line).thing(words),
                        sheets.stream().map(sheet -> sheet.get(line).row().told(words)).toList())).toList();
    }

    private List<String> pots(Batch batch) {
        return batch.whole().pots().isPresent() ? batch.groups().stream().map(potLine::of).toList()
                : List.of(words.say("plan.pots-unknown", new BatchWords(measuring, words).pots(batch.whole())
                        .orElseGet(() -> words.say("plan.no-vessel")), words.say("plan.bundles", plan.ask().people())));
    }

    /** The maker's words, once for all that follow them. The sheet stands alone: its ways and pictures lead nowhere. */
    private List<PlanPage.Told> steps(Batch batch) {
        Prose prose = new Prose(file -> Optional.empty(), file -> Optional.empty());
        return batch.chosen().steps().stream().filter(told -> !isToldBefore(told, batch))
                .map(told -> new PlanPage.Told(title(told, batch), told.notes().stream().filter(note -> !note.isBlank())
                        .map(note -> prose.html(note, "")).toList()))
                .filter(told -> !told.words().isEmpty()).toList();
    }

    private boolean isToldBefore(Chosen.Told told, Batch batch) {
        return plan.batches().stream().takeWhile(before -> before != batch)
                .anyMatch(before -> before.chosen().steps().contains(told));
    }

    /** Whose words they are, where they are not those of the method that the table stands for. */
    private Optional<String> title(Chosen.Told told, Batch batch) {
        return told.method().equals(batch.chosen().called()) ? Optional.empty()
                : Optional.of(words.say("plan.says", told.method()));
    }
}
