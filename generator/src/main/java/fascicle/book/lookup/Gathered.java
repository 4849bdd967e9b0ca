package fascicle.book.lookup;

import fascicle.book.prose.PlainText;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Note;
import fascicle.notebook.Noted;
import fascicle.notebook.Outcome;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What the index is made of. A word leads to entries whose own text has it, and to sets: a word of a lot, dye, method,
 * condition, colour name or fault leads to all entries of that set, and is kept once.
 */
final class Gathered {

    /** Newest first, then by id; an entry's number is its place here. */
    final List<EntryWorking> entries;

    /** By trait, in the book's order; each has an entry. */
    final Map<Trait, List<Choice>> choices = new EnumMap<>(Trait.class);

    /** The entries of each choice, trait by trait, then of each colour name, then of each fault. */
    final List<BitSet> sets = new ArrayList<>();

    /** Where a trait's sets begin. */
    final Map<Trait, Integer> firstSet = new EnumMap<>(Trait.class);

    /** The colour names in use, in the standard's order. */
    final List<String> colourNames = new ArrayList<>();

    /** How many sets are of faults. */
    int faults;

    /** Every word, and beside it the entries and (from {@code entries.size()} on) the sets that it leads to. */
    final Vocabulary vocabulary;
    final List<Postings> leads;

    private final Workings workings;
    private final Words words;
    private final Map<String, NeedleLot> lots;
    private final Map<String, Dye> dyes;
    private final Map<String, Method> methods;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<Stream<String>> setTexts = new ArrayList<>();

    Gathered(Workings workings, Words words) {
        this.workings = workings;
        this.words = words;
        lots = Notebook.byId(workings.notebook().lots(), NeedleLot::id);
        dyes = Notebook.byId(workings.notebook().dyes(), Dye::id);
        methods = Notebook.byId(workings.notebook().methods(), Method::id);
        entries = workings.entries().stream().sorted(Comparator
                .comparing((EntryWorking working) -> working.entry().date()).reversed()
                .thenComparing(EntryWorking::id)).toList();
        for (EntryWorking working : entries) {
            numbers.put(working.id(), numbers.size());
        }
        for (Trait trait : Trait.values()) {
            firstSet.put(trait, sets.size());
            choices.put(trait, new ArrayList<>());
            traitSets(trait);
        }
        colourNames();
        faults();
        TreeMap<String, Postings> all = new TreeMap<>(leads());
        vocabulary = new Vocabulary(List.copyOf(all.keySet()));
        leads = List.copyOf(all.values());
    }

    private void traitSets(Trait trait) {
        switch (trait) {
            case VERDICT -> {
                for (Outcome.Verdict verdict : Outcome.Verdict.values()) {
                    choice(trait, verdict.word(), words.name("verdict", verdict), entries.stream()
                            .filter(working -> working.entry().verdict().filter(verdict::equals).isPresent()).toList());
                }
            }
            case CONDITION -> groups(trait, Group.Kind.CONDITION);
            case YEAR -> groups(trait, Group.Kind.YEAR);
            case FAMILY -> groups(trait, Group.Kind.FAMILY);
            case LOT -> groups(trait, Group.Kind.LOT);
            case DYE -> groups(trait, Group.Kind.DYE);
            case METHOD -> groups(trait, Group.Kind.METHOD);
        }
    }

    private void groups(Trait trait, Group.Kind kind) {
        workings.groups(kind).forEach(group -> choice(trait, group.id(), group.title(), group.entries()));
    }

    private void choice(Trait trait, String id, String title, List<EntryWorking> of) {
        if (!of.isEmpty()) {
            choices.getOrDefault(trait, List.of()).add(new Choice(id, title));
            set(of, texts(trait, id, title));
        }
    }

    private void set(List<EntryWorking> of, Stream<String> texts) {
        BitSet members = new BitSet();
        of.forEach(working -> members.set(numbers.getOrDefault(working.id(), 0)));
        sets.add(members);
        setTexts.add(texts);
    }

    /** What is said of a choice itself. Verdicts, years and families are chosen and not typed. */
    private Stream<String> texts(Trait trait, String id, String title) {
        return switch (trait) {
            case VERDICT, YEAR, FAMILY -> Stream.of();
            case CONDITION -> Stream.of(title);
            case LOT -> Stream.concat(Stream.of(title), found(lots, id).stream().flatMap(lot ->
                    Stream.concat(lot.species().map(Noted::value).stream(), texts(lot.notes()))));
            case DYE -> Stream.concat(Stream.of(title), found(dyes, id).stream().flatMap(dye -> texts(dye.notes())));
            case METHOD -> Stream.concat(Stream.of(title),
                    found(methods, id).stream().flatMap(method -> texts(method.notes())));
        };
    }

    private static <T> Optional<T> found(Map<String, T> things, String id) {
        return Optional.ofNullable(things.get(Ids.key(id)));
    }

    private static Stream<String> texts(List<Note> notes) {
        return notes.stream().map(PlainText::of);
    }

    private void colourNames() {
        Map<Integer, List<EntryWorking>> byNumber = new TreeMap<>();
        for (EntryWorking working : entries) {
            working.colour().ifPresent(colour -> byNumber
                    .computeIfAbsent(colour.name().number(), unused -> new ArrayList<>()).add(working));
        }
        byNumber.values().forEach(of -> {
            String name = of.get(0).colour().map(colour -> colour.name().name()).orElse("");
            colourNames.add(name);
            set(of, Stream.of(name));
        });
    }

    private void faults() {
        for (Outcome.Fault fault : Outcome.Fault.values()) {
            List<EntryWorking> of = entries.stream().filter(working -> working.entry().outcome().stream()
                    .flatMap(outcome -> outcome.faults().stream()).anyMatch(noted -> noted.value() == fault)).toList();
            if (!of.isEmpty()) {
                set(of, Stream.of(words.name("fault", fault)));
                faults++;
            }
        }
    }

    private Map<String, Postings> leads() {
        Map<String, Postings> leads = new HashMap<>();
        List<Set<String>> own = entries.parallelStream().map(working -> wordsOf(texts(working.entry()))).toList();
        for (int number = 0; number < own.size(); number++) {
            add(leads, own.get(number), number);
        }
        for (int set = 0; set < sets.size(); set++) {
            add(leads, wordsOf(setTexts.get(set)), entries.size() + set);
        }
        return leads;
    }

    private static void add(Map<String, Postings> leads, Set<String> words, int number) {
        words.forEach(word -> leads.computeIfAbsent(word, unused -> new Postings()).add(number));
    }

    private static Stream<String> texts(Entry entry) {
        return Stream.concat(Stream.of(entry.called(), entry.tag().map(Noted::value).orElse("")), texts(entry.notes()));
    }

    private static Set<String> wordsOf(Stream<String> texts) {
        Set<String> words = new HashSet<>();
        texts.forEach(text -> Folding.words(text, words::add));
        return words;
    }
}
