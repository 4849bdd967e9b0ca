package fascicle.notebook.read;

import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds entries that come from one another in a circle: needles dyed over, baths used again. */
final class EntryCircles {

    private EntryCircles() {}

    /** Says so where an entry comes, over others, from itself. */
    static void check(Entry entry, Map<String, Entry> byId, Findings findings) {
        follow(entry, byId, other -> other.needles().from(), "are dyed over one another’s needles", findings);
        follow(entry, byId, other -> other.recipe().bath().reuses(), "reuse one another’s baths", findings);
    }

    private static void follow(Entry entry, Map<String, Entry> byId, Function<Entry, Optional<Noted<String>>> source,
            String what, Findings findings) {
        List<String> chain = new ArrayList<>();
        Optional<Entry> at = Optional.of(entry);
        while (at.isPresent() && !chain.contains(at.get().id())) {
            chain.add(at.get().id());
            at = source.apply(at.get()).flatMap(id -> Optional.ofNullable(byId.get(Ids.key(id.value()))));
        }
        if (at.isPresent() && at.get().id().equals(entry.id())) {
            Noted<String> reference = source.apply(entry).orElseThrow();
            findings.error(reference.place(), "these entries " + what + " in a circle: " + String.join(" → ", chain)
                    + " → " + entry.id() + "; take “" + reference.written() + "” out of one of them");
        }
    }
}
