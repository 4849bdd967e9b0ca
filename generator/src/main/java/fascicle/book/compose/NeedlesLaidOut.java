package fascicle.book.compose;

import fascicle.bath.Magnitude;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Noted;
import fascicle.workings.plan.Batch;
import fascicle.workings.plan.DayPlan;
import fascicle.workings.plan.DyedNeed;
import fascicle.workings.plan.LotNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The needles to lay out for a planned day: of which lots, and of which others where a lot has too little or none is
 * named.
 */
final class NeedlesLaidOut {

    private final DayPlan plan;
    private final Words words;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    NeedlesLaidOut(DayPlan plan, Words words) {
        this.plan = plan;
        this.words = words;
        this.figures = new Figures(words);
    }

    List<String> lines() {
        say("lay-out.needles", plan.bundles(), figures.amount(plan.ask().gramsEach(), "g", false),
                figures.amount(plan.needlesGrams(), "g", false));
        plan.needles().forEach(this::lot);
        plan.dyed().forEach(this::dyed);
        plan.needles().stream().filter(need -> !need.enough().orElse(false)).forEach(this::instead);
        if (!plan.withoutLot().isEmpty()) {
            toFind(plan.withoutLot());
        }
        return List.copyOf(lines);
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

    /**
     * Lots in the stead of one that is not known to have enough: of its condition, since another takes dye otherwise.
     */
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

    /** What an entry that dyed over another colour is done on. */
    private void dyed(DyedNeed need) {
        boolean enough = need.left().known() && need.left().orThrow() >= need.grams();
        say(enough ? "lay-out.dyed" : need.left().known() ? "lay-out.dyed-short" : "lay-out.dyed-unknown",
                need.letter(), need.called(), figures.amount(need.grams(), "g", false), grams(need.left()));
    }

    private static Optional<String> condition(NeedleLot lot) {
        return lot.condition().map(Noted::value).map(Ids::key);
    }

    private String grams(Magnitude left) {
        return figures.amount(left.value(), "g", left.about()).orElse("");
    }

    private void say(String key, Object... given) {
        lines.add(words.say(key, given));
    }
}
