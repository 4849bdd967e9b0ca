package fascicle.workings;

import fascicle.notebook.Entry;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /** Two figures, after what arithmetic on doubles may have added is gone. */
    private static final MathContext WITHOUT_NOISE = new MathContext(12);

    private static final MathContext TWO_FIGURES = new MathContext(2);

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
                "dye " + parts(bath.dye(), RecipeKey::onNeedles),
                "assistants " + parts(bath.assistants(), part -> inLiquor(part, bath.liquorMl())),
                "before " + treatments(working.before()),
                "after " + treatments(working.after()),
                "heat " + entry.recipe().heat().stream().map(RecipeKey::step).collect(Collectors.joining("; "))));
    }

    private static String treatments(List<SoakFigures> soaks) {
        return soaks.stream()
                .map(soak -> soak.as().orElse("").toLowerCase(Locale.ROOT) + " " + parts(soak.with(), RecipeKey::onNeedles))
                .collect(Collectors.joining(" / "));
    }

    private static String parts(List<PartFigures> parts, Function<PartFigures, String> amount) {
        return parts.stream().map(part -> Ids.key(part.is()) + " " + amount.apply(part)).sorted()
                .collect(Collectors.joining("; "));
    }

    private static String onNeedles(PartFigures part) {
        return figures(part.owfPercent(), "% owf").orElseGet(() -> asWritten(part));
    }

    private static String inLiquor(PartFigures part, OptionalDouble liquorMl) {
        OptionalDouble millilitresPerLitre = part.ml().isPresent() && liquorMl.isPresent() && liquorMl.getAsDouble() > 0
                ? OptionalDouble.of(part.ml().getAsDouble() / liquorMl.getAsDouble() * 1000)
                : OptionalDouble.empty();
        return figures(part.gramsPerLitre(), "g/L").or(() -> figures(millilitresPerLitre, "mL/L"))
                .orElseGet(() -> asWritten(part));
    }

    private static Optional<String> figures(OptionalDouble value, String unit) {
        return value.isPresent()
                ? Optional.of(new BigDecimal(value.getAsDouble()).round(WITHOUT_NOISE).round(TWO_FIGURES)
                        .stripTrailingZeros().toPlainString() + " " + unit)
                : Optional.empty();
    }

    private static String asWritten(PartFigures part) {
        return part.asWritten().map(written -> written.strip().toLowerCase(Locale.ROOT)).orElse("");
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

    private static String length(Span span) {
        return span instanceof Span.Timed timed ? Double.toString(timed.time().value()) : "overnight";
    }
}
