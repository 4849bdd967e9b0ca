package fascicle.book.compose;

import fascicle.book.gist.Heating;
import fascicle.book.page.Fact;
import fascicle.book.page.Link;
import fascicle.notebook.Noted;
import fascicle.notebook.Span;
import fascicle.notebook.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A list of facts in the making: what is not known is left out, what was taken from elsewhere says so. */
final class Facts {

    private final Materials materials;
    private final Ways ways;
    private final List<Fact> facts = new ArrayList<>();

    Facts(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
    }

    /** Adds what is noted, as written. */
    Facts written(String key, Optional<? extends Noted<?>> noted) {
        return noted(key, noted, Noted::written);
    }

    /** Adds what is noted, in words. */
    <N extends Noted<?>> Facts noted(String key, Optional<N> noted, Function<N, String> words) {
        noted.ifPresent(value -> facts.add(new Fact(materials.words().say(key),
                List.of(Link.plain(words.apply(value))), ways.whence(value.origin()))));
        return this;
    }

    /** Adds one of the few words of the notebook's form. */
    <W extends Word> Facts word(String key, String kind, Optional<Noted<W>> noted) {
        return noted(key, noted, value -> materials.words().name(kind, value.value()));
    }

    /** Adds a time. */
    Facts span(String key, Optional<Noted<Span>> noted) {
        return noted(key, noted, new Heating(materials.words())::span);
    }

    /** Adds words that were worked out. */
    Facts known(String key, Optional<String> text) {
        text.ifPresent(known -> facts.add(Fact.of(materials.words().say(key), known)));
        return this;
    }

    /** Adds words that lead somewhere. */
    Facts link(String key, Optional<Link> link) {
        link.ifPresent(known -> facts.add(Fact.of(materials.words().say(key), known)));
        return this;
    }

    /** Adds several words that lead somewhere, if there are any. */
    Facts links(String key, List<Link> links) {
        if (!links.isEmpty()) {
            facts.add(new Fact(materials.words().say(key), List.copyOf(links), Optional.empty()));
        }
        return this;
    }

    /** Adds a fact. */
    Facts fact(Fact fact) {
        facts.add(fact);
        return this;
    }

    List<Fact> facts() {
        return List.copyOf(facts);
    }
}
