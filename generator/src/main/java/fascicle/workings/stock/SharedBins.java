package fascicle.workings.stock;

import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.SoakFigures;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Bins that several pots of a file share: each is filled once, and paid for by all of them alike. */
final class SharedBins {

    private final Map<String, Integer> pots = new HashMap<>();
    private final Set<String> firsts = new HashSet<>();

    SharedBins(Collection<EntryWorking> entries) {
        for (EntryWorking entry : entries) {
            if (isShared(entry) && pots.merge(file(entry), 1, Integer::sum) == 1) {
                firsts.add(entry.id());
            }
        }
    }

    /** What was taken off the shelf for an entry; a shared bin was filled for the first of its pots. */
    Stream<PartFigures> filledFor(EntryWorking entry) {
        return isShared(entry) && !firsts.contains(entry.id()) ? entry.partsBesidePresoak() : entry.parts();
    }

    /** An entry's share of its presoak, from 0 to 1. */
    double shareOf(EntryWorking entry) {
        return isShared(entry) ? 1.0 / pots.getOrDefault(file(entry), 1) : 1;
    }

    private static boolean isShared(EntryWorking entry) {
        return entry.presoak().filter(SoakFigures::shared).isPresent();
    }

    private static String file(EntryWorking entry) {
        return entry.entry().place().file();
    }
}
