package fascicle.workings.chain;

import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which entry used whose bath. Circles, which the notebook's reader refuses, are walked once at most. */
public final class Succession {

    private final Map<String, EntryWorking> entries;
    private final Map<String, List<EntryWorking>> after = new HashMap<>();

    private Succession(Workings workings) {
        entries = Notebook.byId(workings.entries(), EntryWorking::id);
        workings.entries().forEach(entry -> reused(entry).ifPresent(id ->
                after.computeIfAbsent(Ids.key(id), unused -> new ArrayList<>()).add(entry)));
    }

    /**
     * Looks through a notebook.
     *
     * @param workings its figures
     * @return who used whose bath
     */
    public static Succession of(Workings workings) {
        return new Succession(workings);
    }

    /**
     * The entry whose bath another used.
     *
     * @param entry any entry
     * @return nothing for a fresh bath, and where the earlier entry is not there
     */
    public Optional<EntryWorking> before(EntryWorking entry) {
        return reused(entry).flatMap(id -> Optional.ofNullable(entries.get(Ids.key(id))));
    }

    /**
     * The entries of one bath up to an entry.
     *
     * @param entry the last of them
     * @return from the first that is there; the entry alone for a fresh bath
     */
    public List<EntryWorking> path(EntryWorking entry) {
        List<EntryWorking> path = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Optional<EntryWorking> at = Optional.of(entry);
        while (at.isPresent() && seen.add(Ids.key(at.get().id()))) {
            path.add(0, at.get());
            at = before(at.get());
        }
        return List.copyOf(path);
    }

    /**
     * All that one bath served.
     *
     * @param first whose bath it was
     * @return the first, then the one that used its bath, and so on; of several, one branch after the other
     */
    public List<EntryWorking> served(EntryWorking first) {
        List<EntryWorking> served = new ArrayList<>();
        collect(first, served, new HashSet<>());
        return List.copyOf(served);
    }

    private void collect(EntryWorking entry, List<EntryWorking> served, Set<String> seen) {
        if (seen.add(Ids.key(entry.id()))) {
            served.add(entry);
            after.getOrDefault(Ids.key(entry.id()), List.of()).forEach(next -> collect(next, served, seen));
        }
    }

    /**
     * Whether an entry used a bath of which nothing is known, since its entry is not there.
     *
     * @param entry any entry
     * @return false for a fresh bath
     */
    public boolean isOfUnknownBath(EntryWorking entry) {
        return reused(entry).isPresent() && before(entry).isEmpty();
    }

    private static Optional<String> reused(EntryWorking entry) {
        return entry.entry().recipe().bath().reuses().map(Noted::value);
    }
}
