package fascicle.workings;

import fascicle.bath.Basis;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When two amounts are the same, whatever the batch: equal to two significant figures in what they follow, else
 * written alike.
 */
final class AmountKey {

    private AmountKey() {}

    /** By {@code owf}. */
    static String onNeedles(PartFigures part) {
        return figures(part.owfPercent(), "% owf").orElseGet(() -> asWritten(part));
    }

    /** By g/L, else mL/L. */
    static String inLiquor(PartFigures part, OptionalDouble liquorMl) {
        OptionalDouble millilitresPerLitre = part.ml().isPresent() && liquorMl.isPresent() && liquorMl.getAsDouble() > 0
                ? OptionalDouble.of(part.ml().getAsDouble() / liquorMl.getAsDouble() * 1000)
                : OptionalDouble.empty();
        return figures(part.gramsPerLitre(), "g/L").or(() -> figures(millilitresPerLitre, "mL/L"))
                .orElseGet(() -> asWritten(part));
    }

    /** By what the amount follows. */
    static String of(PartFigures part, OptionalDouble liquorMl) {
        if (part.by() == Basis.NEEDLES) {
            return onNeedles(part);
        }
        return part.by() == Basis.BATH ? inLiquor(part, liquorMl) : asWritten(part);
    }

    /** By the letters alone. */
    static String asWritten(PartFigures part) {
        return part.asWritten().map(written -> written.strip().toLowerCase(Locale.ROOT)).orElse("");
    }

    /** A figure to two digits with its unit. */
    static Optional<String> figures(OptionalDouble value, String unit) {
        return value.isPresent()
                ? Optional.of(TwoFigures.of(value.getAsDouble()).toPlainString() + " " + unit)
                : Optional.empty();
    }
}
