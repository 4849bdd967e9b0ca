package fascicle.notebook.edition;

import fascicle.notebook.Bath;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Missing;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Drops what entries say of entries that are not there. An entry that is missing because of errors is one that the
 * reader is told of: a bath or needles that came from it are of unknown history, and not fresh or bare.
 */
final class PresentReferences {

    private final Set<String> ids = new HashSet<>();
    private final Set<String> tags = new HashSet<>();

    private PresentReferences(List<Entry> entries, List<Missing> missing) {
        missing.stream().filter(Missing::entry).forEach(entry -> ids.add(Ids.key(entry.what())));
        for (Entry entry : entries) {
            ids.add(Ids.key(entry.id()));
            entry.tag().ifPresent(tag -> tags.add(tag.value()));
        }
    }

    /** The entries with no reference but to one another and to those that are told to be missing. */
    static List<Entry> only(List<Entry> entries, List<Missing> missing) {
        PresentReferences present = new PresentReferences(entries, missing);
        return entries.stream().map(present::keep).toList();
    }

    private Entry keep(Entry entry) {
        Needles needles = isGone(entry.needles().from()) ? entry.needles().withoutSource() : entry.needles();
        Bath bath = entry.recipe().bath();
        Bath kept = isGone(bath.reuses()) ? bath.withoutSource() : bath;
        List<Reading> colour = entry.colour().stream().filter(this::isPresent).toList();
        return needles == entry.needles() && kept == bath && colour.size() == entry.colour().size() ? entry
                : entry.withReferences(needles, entry.recipe().withBath(kept), colour);
    }

    private boolean isGone(Optional<Noted<String>> reference) {
        return reference.filter(id -> !ids.contains(Ids.key(id.value()))).isPresent();
    }

    private boolean isPresent(Reading reading) {
        return !(reading.colour() instanceof Reading.ByEye byEye) || tags.contains(byEye.tag().value());
    }
}
