package fascicle.notebook.read;

import fascicle.measure.Kitchen;
import fascicle.notebook.Day;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Findings;
import fascicle.notebook.Missing;
import fascicle.notebook.Note;
import fascicle.notebook.Notebook;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import fascicle.notebook.resolve.Filling;
import fascicle.notebook.text.FrontMatter;
import fascicle.notebook.text.Node;
import fascicle.notebook.text.NodeReader;
import fascicle.notebook.text.SourceText;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
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
    private final Map<Entry, List<String>> faults = new IdentityHashMap<>();
    private boolean someUnreadable;

    DayReader(Kitchen kitchen, MethodTrees methods, Catalogue catalogue, Findings findings, List<Missing> missing) {
        this.kitchen = kitchen;
        this.methods = methods;
        this.catalogue = catalogue;
        this.findings = findings;
        this.missing = missing;
    }

    /** Reads a day's files; every entry is added, faulty ones too, so that they can be checked together. */
    void read(Path root, String folder, List<String> files, List<Entry> entries, List<Day> days) {
        Optional<LocalDate> date = date(folder);
        List<Note> notes = new ArrayList<>();
        for (String file : files) {
            int mark = findings.mark();
            if (date.isEmpty()) {
                findings.error(Place.of(file), "this entry's day cannot be told: its folder “"
                        + folder.substring("days/".length()) + "” is no date; name it as in days/2026-05-09");
                noteUnreadable(file, Place.of(file), mark);
                continue;
            }
            Optional<FrontMatter> front = SourceText.read(root, file, findings)
                    .flatMap(source -> FrontMatter.split(source, findings));
            Optional<Node.Mapping> keys = front.flatMap(found -> NodeReader.read(file, found.yaml(),
                    FrontMatter.FIRST_LINE, findings));
            front.ifPresent(found -> Bodies.checkMarkers(found, findings));
            if (front.isEmpty() || keys.isEmpty()) {
                String id = date.get() + "-" + NotebookFiles.idOf(file);
                catalogue.add("entry", id, Place.of(file));
                noteUnreadable(id, Place.of(file), mark);
                continue;
            }
            entriesOf(front.get(), keys.get(), date.get(), entries, notes, messagesSince(mark));
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

    private void entriesOf(FrontMatter front, Node.Mapping keys, LocalDate day, List<Entry> entries,
            List<Note> notes, List<String> faultsOfFile) {
        Optional<Node.Pair> pots = keys.find("pots");
        if (pots.isEmpty()) {
            entries.add(entry(keys, day, NotebookFiles.idOf(front.file()),
                    Bodies.whole(front, share(keys)), faultsOfFile));
            return;
        }
        if (!(pots.get().value() instanceof Node.Sequence list) || list.items().isEmpty()) {
            int mark = findings.mark();
            findings.error(pots.get().place(), "“pots” has " + pots.get().value().described() + "; expected is a list "
                    + "with an item “- name: …” for each pot");
            noteUnreadable(day + "-" + NotebookFiles.idOf(front.file()), pots.get().place(), mark);
            return;
        }
        Bodies bodies = Bodies.of(front);
        Set<String> allNames = new LinkedHashSet<>();
        for (Node item : list.items()) {
            pot(item, keys, day, bodies, allNames, faultsOfFile).ifPresent(entries::add);
        }
        if (faultsOfFile.isEmpty()) {
            notes.addAll(bodies.ofDay(allNames, share(keys)));
        }
    }

    private Optional<Entry> pot(Node item, Node.Mapping shared, LocalDate day, Bodies bodies,
            Set<String> allNames, List<String> faultsOfFile) {
        Optional<String> name = item instanceof Node.Mapping pot ? textAt(pot, "name") : Optional.empty();
        if (!(item instanceof Node.Mapping pot) || name.isEmpty()) {
            int mark = findings.mark();
            findings.error(item.place(), "a pot has no name; begin its item with “- name: …”, in a few words that "
                    + "name its page");
            noteUnreadable(day + " (a pot without a name)", item.place(), mark);
            return Optional.empty();
        }
        Node.Mapping own = Filling.fromShared(pot, shared);
        Set<String> names = new LinkedHashSet<>();
        names.add(name.get());
        textAt(pot, "title").ifPresent(names::add);
        allNames.addAll(names);
        return Optional.of(entry(own, day, name.get(), bodies.ofPot(names, share(own)), faultsOfFile));
    }

    private Entry entry(Node.Mapping own, LocalDate day, String name, List<Note> notes,
            List<String> faultsOfFile) {
        int mark = findings.mark();
        MethodTrees.Filled filled = methods.fill(own, Optional.empty(), findings);
        Entry entry = EntryReader.entry(new Fields(filled.keys(), Origin.OWN, kitchen, findings), day, name, notes);
        catalogue.add("entry", entry.id(), entry.place());
        catalogue.check("method", entry.method());
        catalogue.check(entry.needles());
        catalogue.check(entry.recipe());
        List<String> why = new ArrayList<>(faultsOfFile);
        List<Finding> errors = findings.errorsSince(mark);
        errors.stream().filter(error -> isOwn(error, entry)).forEach(error -> why.add(error.message()));
        if (why.isEmpty()) {
            filled.brokenBy().map(MethodTrees::follows).ifPresent(why::add);
        }
        errors.stream().filter(error -> !isOwn(error, entry)).forEach(error -> why.add(error.place() + ": "
                + error.message()));
        noteFaults(entry, why);
        return entry;
    }

    private static boolean isOwn(Finding error, Entry entry) {
        return error.place().file().equals(entry.place().file());
    }

    /** The entries with what the files hold that their readings name, read on all cores. */
    List<Entry> opened(List<Entry> entries, ReadingFiles files) {
        entries.forEach(entry -> files.expect(entry.readings()));
        List<ReadingFiles.Opened<Entry>> all = entries.parallelStream().map(files::of).toList();
        List<Entry> opened = new ArrayList<>();
        for (int place = 0; place < all.size(); place++) {
            Entry entry = all.get(place).thing();
            List<String> before = faults.remove(entries.get(place));
            int mark = findings.mark();
            findings.addAll(all.get(place).findings());
            noteFaults(entry, before == null ? List.of() : before);
            noteFaults(entry, messagesSince(mark));
            opened.add(entry);
        }
        return opened;
    }

    /** Checks what entries say of one another, and takes out those that are wrong. */
    void checkTogether(List<Entry> entries) {
        Map<String, Entry> ofTag = new HashMap<>();
        Map<String, Entry> byId = Notebook.byId(entries, Entry::id);
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
            noteFaults(entry, messagesSince(mark));
        }
        for (Entry entry : entries) {
            int mark = findings.mark();
            EntryTags.check(entry, ofTag.keySet(), !someUnreadable, findings);
            noteFaults(entry, messagesSince(mark));
        }
        entries.removeIf(faults::containsKey);
        faults.forEach((entry, why) -> missing.add(new Missing(entry.id(), entry.place(), entry.share(), true,
                List.copyOf(why))));
    }

    private void noteFaults(Entry entry, List<String> why) {
        if (!why.isEmpty()) {
            faults.computeIfAbsent(entry, any -> new ArrayList<>()).addAll(why);
        }
    }

    private List<String> messagesSince(int mark) {
        return findings.errorsSince(mark).stream().map(Finding::message).toList();
    }

    /** Nothing of it can be told, so not even who might see it: the studio alone hears of it. */
    private void noteUnreadable(String what, Place place, int mark) {
        someUnreadable = true;
        missing.add(new Missing(what, place, Edition.STUDIO, true, messagesSince(mark)));
    }

    private Edition share(Node.Mapping keys) {
        return textAt(keys, "share").flatMap(Edition::named).orElse(Edition.STUDIO);
    }

    private static Optional<String> textAt(Node.Mapping keys, String key) {
        return keys.find(key).flatMap(pair -> pair.value() instanceof Node.Text text && !text.value().isBlank()
                ? Optional.of(text.value().strip()) : Optional.empty());
    }
}
