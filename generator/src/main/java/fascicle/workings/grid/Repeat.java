package fascicle.workings.grid;

import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.RecipeKey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The same recipe, more than once, on needles of the same condition and species. Lots may differ; where a lot tells no
 * condition or species, only entries of that same lot are its repeats.
 *
 * @param entries two entries or more, oldest first
 * @param spread how far their colours lie from each other
 */
public record Repeat(List<EntryWorking> entries, Optional<Spread> spread) {

    /** What entries share that are repeats of each other. */
    private record Sameness(RecipeKey recipe, String condition, String species) {}

    /**
     * All repeats among entries. An entry on needles dyed before, or in a bath used before, repeats nothing; nor does
     * one of which neither a method nor a dye is told.
     *
     * @param entries any entries, oldest first
     * @return those of most entries first; of equals, the one that was begun first
     */
    public static List<Repeat> among(List<EntryWorking> entries) {
        Map<Sameness, List<EntryWorking>> same = new LinkedHashMap<>();
        for (EntryWorking entry : entries) {
            sameness(entry).ifPresent(key -> same.computeIfAbsent(key, unused -> new ArrayList<>()).add(entry));
        }
        return same.values().stream().filter(repeated -> repeated.size() > 1).map(Repeat::of)
                .sorted(Comparator.comparingInt((Repeat repeat) -> -repeat.entries().size())).toList();
    }

    /**
     * The lots that the needles were of.
     *
     * @return each once, in the order of the entries
     */
    public List<NeedleLot> lots() {
        return entries.stream().flatMap(entry -> entry.needles().lot().stream()).distinct().toList();
    }

    private static Repeat of(List<EntryWorking> entries) {
        List<ColourFigures> colours = entries.stream().flatMap(entry -> entry.colour().stream()).toList();
        return new Repeat(List.copyOf(entries), Spread.of(colours));
    }

    private static Optional<Sameness> sameness(EntryWorking entry) {
        boolean told = entry.entry().method().isPresent() || !entry.bath().dye().isEmpty();
        Optional<NeedleLot> lot = entry.needles().lot();
        if (!told || lot.isEmpty() || !Colourants.inOneBath(entry)) {
            return Optional.empty();
        }
        String same = "of lot " + Ids.key(lot.get().id());
        return Optional.of(new Sameness(RecipeKey.of(entry), entry.needles().condition().map(Ids::key).orElse(same),
                entry.needles().species().map(species -> Ids.key(species.strip())).orElse(same)));
    }
}
