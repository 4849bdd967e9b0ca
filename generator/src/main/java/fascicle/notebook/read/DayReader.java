package fascicle.notebook.read;

import fascicle.measure.Kitchen;
import fascicle.notebook.Day;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Missing;
import fascicle.notebook.Note;
import fascicle.notebook.Notebook;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import fascicle.notebook.Reading;
import fascicle.notebook.resolve.Filling;
import fascicle.notebook.text.FrontMatter;
import fascicle.notebook.text.Node;
import fascicle.notebook.text.NodeReader;
import fascicle.notebook.text.SourceText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the folders of dye days: one entry a file, or several where it has {@code pots:}. */
final class DayReader {

    private final Kitchen kitchen;
    private final MethodTrees methods;
    private final Catalogue catalogue;
    private final Findings findings;
    private final List<Missing> missing;

    DayReader(Kitchen kitchen, MethodTrees methods, Catalogue catalogue, Findings findings, List<Missing> missing) {
        this.kitchen = kitchen;
        this.methods = methods;
        this.catalogue = catalogue;
        this.findings = findings;
        this.missing = missing;
    }

    /** Reads a day's files; what can be read is added to the entries and days. */
    void read(Path root, String folder, List<String> files, List<Entry> entries, List<Day> days) {
        Optional<LocalDate> date = date(folder);
        List<Note> notes = new ArrayList<>();
        for (String file : files) {
            int mark = findings.mark();
            if (date.isEmpty()) {
                findings.error(Place.of(file), "this entry's day cannot be told: its folder “"
                        + folder.substring("days/".length()) + "” is no date; name it as in days/2026-05-09");
                noteMissing(file, Place.of(file), Edition.STUDIO, mark);
                continue;
            }
            Optional<FrontMatter> front = SourceText.read(root, file, findings)
                    .flatMap(source -> FrontMatter.split(source, findings));
            Optional<Node.Mapping> keys = front.flatMap(found -> {
                Bodies.checkMarkers(found, findings);
                return NodeReader.read(file, found.yaml(), FrontMatter.FIRST_LINE, findings);
            });
            if (front.isEmpty() || keys.isEmpty() || !findings.errorsSince(mark).isEmpty()) {
                catalogue.add("entry", date.get() + "-" + NotebookFiles.idOf(file), Place.of(file));
                noteMissing(date.get() + "-" + NotebookFiles.idOf(file), Place.of(file), keys.map(this::share)
                        .orElse(Edition.STUDIO), mark);
                // A faulty body hides the file, yet its keys are checked too, so that one run names every mistake.
                keys.ifPresent(found -> entriesOf(root, front.get(), found, date.get(), new ArrayList<>(),
                        new ArrayList<>(), false));
            } else {
                entriesOf(root, front.get(), keys.get(), date.get(), entries, notes, true);
            }
        }
        date.filter(found -> !notes.isEmpty()).ifPresent(found -> days.add(new Day(found, List.copyOf(notes))));
    }

    private static Optional<LocalDate> date(String folder) {
        try {
            return Optional.of(Scalar.DATE.read(folder.substring("days/".length()), Kitchen.METRIC));
        } catch (Unreadable noDate) {
            return Optional.empty();
        }
    }

    private void entriesOf(Path root, FrontMatter front, Node.Mapping keys, LocalDate day, List<Entry> entries,
            List<Note> notes, boolean wanted) {
        Optional<Node.Pair> pots = keys.find("pots");
        if (pots.isEmpty()) {
            String name = NotebookFiles.idOf(front.file());
            Edition share = share(keys);
            entry(root, keys, day, name, Bodies.whole(front, share), wanted).ifPresent(entries::add);
            return;
        }
        if (!(pots.get().value() instanceof Node.Sequence list) || list.items().isEmpty()) {
            findings.error(pots.get().place(), "“pots” has " + pots.get().value().described() + "; expected is a list "
                    + "with an item “- name: …” for each pot");
            return;
        }
        Bodies bodies = Bodies.of(front);
        Set<String> allNames = new LinkedHashSet<>();
        for (Node item : list.items()) {
            pot(root, item, keys, day, bodies, allNames, wanted).ifPresent(entries::add);
        }
        notes.addAll(bodies.ofDay(allNames, share(keys)));
    }

    private Optional<Entry> pot(Path root, Node item, Node.Mapping shared, LocalDate day, Bodies bodies,
            Set<String> allNames, boolean wanted) {
        Optional<String> name = item instanceof Node.Mapping pot ? textAt(pot, "name") : Optional.empty();
        if (!(item instanceof Node.Mapping pot) || name.isEmpty()) {
            findings.error(item.place(), "a pot has no name; begin its item with “- name: …”, in a few words that "
                    + "name its page");
            return Optional.empty();
        }
        Node.Mapping own = Filling.fromShared(pot, shared);
        Set<String> names = new LinkedHashSet<>();
        names.add(name.get());
        textAt(pot, "title").ifPresent(names::add);
        allNames.addAll(names);
        return entry(root, own, day, name.get(), bodies.ofPot(names, share(own)), wanted);
    }

    private Optional<Entry> entry(Path root, Node.Mapping own, LocalDate day, String name, List<Note> notes,
            boolean wanted) {
        int mark = findings.mark();
        MethodTrees.Filled filled = methods.fill(own, Optional.empty(), findings);
        Entry entry = EntryReader.entry(new Fields(filled.keys(), Origin.OWN, kitchen, findings), day, name, notes);
        if (wanted) {
            catalogue.add("entry", entry.id(), entry.place());
        }
        catalogue.check("method", entry.method());
        catalogue.check(entry.needles());
        catalogue.check(entry.recipe());
        checkPictures(root, entry);
        List<String> why = findings.errorsSince(mark).stream().map(Finding::message).toList();
        if (why.isEmpty() && filled.brokenBy().isPresent()) {
            why = List.of("it follows the method " + filled.brokenBy().get() + ", which could not be read");
        }
        if (wanted && !why.isEmpty()) {
            missing.add(new Missing(entry.id(), entry.place(), entry.share(), true, why));
        }
        return why.isEmpty() && wanted ? Optional.of(entry) : Optional.empty();
    }

    private void checkPictures(Path root, Entry entry) {
        List<Reading> readings = new ArrayList<>(entry.colour());
        entry.target().ifPresent(readings::add);
        entry.window().forEach(window -> readings.add(window.reading()));
        for (Reading reading : readings) {
            if (reading.colour() instanceof Reading.Photograph photograph) {
                checkPicture(root, photograph.file(), reading.place());
            }
        }
    }

    private void checkPicture(Path root, String file, Place place) {
        try {
            Path picture = root.resolve(place.file()).resolveSibling(file).normalize();
            if (!picture.startsWith(root.normalize())
                    || Files.exists(picture) && !picture.toRealPath().startsWith(root.toRealPath())) {
                findings.error(place, "the picture “" + file + "” lies outside the notebook; put it beside the entry "
                        + "and name it by its file alone");
            } else if (!Files.isRegularFile(picture)) {
                findings.error(place, "the picture “" + file + "” is not there; put it beside the entry, or mend its "
                        + "name");
            }
        } catch (java.io.IOException | java.nio.file.InvalidPathException unusable) {
            findings.error(place, "the picture “" + file + "” cannot be found; name a file beside the entry");
        }
    }

    /** Checks what entries say of one another, and takes out those that are wrong. */
    void checkTogether(List<Entry> entries) {
        Map<String, Entry> ofTag = new HashMap<>();
        Map<String, Entry> byId = Notebook.byId(entries, Entry::id);
        Set<String> faulty = new LinkedHashSet<>();
        for (Entry entry : entries) {
            int mark = findings.mark();
            entry.tag().ifPresent(tag -> {
                Entry first = ofTag.putIfAbsent(tag.value(), entry);
                if (first != null) {
                    findings.error(tag.place(), "the tag “" + tag.written() + "” is on two bags: " + first.id()
                            + " has it already; give this one a number of its own");
                }
            });
            catalogue.check("entry", entry.needles().from());
            catalogue.check("entry", entry.recipe().bath().reuses());
            EntryCircles.check(entry, byId, findings);
            noteFaults(entry, mark, faulty);
        }
        for (Entry entry : entries) {
            int mark = findings.mark();
            EntryTags.check(entry, ofTag.keySet(), missing.isEmpty(), findings);
            noteFaults(entry, mark, faulty);
        }
        entries.removeIf(entry -> faulty.contains(Ids.key(entry.id())));
    }

    private void noteFaults(Entry entry, int mark, Set<String> faulty) {
        List<String> why = findings.errorsSince(mark).stream().map(Finding::message).toList();
        if (!why.isEmpty()) {
            faulty.add(Ids.key(entry.id()));
            missing.add(new Missing(entry.id(), entry.place(), entry.share(), true, why));
        }
    }

    private void noteMissing(String what, Place place, Edition share, int mark) {
        missing.add(new Missing(what, place, share, true,
                findings.errorsSince(mark).stream().map(Finding::message).toList()));
    }

    private Edition share(Node.Mapping keys) {
        return textAt(keys, "share").flatMap(Edition::named).orElse(Edition.STUDIO);
    }

    private static Optional<String> textAt(Node.Mapping keys, String key) {
        return keys.find(key).flatMap(pair -> pair.value() instanceof Node.Text text && !text.value().isBlank()
                ? Optional.of(text.value().strip()) : Optional.empty());
    }
}
