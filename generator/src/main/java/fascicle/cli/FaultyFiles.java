package fascicle.cli;

import fascicle.notebook.Bath;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Needles;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.read.NotebookReader;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The files with errors that recipes rest on, so that nobody takes what is unknown of a thing for harmless. */
final class FaultyFiles {

    private static final String VESSELS = "vessels.yaml";

    private final Notebook sound;
    private final Map<String, String> errors;
    private final Map<String, Dye> dyes;
    private final Map<String, NeedleLot> lots;
    private final Set<String> files = new LinkedHashSet<>();
    private final Set<String> reused = new HashSet<>();

    /**
     * A notebook's faulty files.
     *
     * @param sound what of it is sound
     * @param findings what was found in it
     */
    FaultyFiles(Notebook sound, List<Finding> findings) {
        this.sound = sound;
        errors = findings.stream().filter(finding -> finding.level() == Finding.Level.ERROR)
                .collect(Collectors.groupingBy(finding -> finding.place().file(),
                        Collectors.mapping(Finding::message, Collectors.joining("; "))));
        dyes = Notebook.byId(sound.dyes(), Dye::id);
        lots = Notebook.byId(sound.lots(), NeedleLot::id);
    }

    /** A line for each faulty file under some recipes; what the notebook does not have is left out. */
    List<String> under(List<String> recipes, List<String> vessels) {
        files.add(NotebookReader.COVER);
        recipes.stream().flatMap(named -> NamedRecipe.find(sound, named).stream()).forEach(id -> {
            sound.entry(id).ifPresent(this::add);
            sound.method(id).ifPresent(this::add);
        });
        if (!vessels.isEmpty()) {
            files.add(VESSELS);
        }
        return files.stream().filter(errors::containsKey).map(this::line).toList();
    }

    /** In one line, whatever names and values hold. */
    private String line(String file) {
        return (file + " has errors: " + errors.get(file) + "; what rests on it is not known here.")
                .replaceAll("\\p{Cc}", "\uFFFD");
    }

    private void add(Entry entry) {
        add(entry.needles());
        add(entry.recipe());
    }

    private void add(Method method) {
        files.add(method.place().file());
        add(method.needles());
        add(method.recipe());
    }

    private void add(Needles needles) {
        needles.from().ifPresent(this::addMissing);
        needles.lot().map(Noted::value).map(Ids::key).flatMap(id -> Optional.ofNullable(lots.get(id)))
                .map(NeedleLot::place).map(Place::file).ifPresent(files::add);
    }

    private void add(Recipe recipe) {
        recipe.parts().stream().map(Part::is).map(Noted::value).map(Ids::key)
                .flatMap(id -> Optional.ofNullable(dyes.get(id)).stream())
                .map(Dye::place).map(Place::file).forEach(files::add);
        if (recipe.bath().vessel().isPresent()) {
            files.add(VESSELS);
        }
        addWhatIsLeftIn(recipe.bath());
    }

    /** A bath that is used again holds what the earlier entry put into it. */
    private void addWhatIsLeftIn(Bath bath) {
        bath.reuses().ifPresent(this::addMissing);
        bath.reuses().map(Noted::value).flatMap(sound::entry).filter(entry -> reused.add(entry.id()))
                .ifPresent(entry -> add(entry.recipe()));
    }

    /** The file of an entry that errors keep out of the book. */
    private void addMissing(Noted<String> id) {
        sound.missing().stream().filter(missing ->
                missing.entry() && Ids.key(missing.what()).equals(Ids.key(id.value())))
                .map(missing -> missing.place().file()).forEach(files::add);
    }
}
