package fascicle.book.caution;

import fascicle.book.words.Words;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Duty;
import java.util.stream.Collectors;

/** What a class may not have, and what its teacher does, in plain sentences. */
public final class ClassWords {

    private ClassWords() {}

    /**
     * Why something may not be planned for a class.
     *
     * @param refusal the refusal
     * @param words the book's words
     * @return a sentence that names it
     */
    public static String refusal(ClassRules.Refusal refusal, Words words) {
        String thing = refusal.thing().orElseGet(() -> words.say("class.unnamed"));
        String says = refusal.says().stream().map(statement -> CautionWords.statement(statement, words))
                .collect(Collectors.joining(words.say("pieces")));
        return words.say("class.refused-" + CautionWords.key(refusal.reason()), thing, says);
    }

    /**
     * What the teacher does.
     *
     * @param duty the duty
     * @param words the book's words
     * @return a sentence
     */
    public static String duty(Duty duty, Words words) {
        return words.say("class.duty-" + CautionWords.key(duty.task()),
                CautionWords.list(duty.things(), words));
    }
}
