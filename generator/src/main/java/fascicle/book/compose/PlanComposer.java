package fascicle.book.compose;

import fascicle.bath.Magnitude;
import fascicle.book.batch.BatchSheet;
import fascicle.book.batch.BatchWords;
import fascicle.book.batch.PartWords;
import fascicle.book.caution.CautionWords;
import fascicle.book.caution.ClassWords;
import fascicle.book.figures.Figures;
import fascicle.book.gist.Doings;
import fascicle.book.page.Frame;
import fascicle.book.page.PlanPage;
import fascicle.book.page.Scaling;
import fascicle.book.page.SlipPage;
import fascicle.book.prose.Prose;
import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.Workings;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.Chosen;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.Need;
import fascicle.workings.plan.PotGroup;
import fascicle.workings.plan.Solution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The sheet and the slips of a planned day. */
public final class PlanComposer {

    private final Workings workings;
    private final DayPlan plan;
    private final Words words;
    private final Figures figures;
    private final Measuring measuring;
    private final Doings doings;
    private final String style;

    /**
     * Composes the pages of a plan.
     *
     * @param workings what was planned from
     * @param plan the plan
     * @param words the book's words
     * @param doings stages in words
     * @param style the address of the style
     */
    public PlanComposer(Workings workings, DayPlan plan, Words words, Doings doings, String style) {
        this.workings = workings;
        this.plan = plan;
        this.words = words;
        this.figures = new Figures(words);
        this.measuring = workings.measuring();
        this.doings = doings;
        this.style = style;
    }

    /**
     * The sheet.
     *
     * @return what it says
     */
    public PlanPage sheet() {
        PlannedHours hours = new PlannedHours(plan, words, doings);
        return new PlanPage(frame(words.say("plan.title")), said(), refused(),
                new LayingOut(plan, workings, words).lines(), plan.batches().stream().map(this::measured).toList(),
                plan.needs().stream().map(this::need).toList(), words.say(plan.ask().start().isPresent()
                ? "plan.heading-clock" : "plan.heading-clock-after"), hours.all(), hours.notes(),
                plan.duties().stream().map(duty -> ClassWords.duty(duty, words)).toList(),
                CautionWords.of(plan.uses(), words));
    }

    /**
     * The slips.
     *
     * @return what they say
     */
    public SlipPage slips() {
        PlannedHours hours = new PlannedHours(plan, words, doings);
        List<SlipPage.Slip> slips = new ArrayList<>();
        for (Batch batch : plan.batches()) {
            List<PotGroup> groups = batch.groups().stream()
                    .flatMap(group -> Collections.nCopies(group.pots(), group).stream()).toList();
            for (int pot = 0; pot < groups.size(); pot++) {
                String name = batch.potNames().get(pot);
                slips.add(new SlipPage.Slip(words.say("plan.lettered", name, batch.chosen().called()),
                        inOne(groups.get(pot)), baths(batch, groups.get(pot)), hours.of(name),
                        CautionWords.of(batch.uses(), words), tags(groups.get(pot))));
            }
        }
        return new SlipPage(frame(words.say("plan.slips")), List.copyOf(slips));
    }

    private Frame frame(String title) {
        String book = workings.notebook().cover().title();
        return new Frame(workings.notebook().cover().language(), title, book, words.say("plan.title"), "plan.html",
                "slip.html", style, "", List.of(), List.of());
    }

    private List<String> said() {
        List<String> said = new ArrayList<>();
        String each = figures.amount(plan.ask().gramsEach(), "g", false);
        said.add(words.say("plan.people", plan.ask().people(), each));
        said.add(words.say("plan.needles", plan.bundles(), figures.amount(plan.needlesGrams(), "g", false)));
        plan.ask().start().ifPresent(start -> said.add(words.say("plan.start", figures.date(start.toLocalDate()),
                PlannedHours.hour(start))));
        said.addAll(new PlannedHours(plan, words, doings).ends());
        if (plan.ask().minors()) {
            said.add(words.say("plan.minors"));
        }
        return List.copyOf(said);
    }

    private List<String> refused() {
        return plan.refused().stream().flatMap(refused -> refused.why().stream().map(why ->
                words.say("plan.refused", refused.chosen().called(), ClassWords.refusal(why, words)))).toList();
    }

    private List<String> pots(Batch batch) {
        return batch.whole().pots().isPresent() ? batch.groups().stream().map(this::line).toList()
                : List.of(words.say("plan.pots-unknown", new BatchWords(measuring, words).pots(batch.whole())
                        .orElseGet(() -> words.say("plan.no-vessel")), words.say("plan.bundles", plan.ask().people())));
    }

    /** All pots together, and where there are several, one of each kind. */
    private PlanPage.Measured measured(Batch batch) {
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
        PartWords parts = parts(batch);
        List<List<BatchSheet.Line>> sheets = columns.stream().map(batch::besideSolutions)
                .map(scaled -> BatchSheet.of(scaled, parts, words).lines()).toList();
        List<Scaling.Row> rows = IntStream.range(0, sheets.get(0).size())
                .mapToObj(line -> new Scaling.Row(sheets.get(0).get(line).thing(words),
                        sheets.stream().map(sheet -> cell(sheet.get(line).row())).toList())).toList();
        return new PlanPage.Measured(words.say("plan.lettered", batch.letter(), batch.chosen().called()), pots(batch), titles,
                rows, remarks(batch), steps(batch));
    }

    private List<String> cell(BatchSheet.Row row) {
        return row.whole().isEmpty() ? row.written().map(text -> words.say("batch.unsized", text)).stream().toList()
                : row.whole();
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

    private List<String> remarks(Batch batch) {
        BatchWords said = new BatchWords(parts(batch), words);
        Stream<String> ofBatch = batch.groups().stream().flatMap(group -> said.remarks(group.scaled()).stream()).distinct();
        Stream<String> made = batch.solutions().stream().map(this::made);
        Stream<String> open = batch.chosen().leavesDyeOpen() ? Stream.of(words.say("plan.dye-open")) : Stream.empty();
        return Stream.of(open, made, brought(batch), ofBatch).flatMap(sentences -> sentences).toList();
    }

    private String made(Solution solution) {
        OptionalDouble step = measuring.balance();
        return words.say("plan.solution", solution.part().called(), figures.amount(solution.weighing(step), "g", false),
                figures.amount(solution.making(step), "ml", false), Figures.atMost(solution.percent(), 1),
                figures.amount(solution.millilitres(), "ml", false));
    }

    /** What solutions do to the water. */
    private Stream<String> brought(Batch batch) {
        Stream<String> less = batch.solutions().isEmpty() ? Stream.empty() : Stream.of(words.say("plan.solutions-bring"));
        return batch.isOverfull() ? Stream.concat(less, Stream.of(words.say("plan.overfull"))) : less;
    }

    /** What is in one pot. */
    private String line(PotGroup group) {
        String in = new BatchWords(measuring, words).pots(group.scaled()).orElse(words.say("plan.no-vessel"));
        String grams = figures.amount(group.scaled().needlesGrams(), "g", false);
        return group.bundles() == 0 ? words.say("plan.pot-of-a-part", group.pots(), in, grams)
                : words.say("plan.pot-of", group.pots(), in, words.say("plan.bundles", group.bundles()), grams);
    }

    private PartWords parts(Batch batch) {
        return new PartWords(measuring, batch::strength, words);
    }

    /** What goes into one pot, bath by bath; a dye that is left open has a line to write it on. */
    private List<SlipPage.Bath> baths(Batch batch, PotGroup group) {
        return BatchSheet.of(batch.besideSolutions(group.scaled()), parts(batch), words).baths().stream()
                .map(bath -> new SlipPage.Bath(bath.title().orElseGet(() -> words.say("step.bath")), Stream.concat(
                        bath.poured().stream().map(this::amount),
                        bath.title().isEmpty() && batch.chosen().leavesDyeOpen() ? Stream.of(words.say("slip.dye"))
                                : Stream.empty()).toList())).toList();
    }

    private String amount(BatchSheet.Row row) {
        List<String> cell = cell(row).isEmpty() ? List.of(words.say("table.unknown")) : cell(row);
        return words.say("plan.amount", row.thing(), String.join(words.say("pieces"), cell));
    }

    private String inOne(PotGroup group) {
        return line(new PotGroup(1, group.bundles(), group.scaled()));
    }

    private List<String> tags(PotGroup group) {
        String weight = figures.amount(plan.ask().gramsEach(), "g", false);
        return IntStream.range(0, StrictMath.max(1, group.bundles())).mapToObj(unused -> weight).toList();
    }

    private PlanPage.Need need(Need need) {
        Dimension measured = need.supply().map(supply -> supply.measured()).orElse(Dimension.MASS);
        String unknown = words.say("table.unknown");
        String needed = amount(need.needed(), measured).or(() -> amount(need.grams(), Dimension.MASS))
                .or(() -> amount(need.millilitres(), Dimension.VOLUME)).orElse(unknown);
        String left = need.supply().flatMap(supply -> amount(supply.remainder().left(), measured)
                .or(() -> amount(supply.remainder().atMost(), measured).map(most -> words.say("shelf.at-most", most))))
                .orElse(unknown);
        return new PlanPage.Need(need.called(), needed, left, amount(need.after(), measured).orElse(unknown),
                need.isShort() ? Optional.of(words.say("plan.too-little")) : Optional.empty());
    }

    private Optional<String> amount(Magnitude amount, Dimension measured) {
        return figures.amount(amount.value(), measured == Dimension.VOLUME ? "ml" : "g", amount.about());
    }
}
