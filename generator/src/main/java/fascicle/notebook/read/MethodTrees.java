package fascicle.notebook.read;

import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import fascicle.notebook.resolve.Filling;
import fascicle.notebook.text.Node;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The methods' trees, and entries and methods filled in from them. */
final class MethodTrees {

    private final Map<String, Tree> trees = new LinkedHashMap<>();
    private final Set<String> faulty = new HashSet<>();

    /**
     * A method's keys.
     *
     * @param id the method's id
     * @param keys its keys; nothing where the file could not be read
     */
    record Tree(String id, Optional<Node.Mapping> keys) {}

    /**
     * A tree that has been filled in.
     *
     * @param keys all keys
     * @param brokenBy the method that could not be followed, if there is one
     */
    record Filled(Node.Mapping keys, Optional<String> brokenBy) {}

    /** Adds a method. */
    void add(String id, Optional<Node.Mapping> keys) {
        trees.putIfAbsent(Ids.key(id), new Tree(id, keys));
    }

    /** Notes that a method has errors, so that nothing can follow it. */
    void markFaulty(String id) {
        faulty.add(Ids.key(id));
    }

    /**
     * Fills in what a tree leaves out, from the method it follows, the one that follows, and so on.
     *
     * @param keys an entry's or a method's own keys
     * @param itself the method's id, where it is a method
     * @param findings where to name what is not there, or goes round in a circle
     * @return the keys, and what could not be followed
     */
    Filled fill(Node.Mapping keys, Optional<String> itself, Findings findings) {
        Node.Mapping filled = keys;
        Optional<String> broken = Optional.empty();
        List<String> chain = new ArrayList<>();
        itself.ifPresent(chain::add);
        Optional<Noted<String>> next = followed(keys);
        while (next.isPresent()) {
            Noted<String> step = next.get();
            Tree tree = trees.get(Ids.key(step.value()));
            if (tree == null) {
                return new Filled(filled, Optional.of(step.value()));
            }
            if (chain.stream().anyMatch(seen -> Ids.same(seen, tree.id()))) {
                sayCircle(chain, tree.id(), itself, step.place(), findings);
                return new Filled(filled, Optional.of(tree.id()));
            }
            chain.add(tree.id());
            if (broken.isEmpty() && faulty.contains(Ids.key(tree.id()))) {
                broken = Optional.of(tree.id());
            }
            if (tree.keys().isEmpty()) {
                return new Filled(filled, Optional.of(tree.id()));
            }
            filled = itself.isPresent() ? Filling.methodFromMethod(filled, tree.keys().get(), tree.id())
                    : Filling.entryFromMethod(filled, tree.keys().get(), tree.id());
            next = followed(tree.keys().get());
        }
        return new Filled(filled, broken);
    }

    /** Says why something is left out that has no error of its own. */
    static String follows(String broken) {
        return "it follows the method " + broken + ", which has errors";
    }

    private static void sayCircle(List<String> chain, String closing, Optional<String> itself, Place place,
            Findings findings) {
        // Only the methods of the circle say so; those that merely lead into it would repeat it.
        if (itself.isPresent() && Ids.same(itself.get(), closing)) {
            findings.error(place, "these methods follow one another in a circle: " + String.join(" → ", chain) + " → "
                    + closing + "; take “method:” out of one of them");
        }
    }

    private static Optional<Noted<String>> followed(Node.Mapping keys) {
        return keys.find("method").flatMap(pair -> pair.value() instanceof Node.Text text
                ? Optional.of(new Noted<>(text.value().strip(), text.value(), text.place(), Origin.OWN))
                : Optional.empty());
    }
}
