package fascicle.book.data;

import fascicle.bath.Magnitude;
import fascicle.book.batch.PlannedBatchWords;
import fascicle.book.caution.CautionWords;
import fascicle.book.caution.ClassWords;
import fascicle.book.gist.Doings;
import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.notebook.Vessel;
import fascicle.workings.Measuring;
import fascicle.workings.Workings;
import fascicle.workings.clock.Schedule;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.Need;
import fascicle.workings.plan.Solution;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** A planned day as data, in the same figures as its sheet. */
public final class PlanJson {

    private final Json json = new Json();
    private final DayPlan plan;
    private final Words words;
    private final Doings doings;
    private final Measuring measuring;

    private PlanJson(DayPlan plan, Workings workings, Words words, Doings doings) {
        this.plan = plan;
        this.words = words;
        this.doings = doings;
        this.measuring = workings.measuring();
    }

    /**
     * Writes a plan.
     *
     * @param plan the plan
     * @param workings what it was planned from
     * @param words the book's words
     * @param doings stages in words
     * @return {@code {people, each_g, minors, start, needles_g, bundles, methods, refused, needs, needles, dyed, lots,
     *     clock, together, last, unplaced, duties, cautions}}; each method with {@code whole}, {@code each_pot} of
     *     those it is shared out to, and the {@code remarks} that stand on the sheet
     */
    public static String of(DayPlan plan, Workings workings, Words words, Doings doings) {
        return new PlanJson(plan, workings, words, doings).text();
    }

    private String text() {
        json.object(() -> {
            json.number("people", plan.ask().people());
            json.figure("each_g", OptionalDouble.of(plan.ask().gramsEach()));
            json.yes("minors", plan.ask().minors());
            json.text("start", plan.ask().start().map(Object::toString));
            json.figure("needles_g", OptionalDouble.of(plan.needlesGrams()));
            json.number("bundles", plan.bundles());
            json.items("methods", plan.batches(), this::method);
            json.items("refused", plan.refused(), refused -> {
                json.text("of", refused.chosen().id());
                json.texts("why", refused.why().stream().map(why -> ClassWords.refusal(why, words)).toList());
            });
            json.items("needs", plan.needs(), this::need);
            json.items("needles", plan.needles(), need -> {
                json.text("lot", need.lot().id());
                json.texts("for", need.letters());
                json.figure("needed_g", OptionalDouble.of(need.grams()));
                json.figure("left_g", need.left().value());
                json.maybe("enough", need.enough());
            });
            json.items("dyed", plan.dyed(), need -> {
                json.text("of", need.of());
                json.text("for", need.letter());
                json.figure("needed_g", OptionalDouble.of(need.grams()));
                json.figure("left_g", need.left().value());
            });
            json.items("lots", plan.lots(), lot -> {
                json.text("id", lot.lot().id());
                json.figure("left_g", lot.left().value());
                json.maybe("enough", plan.spares(lot, plan.withoutLot().size() * plan.ask().gramsOfMethod()));
            });
            json.items("clock", plan.schedule().due(), this::due);
            json.items("together", plan.schedule().together(), two -> {
                json.text("one", two.one());
                json.text("other", two.other());
                json.figure("from_minutes", OptionalDouble.of(two.from()));
                json.figure("until_minutes", two.until());
            });
            json.texts("last", plan.schedule().last());
            json.texts("unplaced", plan.schedule().unplaced());
            json.texts("duties", plan.duties().stream().map(duty -> ClassWords.duty(duty, words)).toList());
            json.texts("cautions", CautionWords.of(plan.uses(), words));
        });
        return json.finished().stripTrailing();
    }

    private void method(Batch batch) {
        json.text("letter", batch.letter());
        json.text("of", batch.chosen().id());
        json.text("title", batch.chosen().called());
        json.yes("dye_left_open", batch.uses().dyeLeftOpen());
        json.count("pots", batch.whole().pots());
        json.text("larger_vessel", batch.larger().map(Vessel::id));
        BatchJson quantities = new BatchJson(json, measuring, batch::strength);
        json.object("whole", () -> quantities.write(batch.besideSolutions(batch.whole())));
        json.items("each_pot", batch.groups(), group -> {
            json.number("pots", group.pots());
            json.number("bundles", group.bundles());
            json.object("quantities", () -> quantities.write(batch.besideSolutions(group.scaled())));
        });
        json.items("solutions", batch.solutions(), this::solution);
        json.yes("overfull", batch.isOverfull());
        json.items("still_dry", batch.stillDry(), still -> {
            json.text("is", still.part().is());
            json.text("as_written", still.part().asWritten());
            json.text("why", still.why().name().toLowerCase(Locale.ROOT));
        });
        json.texts("remarks", new PlannedBatchWords(batch, plan.ask().isClass(), measuring, words).remarks());
    }

    private void solution(Solution solution) {
        json.text("is", solution.part().is());
        BatchJson.when(json, solution.part().part());
        json.figure("g", OptionalDouble.of(solution.grams()));
        json.figure("percent", OptionalDouble.of(solution.percent()));
        json.figure("ml", OptionalDouble.of(solution.millilitres()));
        json.figure("make_ml", OptionalDouble.of(solution.making(measuring.balance())));
        json.figure("weigh_g", OptionalDouble.of(solution.weighing(measuring.balance())));
    }

    private void need(Need need) {
        json.text("is", need.is());
        json.text("title", need.called());
        json.figure("g", need.grams().value());
        json.figure("ml", need.millilitres().value());
        Magnitude left = need.supply().map(supply -> supply.remainder().left()).orElse(Magnitude.UNKNOWN);
        Magnitude most = need.supply().map(supply -> supply.remainder().atMost()).orElse(Magnitude.UNKNOWN);
        json.figure("left", left.value());
        json.figure("left_at_most", most.value());
        json.text("left_unit", most.known() ? need.supply().map(supply ->
                supply.measured() == Dimension.VOLUME ? "ml" : "g") : Optional.empty());
        json.figure("after", need.after().value());
        json.yes("too_little", need.isShort());
    }

    private void due(Schedule.Due due) {
        json.text("pot", due.pot());
        json.text("kind", due.stage().kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.text("doing", doings.say(due.stage()));
        json.yes("by_teacher", plan.ask().minors() && due.stage().isAtTheStove());
        json.text("at", due.from().stream().mapToObj(plan.schedule()::at).flatMap(Optional::stream).findFirst()
                .map(Object::toString));
        json.figure("minutes", due.from());
        json.figure("until_minutes", due.until());
        json.yes("about", due.stage().from().about());
    }
}
