package fascicle.notebook.read;

import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Finds entries that come from one another in a circle: needles dyed over, baths used again. */
final class EntryCircles {

    private EntryCircles() {}

    /** Says so where an entry comes, over others, from itself. */
    static void check(Entry entry, Map<String, Entry> byId, Findings findings) {
        boolean needles = follow(entry, byId, other -> other.needles().from(), "are dyed over one another’s needles",
                findings);
        boolean baths = follow(entry, byId, other -> other.recipe().bath().reuses(), "reuse one another’s baths",
                findings);
        if (!needles && !baths) {
            both(entry, byId, findings);
        }
    }

    /**
     * Says so where only needles and baths together lead back: each of the entries would have to come before the other.
     */
    private static void both(Entry entry, Map<String, Entry> byId, Findings findings) {
        Map<String, String> before = new HashMap<>();
        Deque<Entry> reached = new ArrayDeque<>(List.of(entry));
        while (!reached.isEmpty() && !before.containsKey(entry.id())) {
            Entry at = reached.remove();
            sources(at).map(source -> byId.get(Ids.key(source.value()))).filter(Objects::nonNull)
                    .filter(source -> before.putIfAbsent(source.id(), at.id()) == null).forEach(reached::add);
        }
        if (before.containsKey(entry.id())) {
            List<String> chain = new ArrayList<>(List.of(entry.id()));
            do {
                chain.add(0, before.get(chain.get(0)));
            } while (!chain.get(0).equals(entry.id()));
            Noted<String> reference = sources(entry).filter(source -> Ids.same(source.value(), chain.get(1)))
                    .findFirst().orElseThrow();
            findings.error(reference.place(), "these entries need one another’s needles and baths in a circle: "
                    + String.join(" → ", chain) + "; take “" + reference.written() + "” out of one of them");
        }
    }

    private static Stream<Noted<String>> sources(Entry entry) {
        return Stream.of(entry.needles().from(), entry.recipe().bath().reuses()).flatMap(Optional::stream);
    }

    /** Whether links of one kind lead back; says so if they do. */
    private static boolean follow(Entry entry, Map<String, Entry> byId, Function<Entry, Optional<Noted<String>>> source,
            String what, Findings findings) {
        List<String> chain = new ArrayList<>();
        Optional<Entry> at = Optional.of(entry);
        while (at.isPresent() && !chain.contains(at.get().id())) {
            chain.add(at.get().id());
            at = source.apply(at.get()).flatMap(id -> Optional.ofNullable(byId.get(Ids.key(id.value()))));
        }
        boolean round = at.isPresent() && at.get().id().equals(entry.id());
        if (round) {
            Noted<String> reference = source.apply(entry).orElseThrow();
            findings.error(reference.place(), "these entries " + what + " in a circle: " + String.join(" → ", chain)
                    + " → " + entry.id() + "; take “" + reference.written() + "” out of one of them");
        }
        return round;
    }
}
