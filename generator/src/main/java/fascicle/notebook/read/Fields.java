package fascicle.notebook.read;

import fascicle.measure.Kitchen;
import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import fascicle.notebook.text.Node;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The keys of one map, taken one after the other. What was never asked for is unknown, and {@link #done} says so.
 *
 * <p>Every method answers with nothing where the key is left out or its value cannot be read; the latter is a finding.
 */
final class Fields {

    private final Node.Mapping mapping;
    private final Origin inherited;
    private final Kitchen kitchen;
    private final Findings findings;
    private final Set<String> known = new LinkedHashSet<>();

    Fields(Node.Mapping mapping, Origin inherited, Kitchen kitchen, Findings findings) {
        this.mapping = mapping;
        this.inherited = inherited;
        this.kitchen = kitchen;
        this.findings = findings;
    }

    /** Where the map begins. */
    Place place() {
        return mapping.place();
    }

    /** What cups and spoons hold. */
    Kitchen kitchen() {
        return kitchen;
    }

    /** Where findings go. */
    Findings findings() {
        return findings;
    }

    /** Whether a key has a value, without taking it. */
    boolean has(String key) {
        return mapping.find(key).filter(pair -> !(pair.value() instanceof Node.Nothing)).isPresent();
    }

    /** Whether a key has a map of keys, without taking it. */
    boolean isMap(String key) {
        return mapping.find(key).filter(pair -> pair.value() instanceof Node.Mapping).isPresent();
    }

    /** Whether a key has a list of plain values, without taking it. */
    boolean isListOfTexts(String key) {
        return mapping.find(key).filter(pair -> pair.value() instanceof Node.Sequence list && !list.items().isEmpty()
                && list.items().stream().allMatch(Node.Text.class::isInstance)).isPresent();
    }

    /** Where a key stands, or where the map begins if it is left out. */
    Place placeOf(String key) {
        return mapping.find(key).map(Node.Pair::place).orElse(mapping.place());
    }

    /** Takes a key, whatever its value is. A key without a value counts as left out, with a warning. */
    Optional<Node> node(String key) {
        known.add(key);
        Optional<Node.Pair> pair = mapping.find(key);
        if (pair.isPresent() && pair.get().value() instanceof Node.Nothing) {
            findings.warning(pair.get().place(), "“" + key + ":” has no value and counts as left out; fill it in or "
                    + "take the line out");
            return Optional.empty();
        }
        return pair.map(Node.Pair::value);
    }

    /** Whose a key's value is. */
    Origin originOf(String key) {
        return mapping.find(key).map(Node.Pair::origin).filter(origin -> origin != Origin.OWN).orElse(inherited);
    }

    /** Takes a text as it is. */
    Optional<Noted<String>> text(String key) {
        return node(key).flatMap(node -> textOf(key, node));
    }

    /** Takes a text and makes something of it. */
    <T> Optional<Noted<T>> read(String key, Scalar<T> scalar) {
        return node(key).flatMap(node -> textOf(key, node)).flatMap(text -> convert(key, text, scalar));
    }

    /** Takes one of a few words. */
    <E extends Enum<E>> Optional<Noted<E>> word(String key, Class<E> words) {
        return read(key, Scalar.word(words));
    }

    /** Takes a map of keys. */
    Optional<Fields> map(String key) {
        return node(key).flatMap(node -> mapOf(key, node, originOf(key)));
    }

    /** Takes a list of maps; a single map counts as a list of one. */
    List<Fields> maps(String key) {
        List<Fields> maps = new ArrayList<>();
        for (Node item : items(key)) {
            mapOf(key, item, originOf(key)).ifPresent(maps::add);
        }
        return maps;
    }

    /** Takes a list of texts and makes something of each; a single text counts as a list of one. */
    <T> List<Noted<T>> list(String key, Scalar<T> scalar) {
        List<Noted<T>> values = new ArrayList<>();
        for (Node item : items(key)) {
            textOf(key, item).flatMap(text -> convert(key, text, scalar)).ifPresent(values::add);
        }
        return values;
    }

    /** Takes the items of a list; a single value counts as a list of one. */
    List<Node> items(String key) {
        List<Node> items = new ArrayList<>();
        for (Node item : node(key).map(node -> node instanceof Node.Sequence list ? list.items() : List.of(node))
                .orElse(List.of())) {
            if (item instanceof Node.Nothing) {
                findings.warning(item.place(), "an item of “" + key + "” has no value and counts as left out; fill it "
                        + "in or take it out");
            } else {
                items.add(item);
            }
        }
        return items;
    }

    /** The names of the map's keys, for maps whose keys the maker chooses. */
    List<Node.Pair> pairs() {
        mapping.pairs().forEach(pair -> known.add(pair.key()));
        return mapping.pairs();
    }

    /** Says that a key's value is not what was expected. */
    void wrong(String key, Node found, String expected) {
        findings.error(found.place(), "“" + key + "” has " + found.described() + "; expected is " + expected);
    }

    /** Reports every key that was never asked for. */
    void done() {
        for (Node.Pair pair : mapping.pairs()) {
            if (!known.contains(pair.key())) {
                String meant = Belonging.of(pair.key(), known).map(maps -> "it belongs under " + maps)
                        .or(() -> Suggestion.of(pair.key(), known).map(near -> "did you mean “" + near + "”?"))
                        .orElse("the keys known here are " + String.join(", ", known));
                findings.error(pair.place(), "the key “" + shortened(pair.key()) + "” is not known here; " + meant
                        + hint(pair));
            }
        }
    }

    /** An amount with a decimal comma between braces is cut in two by YAML, and its second half looks like a key. */
    private static String hint(Node.Pair pair) {
        return pair.value() instanceof Node.Nothing && !pair.key().isEmpty() && Character.isDigit(pair.key().charAt(0))
                ? " (between “{” and “}” a comma parts keys: write 1.5 or \"1,5\")" : "";
    }

    private Optional<Noted<String>> textOf(String key, Node node) {
        if (node instanceof Node.Text text) {
            String value = text.value().strip();
            return Optional.of(new Noted<>(value, value, text.place(), originOf(key)));
        }
        wrong(key, node, "a plain value, such as “" + key + ": …”");
        return Optional.empty();
    }

    private <T> Optional<Noted<T>> convert(String key, Noted<String> text, Scalar<T> scalar) {
        try {
            return Optional.of(new Noted<>(scalar.read(text.value(), kitchen), text.written(), text.place(),
                    text.origin()));
        } catch (Unreadable unreadable) {
            findings.error(text.place(), "“" + key + "”: " + unreadable.inWords());
            return Optional.empty();
        }
    }

    private Optional<Fields> mapOf(String key, Node node, Origin origin) {
        if (node instanceof Node.Mapping map) {
            return Optional.of(new Fields(map, origin, kitchen, findings));
        }
        wrong(key, node, "keys in braces, such as “" + Shapes.of(key) + "”");
        return Optional.empty();
    }

    private static String shortened(String key) {
        String line = key.strip().replaceAll("\\s+", " ");
        return line.length() <= 60 ? line : line.substring(0, 57) + "…";
    }

    /** A word as an id or an enum spells it. */
    static String spelled(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
