package fascicle.book.compose;

import fascicle.book.page.Verdict;
import fascicle.book.words.Words;
import fascicle.notebook.Entry;
import fascicle.notebook.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How entries came out, in words. */
final class Outcomes {

    private final Words words;

    Outcomes(Words words) {
        this.words = words;
    }

    /** The verdict in a word. */
    Optional<Verdict> verdict(Entry entry) {
        return entry.verdict().map(verdict -> new Verdict(verdict.word(), words.name("verdict", verdict)));
    }

    /** The verdict as a sentence of its own. */
    Optional<Verdict> sentence(Entry entry) {
        return verdict(entry).map(verdict -> new Verdict(verdict.word(), sentence(verdict.text())));
    }

    /** What follows it: {@code Evenness 4 of 5. Supple. Fault: pale.} */
    String rest(Entry entry) {
        if (entry.outcome().isEmpty()) {
            return "";
        }
        Outcome outcome = entry.outcome().get();
        List<String> said = new ArrayList<>();
        outcome.evenness().ifPresent(evenness ->
                said.add(words.say("outcome.evenness", words.say("evenness", evenness.value()))));
        outcome.feel().ifPresent(feel -> said.add(words.name("feel", feel.value())));
        if (!outcome.faults().isEmpty()) {
            said.add(words.say("outcome.faults", outcome.faults().size(), outcome.faults().stream()
                    .map(fault -> words.name("fault", fault.value()))
                    .collect(Collectors.joining(words.say("pieces")))));
        }
        return said.stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    private String sentence(String text) {
        int first = text.offsetByCodePoints(0, 1);
        return words.say("sentence", text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first));
    }
}
