package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.Link;
import fascicle.book.page.LookUpPage;
import fascicle.book.page.LookUpPage.Choice;
import fascicle.book.page.LookUpPage.ChoiceGroup;
import fascicle.book.page.Verdict;
import fascicle.book.swatch.Swatch;
import fascicle.book.words.Words;
import fascicle.notebook.Outcome;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The page on which entries are looked up. */
public final class LookUpComposer {

    private static final List<String> ORDERS = List.of("date", "evenness", "lightness", "hue", "owf", "near");

    private final Materials materials;
    private final Ways ways;
    private final Words words;

    /**
     * Composes the page.
     *
     * @param materials what pages are made from
     */
    public LookUpComposer(Materials materials) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
        this.words = materials.words();
    }

    /**
     * The page.
     *
     * @return what it says; counts are those of the whole book
     */
    public LookUpPage page() {
        List<ChoiceGroup> groups = List.of(
                group(Shelf.CONDITIONS, true), verdicts(), newestFirst(group(Shelf.YEARS, true)),
                group(Shelf.FAMILIES, false), group(Shelf.LOTS, false), group(Shelf.DYES, false),
                group(Shelf.METHODS, false));
        return new LookUpPage(ways.frame(ways.lookUp().text()), materials.workings().entries().size(), groups,
                ORDERS.stream().map(id -> new LookUpPage.Order(id, words.say("ask.order-" + id))).toList(), lists(),
                Stream.of(Outcome.Verdict.values()).map(this::mark).toList(),
                Swatch.unfilled(words.say("swatch.unknown")));
    }

    private ChoiceGroup group(Shelf shelf, boolean open) {
        List<Choice> choices = materials.workings().groups(shelf.kind()).stream()
                .filter(group -> !group.entries().isEmpty()).map(group -> choice(shelf, group)).toList();
        return new ChoiceGroup(shelf.kind().word(), words.say("ask." + shelf.kind().word()), open, open, choices);
    }

    private Choice choice(Shelf shelf, Group group) {
        return new Choice(group.id(), ways.to(shelf, group.id()), group.entries().size());
    }

    private ChoiceGroup verdicts() {
        Map<Outcome.Verdict, Integer> counts = new EnumMap<>(Outcome.Verdict.class);
        for (EntryWorking working : materials.workings().entries()) {
            working.entry().verdict().ifPresent(verdict -> counts.merge(verdict, 1, Integer::sum));
        }
        List<Choice> choices = Stream.of(Outcome.Verdict.values()).map(verdict -> new Choice(verdict.word(),
                Link.plain(words.name("verdict", verdict)), counts.getOrDefault(verdict, 0))).toList();
        return new ChoiceGroup("verdict", words.say("ask.verdict"), true, false, choices);
    }

    private Verdict mark(Outcome.Verdict verdict) {
        return new Verdict(verdict.word(), words.name("verdict", verdict));
    }

    private List<Link> lists() {
        List<Link> lists = new ArrayList<>();
        lists.add(ways.allEntries());
        for (Shelf shelf : Shelf.values()) {
            lists.add(ways.list(shelf));
        }
        return List.copyOf(lists);
    }

    private static ChoiceGroup newestFirst(ChoiceGroup years) {
        List<Choice> choices = new ArrayList<>(years.choices());
        Collections.sort(choices, (one, other) -> other.id().compareTo(one.id()));
        return new ChoiceGroup(years.part(), years.title(), years.open(), years.plain(), List.copyOf(choices));
    }
}
