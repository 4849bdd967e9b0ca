package fascicle.workings;

import fascicle.notebook.Bath;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Part;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether what is said of reused baths can be. */
final class ReuseChecks {

    private final Workings workings;
    private final Findings findings;

    ReuseChecks(Workings workings, Findings findings) {
        this.workings = workings;
        this.findings = findings;
    }

    /** Checks every entry. */
    void check() {
        Map<String, Entry> taken = new HashMap<>();
        for (EntryWorking working : workings.entries()) {
            Entry entry = working.entry();
            Bath bath = entry.recipe().bath();
            if (bath.reuses().isEmpty()) {
                bath.left().ifPresent(left -> findings.warning(left.place(), "“left: " + left.written() + "” is a "
                        + "share of an earlier bath’s dye, and this bath names none; add “reuses:” with the entry "
                        + "whose bath it is, or take “left:” out"));
            }
            bath.reuses().ifPresent(reuses -> {
                takenOver("dye", bath.dye(), reuses);
                takenOver("assistants", bath.assistants(), reuses);
                Entry first = taken.putIfAbsent(Ids.key(reuses.value()), entry);
                if (first != null) {
                    findings.warning(reuses.place(), "the bath of “" + reuses.written() + "” went to “" + first.id()
                            + "” already; a bath stands in one pot, so name the entry that used it last, or check "
                            + "both");
                }
                morePrivate(entry).ifPresent(earlier -> findings.warning(reuses.place(), "in the "
                        + lacking(entry, earlier) + " book this bath will read as fresh, without the dye, the acid and "
                        + "the cautions of “" + earlier.id() + "”; share that entry too, or keep this one"));
            });
        }
    }

    /** A method gives what a fresh bath needs; a bath that stands holds most of it already. */
    private void takenOver(String key, List<Part> parts, Noted<String> reuses) {
        parts.stream().findFirst().map(Part::is).filter(is -> is.origin() instanceof Origin.Method).ifPresent(is ->
                findings.warning(reuses.place(), "this bath stood already, and takes all of “" + key + "” over from "
                        + "the method, as a fresh one would; write what was added now, or “" + key + ": []” where "
                        + "nothing was"));
    }

    /** The nearest earlier entry of an entry's bath that fewer people may see. */
    private Optional<Entry> morePrivate(Entry entry) {
        Set<String> seen = new HashSet<>();
        Optional<Entry> earlier = before(entry);
        while (earlier.isPresent() && seen.add(Ids.key(earlier.get().id()))) {
            if (!entry.share().shows(earlier.get().share())) {
                return earlier;
            }
            earlier = before(earlier.get());
        }
        return Optional.empty();
    }

    private Optional<Entry> before(Entry entry) {
        return entry.recipe().bath().reuses().map(Noted::value).flatMap(workings::entry).map(EntryWorking::entry);
    }

    /** Whose books show an entry and not an earlier one. */
    private static String lacking(Entry entry, Entry earlier) {
        if (entry.share() == Edition.STUDENTS) {
            return "students’";
        }
        return earlier.share() == Edition.STUDENTS ? "open" : "students’ and the open";
    }
}
