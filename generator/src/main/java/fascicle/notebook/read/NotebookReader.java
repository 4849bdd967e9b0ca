package fascicle.notebook.read;

import fascicle.measure.Kitchen;
import fascicle.notebook.Cover;
import fascicle.notebook.Day;
import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Method;
import fascicle.notebook.Missing;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Note;
import fascicle.notebook.Notebook;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import fascicle.notebook.Vessel;
import fascicle.notebook.text.FrontMatter;
import fascicle.notebook.text.Node;
import fascicle.notebook.text.NodeReader;
import fascicle.notebook.text.SourceText;
import fascicle.photo.Darkroom;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a whole notebook. A file with errors never hides another: what could not be read is left out of the notebook
 * and named in {@link Notebook#missing}.
 */
public final class NotebookReader {

    /**
     * The file that says what a notebook is; where it cannot be read, {@link Notebook#missing} holds it by this name.
     */
    public static final String COVER = "notebook.yaml";

    private final Path root;
    private final Findings findings = new Findings();
    private final NotebookFiles files;
    private final MethodTrees methodTrees = new MethodTrees();
    private final Catalogue catalogue = new Catalogue(findings);
    private final List<Missing> missing = new ArrayList<>();
    private final Darkroom darkroom;
    private final Progress progress;
    private Kitchen kitchen = Kitchen.METRIC;

    private NotebookReader(Path root, Darkroom darkroom, Progress progress) {
        this.root = root;
        this.darkroom = darkroom;
        this.progress = progress;
        this.files = new NotebookFiles(root, findings);
    }

    /**
     * What reading a notebook gave.
     *
     * @param notebook what could be read
     * @param findings every problem met, in order of place
     */
    public record Result(Notebook notebook, List<Finding> findings) {}

    /** Is told how far the reading of photographs is, from several threads. */
    public interface Progress {

        /**
         * Another photograph has been looked at.
         *
         * @param looked how many so far
         * @param of how many there are, as far as is known
         */
        void looked(int looked, int of);
    }

    /**
     * Reads a notebook.
     *
     * @param root its folder; must be a folder that exists
     * @return the notebook and the findings about it
     * @throws IOException if a folder cannot be listed
     */
    public static Result read(Path root) throws IOException {
        return read(root, Darkroom.withoutCache(), (looked, of) -> { });
    }

    /**
     * Reads a notebook and its photographs.
     *
     * @param root its folder; must be a folder that exists
     * @param darkroom what reads photographs
     * @param progress is told how many photographs have been looked at
     * @return the notebook and the findings about it
     * @throws IOException if a folder cannot be listed
     */
    public static Result read(Path root, Darkroom darkroom, Progress progress) throws IOException {
        if (!Files.isDirectory(root)) {
            throw new IllegalArgumentException("not a folder: " + root);
        }
        return new NotebookReader(root, darkroom, progress).all();
    }

    private Result all() throws IOException {
        files.checkStrangers();
        Cover cover = cover();
        ReadingFiles readings = new ReadingFiles(root, darkroom, cover, progress);
        List<NeedleLot> lots = shelf("needles", "lot", (fields, id, notes) ->
                opened(ShelfReader.lot(fields, id, notes), readings, fields.findings()), cover);
        List<Dye> dyes = shelf("dyes", "dye", ShelfReader::dye, cover);
        List<Vessel> vessels = vessels();
        List<Method> methods = methods();
        List<Day> days = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        DayReader dayReader = new DayReader(kitchen, methodTrees, catalogue, findings, missing);
        for (String folder : files.days()) {
            dayReader.read(root, folder, files.in(folder), entries, days);
        }
        entries = dayReader.opened(entries, readings);
        files.sayUnread(readings.found());
        dayReader.checkTogether(entries);
        entries.sort(Comparator.comparing(Entry::date).thenComparing(Entry::id));
        missing.sort(Comparator.comparing(Missing::place));
        Notebook notebook = new Notebook(cover, lots, dyes, vessels, methods, List.copyOf(days), List.copyOf(entries),
                List.copyOf(missing));
        return new Result(notebook, findings.sorted());
    }

    private static NeedleLot opened(NeedleLot lot, ReadingFiles readings, Findings findings) {
        ReadingFiles.Opened<NeedleLot> opened = readings.of(lot);
        findings.addAll(opened.findings());
        return opened.thing();
    }

    private Cover cover() {
        int mark = findings.mark();
        if (!Files.exists(root.resolve(COVER), LinkOption.NOFOLLOW_LINKS)) {
            findings.error(Place.of(COVER), "this file is missing, so this is no notebook yet; write one that begins "
                    + "with “form: 1”, or start a notebook with “fascicle begin”");
            return unknownCover(mark);
        }
        Optional<Node.Mapping> keys = yaml(COVER);
        if (keys.isEmpty()) {
            return unknownCover(mark);
        }
        kitchen = CoverReader.kitchen(keys.get());
        Cover cover = CoverReader.cover(keys.get(), findings);
        return CoverReader.isNewer(keys.get()) ? unknownCover(mark) : cover;
    }

    private Cover unknownCover(int mark) {
        noteMissing(COVER, Place.of(COVER), Edition.STUDIO, mark);
        catalogue.forgive("condition");
        return Cover.UNSAID;
    }

    private Optional<Node.Mapping> yaml(String file) {
        return SourceText.read(root, file, findings)
                .flatMap(source -> NodeReader.read(file, source.text(), 1, findings));
    }

    /** Makes a record of a file's keys. */
    private interface FromKeys<T> {
        T read(Fields fields, String id, List<Note> notes);
    }

    private <T> List<T> shelf(String folder, String kind, FromKeys<T> reader, Cover cover) throws IOException {
        Map<String, T> things = new LinkedHashMap<>();
        for (String file : files.in(folder)) {
            String id = NotebookFiles.idOf(file);
            int mark = findings.mark();
            Optional<Located> located = locate(file);
            Node.Mapping keys = located.map(Located::keys).orElse(new Node.Mapping(List.of(), Place.of(file)));
            Fields fields = new Fields(keys, Origin.OWN, kitchen, findings);
            T thing = reader.read(fields, id, located.map(found -> Bodies.whole(found.front(), Edition.OPEN))
                    .orElse(List.of()));
            if (thing instanceof NeedleLot lot) {
                catalogue.checkCondition(lot, cover);
            }
            if (!catalogue.add(kind, id, Place.of(file))) {
                noteMissing(id, Place.of(file), EntryReader.share(fields), mark);
                continue;
            }
            if (findings.errorsSince(mark).isEmpty()) {
                things.put(id, thing);
            } else {
                // What could be read of a faulty file is not half a truth to reckon with: only its name remains.
                noteMissing(id, Place.of(file), EntryReader.share(fields), mark);
                things.put(id, reader.read(new Fields(new Node.Mapping(List.of(), Place.of(file)), Origin.OWN,
                        kitchen, new Findings()), id, List.of()));
            }
        }
        return List.copyOf(things.values());
    }

    private List<Vessel> vessels() {
        String file = "vessels.yaml";
        List<Vessel> vessels = new ArrayList<>();
        if (!Files.exists(root.resolve(file))) {
            return vessels;
        }
        Optional<Node.Mapping> keys = yaml(file);
        if (keys.isEmpty()) {
            catalogue.forgive("vessel");
            return vessels;
        }
        Fields all = new Fields(keys.get(), Origin.OWN, kitchen, findings);
        for (Node.Pair pair : all.pairs()) {
            if (pair.key().equals("share") && pair.value() instanceof Node.Text) {
                // Vessels are plain facts, so that it changes nothing how far their file is shared.
                all.word("share", Edition.class);
                continue;
            }
            all.map(pair.key()).ifPresent(fields -> {
                Vessel vessel = ShelfReader.vessel(fields, pair.key());
                if (catalogue.add("vessel", pair.key(), pair.place())) {
                    vessels.add(vessel);
                }
            });
        }
        vessels.sort(Comparator.comparing(Vessel::id));
        return List.copyOf(vessels);
    }

    private List<Method> methods() throws IOException {
        Map<String, Located> found = new LinkedHashMap<>();
        for (String file : files.in("methods")) {
            String id = NotebookFiles.idOf(file);
            int mark = findings.mark();
            if (id.matches("\\d{4}-\\d{2}-\\d{2}.*")) {
                findings.error(Place.of(file), "a method's name does not begin with a date, or it could be taken for "
                        + "an entry's; name this file otherwise");
            }
            Optional<Located> located = locate(file);
            if (catalogue.add("method", id, Place.of(file))) {
                methodTrees.add(id, located.map(Located::keys));
                located.ifPresent(method -> found.put(id, method));
            }
            if (!findings.errorsSince(mark).isEmpty()) {
                found.remove(id);
                methodTrees.markFaulty(id);
                noteMissing(id, Place.of(file), Edition.STUDIO, mark);
            }
        }
        Map<String, Method> sound = new LinkedHashMap<>();
        found.forEach((id, located) -> method(id, located).ifPresentOrElse(method -> sound.put(id, method),
                () -> methodTrees.markFaulty(id)));
        List<Method> methods = new ArrayList<>();
        found.forEach((id, located) -> {
            Method method = sound.get(id);
            if (method != null && !followsFaulty(method, located)) {
                methods.add(method);
            }
        });
        return List.copyOf(methods);
    }

    /** Leaves out a method that has no error of its own and follows one that has, near or far. */
    private boolean followsFaulty(Method method, Located located) {
        Optional<String> broken = methodTrees.fill(located.keys(), Optional.of(method.id()), new Findings()).brokenBy();
        broken.ifPresent(by -> missing.add(new Missing(method.id(), method.place(), method.share(), false,
                List.of(MethodTrees.follows(by)))));
        return broken.isPresent();
    }

    private Optional<Method> method(String id, Located located) {
        int mark = findings.mark();
        MethodTrees.Filled filled = methodTrees.fill(located.keys(), Optional.of(id), findings);
        Fields fields = new Fields(filled.keys(), Origin.OWN, kitchen, findings);
        Method method = ShelfReader.method(fields, id, Bodies.whole(located.front(), Edition.OPEN));
        catalogue.check(method);
        if (findings.errorsSince(mark).isEmpty() && filled.brokenBy().isEmpty()) {
            return Optional.of(method);
        }
        List<String> why = filled.brokenBy().map(MethodTrees::follows).stream().toList();
        List<String> errors = findings.errorsSince(mark).stream().map(error -> error.place().file()
                .equals(method.place().file()) ? error.message() : error.place() + ": " + error.message()).toList();
        missing.add(new Missing(id, method.place(), method.share(), false, errors.isEmpty() ? why : errors));
        return Optional.empty();
    }

    private Optional<Located> locate(String file) {
        return SourceText.read(root, file, findings).flatMap(source -> FrontMatter.split(source, findings))
                .flatMap(front -> {
                    Bodies.checkMarkers(front, findings);
                    return NodeReader.read(file, front.yaml(), FrontMatter.FIRST_LINE, findings)
                            .map(keys -> new Located(front, keys));
                });
    }

    /** A file's keys and body. */
    private record Located(FrontMatter front, Node.Mapping keys) {}

    private void noteMissing(String what, Place place, Edition share, int mark) {
        missing.add(new Missing(what, place, share, false, why(mark, List.of())));
    }

    private List<String> why(int mark, List<String> otherwise) {
        List<String> errors = findings.errorsSince(mark).stream().map(Finding::message).toList();
        return errors.isEmpty() ? otherwise : errors;
    }
}
