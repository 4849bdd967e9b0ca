package fascicle.book.batch;

import fascicle.book.words.Words;
import java.util.Optional;

/** What the baths beside the dyebath are called. */
public final class StepNames {

    private StepNames() {}

    /**
     * The name of a treatment.
     *
     * @param as what it is for, as the notebook spells it
     * @param words the book's words
     * @return such as {@code Mordant}; a plain word where it is not said what it is for
     */
    public static String treatment(Optional<String> as, Words words) {
        return as.filter(purpose -> words.keys().contains("purpose." + purpose))
                .map(purpose -> words.say("purpose." + purpose)).orElseGet(() -> words.say("step.treatment"));
    }
}
