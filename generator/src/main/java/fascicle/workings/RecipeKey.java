package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What makes two entries the same recipe, whatever their needles and pots.
 *
 * <p>They follow the same method, or none. They have the same dyes, with {@code owf} equal to two significant figures,
 * and the same assistants, with g/L (or mL/L) equal to two; where that is unknown the amounts are written alike. They
 * have the same treatments before and after, their parts compared as dyes are. They are heated in the same steps, each
 * to the same temperature or look and held as long. Order is of no matter but in heating.
 *
 * @param text all of that, in a form that is equal where it is
 */
public record RecipeKey(String text) {

    /**
     * The recipe of an entry.
     *
     * @param working the entry and its figures
     * @return a key that is equal for entries of the same recipe
     */
    public static RecipeKey of(EntryWorking working) {
        Entry entry = working.entry();
        BathFigures bath = working.bath();
        return new RecipeKey(String.join("\n",
                "method " + entry.method().map(method -> Ids.key(method.value())).orElse(""),
                "dye " + parts(bath.dye(), AmountKey::onNeedles),
                "assistants " + parts(bath.assistants(), part -> AmountKey.inLiquor(part, bath.liquorMl())),
                "before " + treatments(working.before()),
                "after " + treatments(working.after()),
                "heat " + heat(entry.recipe().heat())));
    }

    private static String treatments(List<SoakFigures> soaks) {
        return soaks.stream()
                .map(soak -> soak.as().orElse("").toLowerCase(Locale.ROOT) + " "
                        + parts(soak.with(), AmountKey::onNeedles))
                .collect(Collectors.joining(" / "));
    }

    private static String parts(List<PartFigures> parts, Function<PartFigures, String> amount) {
        return parts.stream().map(part -> Ids.key(part.is()) + " " + amount.apply(part)).sorted()
                .collect(Collectors.joining("; "));
    }

    /** Heating: each step's end and how long it is held. */
    static String heat(List<HeatStep> steps) {
        return steps.stream().map(RecipeKey::step).collect(Collectors.joining("; "));
    }

    private static String step(HeatStep step) {
        return step.to().map(Noted::value).map(RecipeKey::end).orElse("") + " for "
                + step.hold().map(Noted::value).map(RecipeKey::length).orElse("");
    }

    private static String end(HeatStep.To to) {
        return to instanceof HeatStep.Degrees degrees
                ? Double.toString(degrees.temperature().value())
                : ((HeatStep.Look) to).word();
    }

    /** A length of time. */
    static String length(Span span) {
        return span instanceof Span.Timed timed ? Double.toString(timed.time().value()) : "overnight";
    }
}
