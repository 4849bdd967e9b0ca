package fascicle.book.batch;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.BatchRemark;
import fascicle.workings.Measuring;
import fascicle.workings.Scaled;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.Solution;
import fascicle.workings.plan.StillDry;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** One method of a planned day in words, some of whose parts come as solutions that the teacher made ahead. */
public final class PlannedBatchWords {

    private final Batch batch;
    private final boolean forClass;
    private final Measuring measuring;
    private final PartWords parts;
    private final Words words;
    private final Figures figures;

    /**
     * Words for a batch of a plan.
     *
     * @param batch the batch
     * @param forClass whether others than the maker handle it
     * @param measuring what is measured with
     * @param words the book's words
     */
    public PlannedBatchWords(Batch batch, boolean forClass, Measuring measuring, Words words) {
        this.batch = batch;
        this.forClass = forClass;
        this.measuring = measuring;
        this.parts = new PartWords(measuring, batch::strength, words);
        this.words = words;
        this.figures = new Figures(words);
    }

    /**
     * What to measure out, beside the solutions.
     *
     * @param scaled all pots of the batch, or one of them
     * @return the sheet
     */
    public BatchSheet sheet(Scaled scaled) {
        return BatchSheet.of(batch.besideSolutions(scaled), parts, words);
    }

    /**
     * A row in a line for those at the pot.
     *
     * @param row any row of a sheet
     * @return the thing and how much of it; or that only the teacher puts it in
     */
    public String line(BatchSheet.Row row) {
        List<String> told = row.told(words);
        String much = told.isEmpty() ? words.say("table.unknown") : String.join(words.say("pieces"), told);
        boolean dry = row.part().filter(batch::staysDry).isPresent();
        return words.say("plan.amount", row.thing(), dry ? words.say("plan.teacher-adds", much) : much);
    }

    /**
     * What to know beside the quantities.
     *
     * @return sentences: on a dye that is left open, on solutions, on what stays dry, and on the pots
     */
    public List<String> remarks() {
        BatchWords said = new BatchWords(parts, words);
        Stream<String> open = batch.uses().dyeLeftOpen()
                ? Stream.of(words.say(forClass ? "plan.dye-open-in-class" : "plan.dye-open")) : Stream.empty();
        Stream<String> made = batch.solutions().stream().map(this::made);
        Stream<String> less = batch.solutions().isEmpty() ? Stream.empty()
                : Stream.of(words.say("plan.solutions-bring"));
        Stream<String> over = batch.isOverfull() ? Stream.of(words.say("plan.overfull")) : Stream.empty();
        Stream<String> dry = batch.stillDry().stream().map(this::dry).distinct();
        Stream<String> ofPots = batch.groups().stream()
                .flatMap(group -> said.remarks(batch.besideSolutions(group.scaled())).stream()).distinct();
        return Stream.of(open, made, less, over, dry, ofPots).flatMap(sentences -> sentences).toList();
    }

    /**
     * What whoever stands at one of the pots must know, and cannot see in its quantities.
     *
     * @param pot the quantities of that pot
     * @return sentences: on stock solutions and their water, and on what does not fit or cannot be right
     */
    public List<String> atThePot(Scaled pot) {
        Stream<String> less = batch.solutions().isEmpty() ? Stream.empty()
                : Stream.of(words.say("slip.solutions-bring"));
        return Stream.concat(less, new BatchWords(parts, words).atThePot(batch.besideSolutions(pot)).stream()).toList();
    }

    /**
     * What those at a pot should have checked before they begin.
     *
     * @return sentences, which are among the {@link #remarks}
     */
    public List<String> checks() {
        OddWords said = new OddWords(words);
        return batch.whole().remarks().stream().filter(BatchRemark.Odd.class::isInstance)
                .map(odd -> said.said((BatchRemark.Odd) odd)).distinct().toList();
    }

    private String made(Solution solution) {
        OptionalDouble step = measuring.balance();
        return words.say("plan.solution", named(solution),
                figures.amount(solution.weighing(step), "g", false),
                figures.amount(solution.making(step), "ml", false), Figures.atMost(solution.percent(), 1),
                figures.amount(solution.millilitres(), "ml", false));
    }

    /** What it is of, and for which bath where the batch has two of it. */
    private String named(Solution solution) {
        String called = Additions.named(solution.part().called(), solution.part().part(), words);
        boolean again = batch.solutions().stream().filter(other -> other.part().is().equals(solution.part().is()))
                .count() > 1;
        return sheet(batch.whole()).baths().stream().filter(bath -> again && bath.rows().stream()
                        .anyMatch(row -> row.part().filter(solution.part().part()::equals).isPresent()))
                .flatMap(bath -> bath.title().stream()).findFirst()
                .map(bath -> words.say("scaling.in", called, bath)).orElse(called);
    }

    private String dry(StillDry still) {
        return words.say("plan.dry-" + still.why().name().toLowerCase(Locale.ROOT), still.part().called());
    }
}
