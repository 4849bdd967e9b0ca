package fascicle.book.batch;

import fascicle.book.words.Words;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Span;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is added later than the start, in one wording wherever it is weighed, poured or read of: whoever makes up a pot
 * must not pour it in with the rest.
 */
public final class Additions {

    private Additions() {}

    /**
     * When a part is added.
     *
     * @param part a line of a recipe
     * @param words the book's words
     * @return such as {@code added at 30 min}; nothing where it is in from the start
     */
    public static Optional<String> when(Part part, Words words) {
        return part.at().map(at -> at.value() instanceof Span.Overnight
                ? words.say("part.after-a-night") : words.say("part.at", at.written()));
    }

    /**
     * A part by its title, and when it is added.
     *
     * @param called the thing's title
     * @param part the line of the recipe
     * @param words the book's words
     * @return such as {@code White vinegar, added at 30 min}; the title alone where it is in from the start
     */
    public static String named(String called, Part part, Words words) {
        return when(part, words).map(when -> words.say("part.named", called, when)).orElse(called);
    }

    /**
     * How long after the start a part is added.
     *
     * @param part a line of a recipe
     * @return in minutes; nothing where it is in from the start, or comes after a night, which has no length of its own
     */
    public static OptionalDouble minutes(Part part) {
        return part.at().map(Noted::value).filter(Span.Timed.class::isInstance).map(Span.Timed.class::cast)
                .map(at -> OptionalDouble.of(at.time().value())).orElse(OptionalDouble.empty());
    }
}
