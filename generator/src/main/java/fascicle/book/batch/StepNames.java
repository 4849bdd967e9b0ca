package fascicle.book.batch;

import fascicle.book.words.Words;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the baths beside the dyebath of one recipe are called: each by what it is for, and where several are for the
 * same, by its place in the work, so that no two have one name and nobody pours one into the other.
 *
 * @param before the names of the treatments before the dyebath, in their order
 * @param after the names of those after it
 */
public record StepNames(List<String> before, List<String> after) {

    /**
     * The name of a treatment that stands alone.
     *
     * @param as what it is for, as the notebook spells it
     * @param words the book's words
     * @return such as {@code Mordant}; a plain word where it is not said what it is for
     */
    public static String treatment(Optional<String> as, Words words) {
        return as.filter(purpose -> words.keys().contains("purpose." + purpose))
                .map(purpose -> words.say("purpose." + purpose)).orElseGet(() -> words.say("step.treatment"));
    }

    /**
     * The names of a batch's treatments.
     *
     * @param scaled the batch
     * @param words the book's words
     * @return names that differ
     */
    public static StepNames of(Scaled scaled, Words words) {
        return of(scaled.before().stream().map(SoakFigures::as).toList(),
                scaled.after().stream().map(SoakFigures::as).toList(), words);
    }

    /**
     * The names of a recipe's treatments.
     *
     * @param before what those before the dyebath are for, as the notebook spells it
     * @param after what those after it are for
     * @param words the book's words
     * @return names that differ, such as {@code Iron, before the dyebath} and {@code Iron, after the dyebath}
     */
    public static StepNames of(List<Optional<String>> before, List<Optional<String>> after, Words words) {
        List<String> early = before.stream().map(as -> treatment(as, words)).toList();
        List<String> late = after.stream().map(as -> treatment(as, words)).toList();
        return new StepNames(apart(early, late, "step.named-before", words),
                apart(late, early, "step.named-after", words));
    }

    private static List<String> apart(List<String> names, List<String> others, String key, Words words) {
        List<String> apart = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            long alike = names.stream().filter(name::equals).count();
            String counted = alike == 1 ? name : words.say("step.counted", name,
                    names.subList(0, i + 1).stream().filter(name::equals).count());
            boolean alone = Stream.concat(names.stream(), others.stream()).filter(name::equals).count() == 1;
            apart.add(alone ? name : words.say(key, counted));
        }
        return List.copyOf(apart);
    }
}
