package fascicle.book.compose;

import fascicle.bath.Magnitude;
import fascicle.book.caution.CautionWords;
import fascicle.book.caution.ClassWords;
import fascicle.book.figures.Figures;
import fascicle.book.page.Frame;
import fascicle.book.page.PlanPage;
import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.workings.Workings;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sheet of a planned day. */
final class SheetComposer {

    private final Workings workings;
    private final DayPlan plan;
    private final Words words;
    private final Figures figures;
    private final PlannedHours hours;

    SheetComposer(Workings workings, DayPlan plan, Words words, PlannedHours hours) {
        this.workings = workings;
        this.plan = plan;
        this.words = words;
        this.figures = new Figures(words);
        this.hours = hours;
    }

    PlanPage sheet(Frame frame) {
        MeasuredComposer measured = new MeasuredComposer(plan, workings.measuring(), words);
        return new PlanPage(frame, said(), refused(), new LayingOut(plan, workings.measuring(), words).lines(),
                plan.batches().stream().map(measured::of).toList(), plan.needs().stream().map(this::need).toList(),
                words.say(plan.ask().start().isPresent() ? "plan.heading-clock" : "plan.heading-clock-after"),
                hours.all(), hours.notes(), plan.duties().stream().map(duty -> ClassWords.duty(duty, words)).toList(),
                CautionWords.of(plan.uses(), words));
    }

    private List<String> said() {
        List<String> said = new ArrayList<>();
        String each = figures.amount(plan.ask().gramsEach(), "g", false);
        said.add(words.say("plan.people", plan.ask().people(), each));
        said.add(words.say("plan.needles", plan.bundles(), figures.amount(plan.needlesGrams(), "g", false)));
        plan.ask().start().ifPresent(start -> said.add(words.say("plan.start", figures.date(start.toLocalDate()),
                PlannedHours.hour(start))));
        said.addAll(hours.ends());
        if (plan.ask().minors()) {
            said.add(words.say("plan.minors"));
        }
        if (plan.ask().isClass()) {
            said.add(words.say("plan.teachers"));
        }
        return List.copyOf(said);
    }

    private List<String> refused() {
        return plan.refused().stream().flatMap(refused -> refused.why().stream().map(why ->
                words.say("plan.refused", refused.chosen().called(), ClassWords.refusal(why, words)))).toList();
    }

    private PlanPage.Need need(Need need) {
        Dimension measured = need.supply().map(supply -> supply.measured()).orElse(Dimension.MASS);
        String unknown = words.say("table.unknown");
        String needed = amount(need.needed(), measured).or(() -> amount(need.grams(), Dimension.MASS))
                .or(() -> amount(need.millilitres(), Dimension.VOLUME)).orElse(unknown);
        String left = need.supply().flatMap(supply -> amount(supply.remainder().left(), measured)
                .or(() -> amount(supply.remainder().atMost(), measured).map(most -> words.say("plan.at-most", most))))
                .orElse(unknown);
        return new PlanPage.Need(need.called(), needed, left, amount(need.after(), measured).orElse(unknown),
                need.isShort() ? Optional.of(words.say("plan.too-little")) : Optional.empty());
    }

    private Optional<String> amount(Magnitude amount, Dimension measured) {
        return figures.amount(amount.value(), measured == Dimension.VOLUME ? "ml" : "g", amount.about());
    }
}
