package fascicle.book.lookup;

import fascicle.book.words.Words;
import fascicle.colour.ColourDifference;
import fascicle.colour.HueOrder;
import fascicle.colour.Lab;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Answers questions about the entries of one edition, as the book's own script does. Does not change; safe for use from
 * several threads.
 */
public final class Lookup {

    private static final String WORDS = "words";

    /** Five decimals of Lab, from here on, in four digits. */
    private static final double LAB_STEPS = 1e5;
    private static final double LAB_FROM = -256;
    private static final double LAB_TO = 459;
    private static final double OWF_STEPS = 100;

    private final Gathered gathered;
    private final BitSet everything = new BitSet();

    private Lookup(Gathered gathered) {
        this.gathered = gathered;
        everything.set(0, gathered.entries.size());
    }

    /**
     * Makes an index.
     *
     * @param workings of an edition's notebook; whatever is in it may be found
     * @param words the book's words
     * @return what answers
     */
    public static Lookup of(Workings workings, Words words) {
        return new Lookup(new Gathered(workings, words));
    }

    /**
     * What entries can be chosen by.
     *
     * @param trait a trait
     * @return its choices that have entries, in the book's order
     */
    public List<Choice> choices(Trait trait) {
        return List.copyOf(gathered.choices.getOrDefault(trait, List.of()));
    }

    /**
     * The colour of an entry as answers compare it: its mean, to five decimals, which the book's script has too.
     *
     * @param working an entry
     * @return its colour, if it has one
     */
    public static Optional<Lab> colour(EntryWorking working) {
        return working.colour().map(colour -> new Lab(coordinate(steps(colour.lab().lightness())),
                coordinate(steps(colour.lab().a())), coordinate(steps(colour.lab().b()))));
    }

    static int steps(double coordinate) {
        double held = StrictMath.max(LAB_FROM, StrictMath.min(LAB_TO, coordinate));
        return (int) StrictMath.round((held - LAB_FROM) * LAB_STEPS);
    }

    private static double coordinate(int steps) {
        return (steps + LAB_FROM * LAB_STEPS) / LAB_STEPS;
    }

    /** The known shares of an entry's dyes in hundredths of a per cent and one more; 0 where none is known. */
    static int owfSteps(EntryWorking working) {
        double[] known = working.bath().dye().stream().map(PartFigures::owfPercent).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).toArray();
        double sum = 0;
        for (double share : known) {
            sum += share;
        }
        return known.length == 0 ? 0 : 1 + (int) StrictMath.min(7e5, StrictMath.round(sum * OWF_STEPS));
    }

    static int evenness(EntryWorking working) {
        return working.entry().outcome().flatMap(outcome -> outcome.evenness()).map(noted -> noted.value()).orElse(0);
    }

    Gathered gathered() {
        return gathered;
    }

    /**
     * Answers a question.
     *
     * @param question what is looked for
     * @return what was found
     */
    public Answer ask(Question question) {
        List<Answer.Instead> instead = new ArrayList<>();
        Map<String, BitSet> parts = new LinkedHashMap<>();
        words(question.words(), instead).ifPresent(found -> parts.put(WORDS, found));
        for (Trait trait : Trait.values()) {
            Set<String> ids = question.chosen().getOrDefault(trait, Set.of());
            if (!ids.isEmpty()) {
                parts.put(trait.word(), chosen(trait, ids));
            }
        }
        BitSet found = without(parts, "");
        return new Answer(inOrder(found, question), counts(parts), found.isEmpty() ? loosen(parts) : List.of(),
                List.copyOf(instead));
    }

    /** The entries that pass every part of a question but one. */
    private BitSet without(Map<String, BitSet> parts, String part) {
        BitSet found = (BitSet) everything.clone();
        parts.forEach((name, passing) -> {
            if (!name.equals(part)) {
                found.and(passing);
            }
        });
        return found;
    }

    private BitSet chosen(Trait trait, Set<String> ids) {
        BitSet union = new BitSet();
        List<Choice> choices = gathered.choices.getOrDefault(trait, List.of());
        for (int at = 0; at < choices.size(); at++) {
            if (ids.contains(choices.get(at).id())) {
                union.or(set(trait, at));
            }
        }
        return union;
    }

    private BitSet set(Trait trait, int choice) {
        return gathered.sets.get(gathered.firstSet.getOrDefault(trait, 0) + choice);
    }

    /** The entries that have a tag, or every word; nothing where no word was typed. */
    private Optional<BitSet> words(String typed, List<Answer.Instead> instead) {
        BitSet tagged = tagged(typed);
        if (!tagged.isEmpty()) {
            return Optional.of(tagged);
        }
        BitSet found = (BitSet) everything.clone();
        Set<String> words = new LinkedHashSet<>(Folding.words(typed));
        for (String word : words) {
            BitSet taken = gathered.vocabulary.beginning(word);
            if (taken.isEmpty() && word.length() >= Vocabulary.SHORTEST_SLIP) {
                taken = gathered.vocabulary.slips(word);
                instead.add(new Answer.Instead(word, taken.stream()
                        .mapToObj(gathered.vocabulary.words()::get).toList()));
            }
            found.and(ledTo(taken));
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    private BitSet tagged(String typed) {
        String wanted = Folding.fold(typed).trim();
        BitSet tagged = new BitSet();
        for (int number = 0; number < gathered.entries.size(); number++) {
            String tag = gathered.entries.get(number).entry().tag().map(noted -> noted.value()).orElse("");
            if (!tag.isBlank() && Folding.fold(tag).trim().equals(wanted)) {
                tagged.set(number);
            }
        }
        return tagged;
    }

    private BitSet ledTo(BitSet words) {
        BitSet all = new BitSet();
        words.stream().forEach(word -> gathered.leads.get(word).addTo(all));
        int size = gathered.entries.size();
        for (int lead = all.nextSetBit(size); lead >= 0; lead = all.nextSetBit(lead + 1)) {
            all.or(gathered.sets.get(lead - size));
        }
        all.and(everything);
        return all;
    }

    private Map<Trait, List<Integer>> counts(Map<String, BitSet> parts) {
        Map<Trait, List<Integer>> counts = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            BitSet others = without(parts, trait.word());
            List<Integer> of = new ArrayList<>();
            for (int at = 0; at < choices(trait).size(); at++) {
                BitSet both = (BitSet) others.clone();
                both.and(set(trait, at));
                of.add(both.cardinality());
            }
            counts.put(trait, List.copyOf(of));
        }
        return counts;
    }

    private List<Answer.Loosened> loosen(Map<String, BitSet> parts) {
        return parts.keySet().stream().map(part -> new Answer.Loosened(part, without(parts, part).cardinality()))
                .filter(loosened -> loosened.found() > 0)
                .sorted(Comparator.comparingInt(Answer.Loosened::found).reversed()).toList();
    }

    private List<Answer.Found> inOrder(BitSet found, Question question) {
        Stream<Ranked> ranked = found.stream().mapToObj(number -> rank(gathered.entries.get(number), question));
        return ranked.sorted(Comparator.comparingDouble(Ranked::key)).map(Ranked::found).toList();
    }

    /** An entry and what it is put in order by; the sort keeps the order of equals, which is newest first. */
    private record Ranked(Answer.Found found, double key) {}

    private static Ranked rank(EntryWorking working, Question question) {
        Optional<Lab> colour = colour(working);
        OptionalDouble de00 = question.near().isEmpty() ? OptionalDouble.empty() : colour.stream()
                .mapToDouble(lab -> ColourDifference.ciede2000(question.near().get(), lab)).findFirst();
        double key = switch (question.meant()) {
            case DATE -> 0;
            case EVENNESS -> evenness(working) == 0 ? Double.POSITIVE_INFINITY : -evenness(working);
            case LIGHTNESS -> colour.map(lab -> -lab.lightness()).orElse(Double.POSITIVE_INFINITY);
            case HUE -> colour.map(HueOrder::place).orElse(Double.POSITIVE_INFINITY);
            case OWF -> owfSteps(working) == 0 ? Double.POSITIVE_INFINITY : owfSteps(working);
            case NEAR -> de00.orElse(Double.POSITIVE_INFINITY);
        };
        return new Ranked(new Answer.Found(working, de00), key);
    }
}
