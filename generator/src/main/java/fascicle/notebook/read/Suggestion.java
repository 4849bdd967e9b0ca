package fascicle.notebook.read;

import fascicle.notebook.text.EditDistance;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one was meant to be. */
public final class Suggestion {

    private static final int LONGEST = 60;

    private Suggestion() {}

    /**
     * The nearest word, if one is near enough: a third of its letters may be wrong, or the rest may be too much.
     *
     * @param word the word as written
     * @param known the words that are known
     * @return the word that was probably meant
     */
    public static Optional<String> of(String word, Collection<String> known) {
        String lower = word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        if (lower.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream().filter(candidate -> isNear(lower, candidate.toLowerCase(Locale.ROOT)))
                .min(Comparator.comparingInt((String candidate) ->
                        EditDistance.between(lower, candidate.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static boolean isNear(String word, String candidate) {
        return candidate.length() <= LONGEST
                && (EditDistance.between(word, candidate) <= Math.max(1, candidate.length() / 3)
                        || candidate.length() > 3 && word.startsWith(candidate));
    }
}
