package fascicle.notebook.resolve;

import fascicle.notebook.Origin;
import fascicle.notebook.text.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Fills in what one map leaves out from another: maps merge by key, lists replace whole, and keys that are one choice
 * stand or fall together.
 */
public final class Filling {

    /** Keys never taken from a method: they belong to the pot or to the method itself. */
    private static final Set<String> OF_ITS_OWN = Set.of("title", "tag", "share", "colour", "glass", "outcome",
            "fastness", "window", "kept", "method", "skill");

    /** The weight a method's amounts are for: an entry has its own. */
    private static final String WEIGHT = "for";

    /** Keys of which a map uses one, wherever they stand. */
    private static final List<Set<String>> CHOICES = List.of(Set.of("water", "ratio", "depth"),
            Set.of("weight", "bundles"), Set.of("lot", "from"));

    private Filling() {}

    /**
     * Fills a pot from the keys its file shares.
     *
     * @param pot the pot's own keys
     * @param shared the keys beside {@code pots:}
     * @return both, the pot's own first
     */
    public static Node.Mapping fromShared(Node.Mapping pot, Node.Mapping shared) {
        return fill(pot, without(shared, Set.of("pots")), Origin.SHARED);
    }

    /**
     * Fills an entry from a method it follows.
     *
     * @param entry the keys that are there
     * @param method the method's keys
     * @param id the method's id
     * @return both, the entry's first; nothing of the method's that is its own
     */
    public static Node.Mapping entryFromMethod(Node.Mapping entry, Node.Mapping method, String id) {
        return fill(entry, without(without(method, OF_ITS_OWN), Set.of(WEIGHT)), new Origin.Method(id));
    }

    /**
     * Fills a method from one it follows; the weight its amounts are for, too.
     *
     * @param follower the keys that are there
     * @param method the method's keys
     * @param id the method's id
     * @return both, the follower's first; nothing of the method's that is its own
     */
    public static Node.Mapping methodFromMethod(Node.Mapping follower, Node.Mapping method, String id) {
        return fill(follower, without(method, OF_ITS_OWN), new Origin.Method(id));
    }

    private static Node.Mapping without(Node.Mapping mapping, Set<String> keys) {
        return new Node.Mapping(mapping.pairs().stream().filter(pair -> !keys.contains(pair.key())).toList(),
                mapping.place());
    }

    private static Node.Mapping fill(Node.Mapping upper, Node.Mapping lower, Origin origin) {
        List<Node.Pair> filled = new ArrayList<>();
        for (Node.Pair pair : upper.pairs()) {
            filled.add(lower.find(pair.key()).map(below -> fillPair(pair, below, origin)).orElse(pair));
        }
        for (Node.Pair below : lower.pairs()) {
            if (upper.find(below.key()).isEmpty() && !alreadyChosen(upper, below.key())) {
                filled.add(new Node.Pair(below.key(), below.place(), below.value(), origin));
            }
        }
        return new Node.Mapping(List.copyOf(filled), upper.place());
    }

    private static Node.Pair fillPair(Node.Pair pair, Node.Pair below, Origin origin) {
        if (pair.value() instanceof Node.Nothing) {
            return new Node.Pair(below.key(), below.place(), below.value(), origin);
        }
        if (pair.value() instanceof Node.Mapping upper && below.value() instanceof Node.Mapping lower) {
            return new Node.Pair(pair.key(), pair.place(), fill(upper, lower, origin), pair.origin());
        }
        return pair;
    }

    private static boolean alreadyChosen(Node.Mapping upper, String key) {
        return CHOICES.stream().filter(choice -> choice.contains(key))
                .flatMap(Set::stream).anyMatch(other -> hasValue(upper, other));
    }

    private static boolean hasValue(Node.Mapping mapping, String key) {
        return mapping.find(key).filter(pair -> !(pair.value() instanceof Node.Nothing)).isPresent();
    }
}
