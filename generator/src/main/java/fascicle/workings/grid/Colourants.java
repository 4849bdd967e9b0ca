package fascicle.workings.grid;

import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What colours an entry: the things of the kind {@code dye} that its recipe names, and those listed as dye whose file
 * does not say of what kind they are. What helps a dye does not colour, even where it shifts the shade.
 */
final class Colourants {

    private final Map<String, Dye> dyes;
    private final Map<String, Integer> ranks = new HashMap<>();

    Colourants(Notebook notebook) {
        dyes = Notebook.byId(notebook.dyes(), Dye::id);
        dyes.keySet().forEach(key -> ranks.put(key, ranks.size()));
    }

    /**
     * Whether an entry's colour comes from its own bath alone: the needles were not dyed before, and the bath is not
     * what an earlier entry left over.
     */
    static boolean inOneBath(EntryWorking entry) {
        return entry.entry().needles().from().isEmpty() && entry.entry().recipe().bath().reuses().isEmpty();
    }

    /** The ids of an entry's dyes, each once, in the notebook's order. */
    List<String> of(EntryWorking entry) {
        Stream<String> named = entry.parts().map(PartFigures::is).filter(this::isDye);
        Stream<String> listed = entry.bath().dye().stream().map(PartFigures::is).filter(this::isOfNoKind);
        return Stream.concat(named, listed).map(Ids::key).distinct().sorted(inOrder()).map(this::spelt).toList();
    }

    /** The notebook's order; what has no file comes last, by id. */
    Comparator<String> inOrder() {
        return Comparator.<String>comparingInt(id -> ranks.getOrDefault(Ids.key(id), Integer.MAX_VALUE))
                .thenComparing(Ids::key);
    }

    private boolean isDye(String id) {
        Dye dye = dyes.get(Ids.key(id));
        return dye != null && dye.kind().map(Noted::value).filter(Dye.Kind.DYE::equals).isPresent();
    }

    private boolean isOfNoKind(String id) {
        Dye dye = dyes.get(Ids.key(id));
        return dye == null || dye.kind().isEmpty();
    }

    private String spelt(String key) {
        Dye dye = dyes.get(key);
        return dye == null ? key : dye.id();
    }
}
