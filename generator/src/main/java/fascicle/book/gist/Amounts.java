package fascicle.book.gist;

import fascicle.bath.Basis;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.PartFigures;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The amount of one part in a few words. */
public final class Amounts {

    private final Words words;
    private final Figures figures;

    /**
     * Amounts in the book's words.
     *
     * @param words the book's words
     */
    public Amounts(Words words) {
        this.words = words;
        this.figures = new Figures(words);
    }

    /**
     * By the needles where it follows them, else as it was measured, else as written.
     *
     * @param part a part of a bath
     * @return such as {@code 1.5 % owf}; nothing where no amount was given
     */
    public Optional<String> inBrief(PartFigures part) {
        return Stream.of(part.by() == Basis.NEEDLES ? owf(part) : Optional.<String>empty(), measured(part), owf(part),
                part.asWritten()).flatMap(Optional::stream).findFirst();
    }

    /**
     * The same, and for what follows the bath how much there is of it in a litre.
     *
     * @param part a part of a bath
     * @param liquorMl the bath's liquor, mL
     * @return such as {@code 60 mL (20.4 mL/L)}; nothing where no amount was given
     */
    public Optional<String> inTheBath(PartFigures part, OptionalDouble liquorMl) {
        Optional<String> brief = inBrief(part);
        Optional<String> rate = part.by() == Basis.BATH ? rate(part, liquorMl) : Optional.empty();
        return rate.isEmpty() || brief.isEmpty() ? brief
                : Optional.of(words.say("amount.rate", brief.get(), rate.get()));
    }

    private Optional<String> owf(PartFigures part) {
        return figures.amount(part.owfPercent(), "percent", part.isRough())
                .map(percent -> words.say("amount.owf", percent));
    }

    private Optional<String> measured(PartFigures part) {
        return figures.amount(part.volume(), "ml").or(() -> figures.amount(part.mass(), "g"));
    }

    private Optional<String> rate(PartFigures part, OptionalDouble liquorMl) {
        boolean about = part.isRough();
        if (part.gramsPerLitre().isPresent()) {
            return figures.amount(part.gramsPerLitre(), "g-per-l", about);
        }
        return part.ml().isPresent() && liquorMl.isPresent() && liquorMl.getAsDouble() > 0
                ? Optional.of(figures.amount(part.ml().getAsDouble() / liquorMl.getAsDouble() * 1000, "ml-per-l",
                        about))
                : Optional.empty();
    }
}
