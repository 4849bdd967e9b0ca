package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.caution.CautionWords;
import fascicle.book.caution.Heed;
import fascicle.book.figures.Figures;
import fascicle.book.page.EntryNote;
import fascicle.book.page.EntryPage;
import fascicle.book.page.EntryRow;
import fascicle.book.page.Fact;
import fascicle.book.page.Frame;
import fascicle.book.page.Link;
import fascicle.book.words.Words;
import fascicle.notebook.Entry;
import fascicle.notebook.Fastness;
import fascicle.notebook.Kept;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Outcome;
import fascicle.notebook.WindowReading;
import fascicle.workings.Difference;
import fascicle.workings.EntryWorking;
import fascicle.workings.Fading;
import fascicle.workings.PartFigures;
import fascicle.workings.RubFigures;
import fascicle.workings.care.Hazard;
import fascicle.workings.care.Hazards;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An entry's page, and its row in a table. */
public final class EntryComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;
    private final ColourComposer colours;
    private final Outcomes outcomes;
    private final Optional<StockWords> stock;

    /**
     * Composes pages of entries.
     *
     * @param materials what pages are made from
     */
    public EntryComposer(Materials materials) {
        this(materials, Ways.fromFolder(materials));
    }

    EntryComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.figures = materials.figures();
        this.colours = new ColourComposer(materials, ways);
        this.outcomes = new Outcomes(words);
        this.stock = materials.stock().map(shelf -> new StockWords(materials, shelf));
    }

    /**
     * The page of an entry.
     *
     * @param working the entry and its figures
     * @return what the page says
     */
    public EntryPage page(EntryWorking working) {
        Entry entry = working.entry();
        Worked worked = Worked.of(working, materials.acidities());
        Frame frame = ways.frame(ways.allEntries(), entry.called());
        NearbyComposer nearby = new NearbyComposer(materials, ways);
        List<Hazard> hazards = Hazards.of(materials.care().uses(entry.recipe()));
        return new EntryPage(frame, entry.tag().map(Noted::value), day(entry), outcomes.sentence(entry),
                outcomes.rest(entry), nearby.again(working), colours.specimens(working),
                materials.gist().line(working), new DepartureComposer(materials, ways).of(working),
                new ScalingComposer(materials).of(entry.id(), entry.recipe()),
                CautionWords.of(hazards, words), Heed.of(hazards, words),
                new PhotographComposer(materials, ways).of(entry), result(working),
                colours.readings(entry.colour()), needles(working), new RecipeComposer(materials, ways).steps(worked),
                new ChainComposer(materials, ways).of(working),
                new HeatComposer(materials).ofEntry(working),
                new ClockComposer(materials).ofEntry(working),
                later(working), new FadingComposer(materials).of(working),
                entry.notes().stream().filter(note -> !note.isBlank())
                        .map(note -> materials.prose().html(note, ways.root())).toList(),
                nearby.of(working), ties(working));
    }

    /** An entry in a few words. */
    EntryNote note(EntryWorking working) {
        return new EntryNote(colours.swatch(working).small(), ways.entry(working), day(working.entry()),
                outcomes.verdict(working.entry()), materials.gist().line(working));
    }

    /** An entry's row in a list; many lists hold the same row. */
    EntryRow row(EntryWorking working) {
        return materials.row(ways.root() + working.id(), () -> drawnRow(working));
    }

    private EntryRow drawnRow(EntryWorking working) {
        Entry entry = working.entry();
        return new EntryRow(colours.swatch(working).small(), ways.entry(working), entry.tag().map(Noted::value),
                day(entry), outcomes.verdict(entry), working.colour().map(colour -> colour.name().name()),
                materials.gist().line(working));
    }

    private Facts facts() {
        return new Facts(materials, ways);
    }

    private Link day(Entry entry) {
        return ways.to(Shelf.DAYS, entry.date().toString());
    }

    private List<Fact> result(EntryWorking working) {
        Facts facts = facts();
        working.colour().ifPresent(colour -> colours.facts(facts, colour));
        working.entry().target().ifPresent(target ->
                facts.fact(colours.reading(words.say("fact.target"), target)));
        working.entry().outcome().ifPresent(outcome -> facts
                .noted("fact.evenness", outcome.evenness(), evenness -> words.say("evenness", evenness.value()))
                .word("fact.feel", "feel", outcome.feel())
                .links("fact.faults", outcome.faults().stream().map(this::fault).toList()));
        return facts.facts();
    }

    private Link fault(Noted<Outcome.Fault> fault) {
        return Link.plain(words.name("fault", fault.value()));
    }

    private List<Fact> needles(EntryWorking working) {
        Needles needles = working.entry().needles();
        Facts facts = facts()
                .link("fact.lot", working.needles().lot().map(lot -> ways.to(Shelf.LOTS, lot.id())))
                .known("fact.species", working.needles().species())
                .link("fact.condition", working.needles().condition().map(id -> ways.condition(id)))
                .known("fact.weight", figures.amount(working.needles().grams(), "g", working.needles().about()))
                .word("fact.weighed", "weighed", needles.weighed())
                .written("fact.bundles", needles.bundles())
                .word("fact.sheaths", "sheaths", needles.sheaths())
                .link("fact.dyed-before", needles.from().map(from -> ways.entry(from.value())));
        stock.ifPresent(said -> said.cost(facts, working));
        return facts.facts();
    }

    private List<Fact> later(EntryWorking working) {
        Entry entry = working.entry();
        Facts facts = facts();
        entry.fastness().ifPresent(fastness -> facts.known("fact.rub-dry", fastness.rubDry().map(this::rub))
                .known("fact.rub-wet", fastness.rubWet().map(this::rub)));
        working.fading().forEach(fading -> facts.fact(window(fading)));
        entry.glass().ifPresent(glass -> {
            glass.plain().ifPresent(reading -> facts.fact(colours.reading(words.say("fact.glass-plain"), reading)));
            glass.before().ifPresent(reading -> facts.fact(colours.reading(words.say("fact.glass-before"), reading)));
            glass.after().ifPresent(reading -> facts.fact(colours.reading(words.say("fact.glass-after"), reading)));
            GlassComposer glasses = new GlassComposer(materials);
            glasses.diluted(facts, glass.diluted());
            facts.written("fact.glass-left", glass.left());
            working.uptake().ifPresent(uptake -> glasses.uptake(facts, uptake));
        });
        stock.ifPresent(said -> {
            entry.kept().ifPresent(kept -> kept(facts, kept));
            said.kept(facts, working);
        });
        return facts.facts();
    }

    /** A stain's grade, what it means, and how it was found where the maker did not grade it herself. */
    private String rub(Fastness.Rub rub) {
        RubFigures figured = RubFigures.of(rub);
        return figured.grade().map(grade -> figured.read().map(read -> words.say("rub.read", grade,
                        figures.told(read), words.say("rub.grade-" + grade)))
                .orElseGet(() -> words.say("rub.graded", grade, words.say("rub.grade-" + grade))))
                .orElseGet(() -> words.say("rub.unknown"));
    }

    private Fact window(Fading fading) {
        WindowReading window = fading.window();
        Fact fact = colours.reading(words.say("fact.window", window.after().written()), window.reading());
        List<Link> values = new ArrayList<>(fact.values());
        fading.faded().ifPresent(faded -> values.add(Link.plain(
                words.say(faded.tells() ? "window.faded" : "window.same", figures.difference(faded)))));
        fading.grade().ifPresent(grade -> values.add(Link.plain(fading.faded().filter(Difference::tells).isPresent()
                ? words.say("window.grade", grade, words.say("window.grade-" + grade))
                : words.say("window.unsure", grade))));
        window.wool().ifPresent(wool -> values.add(Link.plain(words.say("window.wool", wool.value()))));
        return new Fact(fact.label(), List.copyOf(values), fact.whence());
    }

    private void kept(Facts facts, Kept kept) {
        facts.written("fact.kept", kept.weight()).word("fact.kept-how", "kept", kept.how())
                .noted("fact.kept-since", kept.since(), since -> figures.date(since.value()));
        for (Kept.Use use : kept.used()) {
            facts.written("fact.used", use.weight()).written("fact.used-in", use.in());
        }
    }

    private List<Fact> ties(EntryWorking working) {
        Entry entry = working.entry();
        return facts()
                .link("fact.day", Optional.of(day(entry)))
                .links("fact.method", materials.workings().followed(working).stream()
                        .map(method -> ways.to(Shelf.METHODS, method)).toList())
                .link("fact.lot", working.needles().lot().map(lot -> ways.to(Shelf.LOTS, lot.id())))
                .links("fact.dyes", working.parts().map(PartFigures::is).distinct()
                        .map(dye -> ways.to(Shelf.DYES, dye)).toList())
                .link("fact.condition", working.needles().condition().map(id -> ways.condition(id)))
                .link("fact.family", working.colour().map(colour -> ways.to(Shelf.FAMILIES,
                        colour.name().family().toLowerCase(Locale.ROOT).replace(' ', '-'))))
                .link("fact.year", Optional.of(ways.to(Shelf.YEARS, String.valueOf(entry.date().getYear()))))
                .link("fact.dyed-before", entry.needles().from().map(from -> ways.entry(from.value())))
                .links("fact.dyed-again", materials.ties().dyedAgain(entry.id()).stream().map(ways::entry).toList())
                .link("fact.reuses", entry.recipe().bath().reuses().map(id -> ways.entry(id.value())))
                .links("fact.used-again", materials.ties().usedAgain(entry.id()).stream().map(ways::entry).toList())
                .links("fact.compared", materials.ties().comparedWith(working).stream().map(ways::entry).toList())
                .facts();
    }
}
