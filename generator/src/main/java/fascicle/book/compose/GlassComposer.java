package fascicle.book.compose;

import fascicle.bath.Uptake;
import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.notebook.Glass;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The bath in a glass, and what it tells of the dye. */
final class GlassComposer {

    private final Words words;
    private final Figures figures;

    GlassComposer(Materials materials) {
        words = materials.words();
        figures = materials.figures();
    }

    /** Adds how many times the glasses were diluted. */
    void diluted(Facts facts, Glass.Diluted diluted) {
        if (diluted.before().equals(diluted.after())) {
            facts.written("fact.glass-diluted", diluted.before());
        } else {
            facts.written("fact.glass-diluted-before", diluted.before())
                    .written("fact.glass-diluted-after", diluted.after());
        }
    }

    /** Adds how much dye the bath gave up, and what that does not say. */
    void uptake(Facts facts, Uptake uptake) {
        facts.known("fact.taken-up", Optional.of(uptake.low().isPresent()
                ? words.say("uptake.heed", say(uptake)) : say(uptake)));
    }

    /** How much dye the bath gave up, in words. */
    String say(Uptake uptake) {
        if (uptake.percent().isPresent()) {
            return amount(uptake);
        }
        String why = why(uptake).orElse("");
        return uptake.low().isPresent() ? words.say("uptake.limited", amount(uptake), why)
                : words.say("unknown.why", why);
    }

    /** What keeps an uptake from being known, and what would mend it. */
    Optional<String> why(Uptake uptake) {
        return uptake.why().map(reason -> words.say("uptake-why." + reason.name().toLowerCase(Locale.ROOT)
                .replace('_', '-')));
    }

    /** The share or the range of an uptake of which something is known. */
    String amount(Uptake uptake) {
        return uptake.percent().isPresent()
                ? words.say("uptake.share", percent(uptake.percent()), percent(uptake.low()), percent(uptake.high()))
                : words.say("uptake.range", percent(uptake.low()), percent(uptake.high()));
    }

    /** Whole per cents: an estimate shows no more. */
    private String percent(OptionalDouble percent) {
        return Figures.fixed(percent.orElseThrow(), 0);
    }
}
