package fascicle.book.compose;

import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.caution.CautionWords;
import fascicle.book.caution.Heed;
import fascicle.book.page.Fact;
import fascicle.book.page.Grid;
import fascicle.book.page.GroupPage;
import fascicle.book.page.GroupRow;
import fascicle.book.page.Hanging;
import fascicle.book.page.Markup;
import fascicle.book.page.Photograph;
import fascicle.book.page.Scaling;
import fascicle.book.page.Step;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.notebook.Note;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.MethodWorking;
import fascicle.workings.care.Hazard;
import fascicle.workings.clock.Work;
import fascicle.workings.grid.SampleString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Pages of what entries have in common, and their rows in lists. */
public final class GroupComposer {

    private static final int BEST = 3;
    private static final int MOST_COLOURS = 24;

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final EntryComposer entries;
    private final ColourComposer colours;
    private final Shares shares;

    /**
     * Composes pages of groups.
     *
     * @param materials what pages are made from
     */
    public GroupComposer(Materials materials) {
        this(materials, Ways.fromFolder(materials));
    }

    GroupComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.entries = new EntryComposer(materials, ways);
        this.colours = new ColourComposer(materials, ways);
        this.shares = new Shares(words);
    }

    /**
     * The page of a group, or of a thing that no entry uses.
     *
     * @param shelf the list it stands on
     * @param leaf its page
     * @return what the page says
     */
    public GroupPage page(Shelf shelf, Leaf leaf) {
        Optional<Group> group = materials.index().group(shelf, leaf.id());
        // One day's pots all stand before the reader: there is nothing to count or to choose.
        Optional<Group> many = group.filter(found -> shelf != Shelf.DAYS);
        Optional<MethodWorking> method =
                shelf == Shelf.METHODS ? materials.workings().method(leaf.id()) : Optional.empty();
        Optional<Worked> worked = method.map(found -> Worked.of(found, materials.acidities()));
        List<Step> steps = worked.map(new RecipeComposer(materials, ways)::steps).orElse(List.of());
        Optional<Scaling> scaling = method.map(found -> found.method())
                .flatMap(found -> new ScalingComposer(materials).of(found.id(), found.recipe()));
        ThingComposer things = new ThingComposer(materials, ways);
        List<Hazard> hazards = things.hazards(shelf, leaf.id());
        return new GroupPage(ways.frame(ways.list(shelf), leaf.title()), shelf.kind().word(),
                many.flatMap(found -> shares.sentence(found.days())),
                many.filter(found -> !found.entries().isEmpty()).map(found ->
                        ways.lookUp(words.say("look-up.these"), shelf.kind().word(), found.id())),
                CautionWords.of(hazards, words), Heed.of(hazards, words), things.facts(shelf, leaf.id()),
                swatch(shelf, leaf), photographs(shelf, leaf), many.flatMap(Group::start).map(this::start),
                many.map(found -> found.best(BEST)).orElse(List.of()).stream().map(entries::note).toList(),
                group.map(found -> new PartedComposer(materials, ways).of(shelf, found)).orElse(List.of()),
                grids(shelf, leaf), many.flatMap(this::colours),
                many.flatMap(found -> new PlotComposer(materials, ways).of(shelf, found)), steps,
                worked.flatMap(found -> new HeatComposer(materials).of(found.recipe(), found.bath())),
                method.flatMap(found -> new ClockComposer(materials)
                        .of(Work.of(found, materials.workings().notebook().cover()))), scaling,
                notes(things.notes(shelf, leaf.id())), group.map(this::counts).orElse(List.of()),
                group.map(found -> new SheafComposer(materials, ways).of(shelf, found)).orElse(List.of()));
    }

    /** The colours of what worked, by hue; of many, as many as fit, spread over all of them. */
    private Optional<GroupPage.Colours> colours(Group group) {
        List<EntryWorking> worked = group.entries().stream()
                .filter(EntryWorking::worked).toList();
        List<EntryWorking> hung = SampleString.HUE.of(worked);
        List<Hanging> colours = new CellComposer(materials, ways).someOf(hung, MOST_COLOURS);
        int left = hung.size() - colours.size();
        return colours.isEmpty() ? Optional.empty() : Optional.of(new GroupPage.Colours(colours,
                left == 0 ? Optional.empty()
                        : Optional.of(ways.lookUp(words.say("more", left), group.kind().word(), group.id()))));
    }

    /** A method's results on each condition; a dye's depths, and what it gave alone and in mixtures. */
    private List<Grid> grids(Shelf shelf, Leaf leaf) {
        GridComposer grids = new GridComposer(materials, ways);
        return switch (shelf) {
            case METHODS -> grids.ofMethod(leaf.id()).stream().toList();
            case DYES -> Stream.concat(new LadderComposer(materials, ways).ofDye(leaf.id()).stream(),
                    grids.ofDye(leaf.id()).stream()).toList();
            case DAYS, LOTS, CONDITIONS, FAMILIES, YEARS -> List.of();
        };
    }

    /** A group's row in a list. */
    GroupRow row(Shelf shelf, Leaf leaf) {
        Optional<Group> group = materials.index().group(shelf, leaf.id());
        Optional<Lab> colour = shelf == Shelf.LOTS
                ? materials.index().bareColour(leaf.id()).map(ColourFigures::lab) : group.flatMap(Group::median);
        Markup swatch = colours.single(colour).small();
        return new GroupRow(swatch, ways.leaf(leaf), group.map(found -> found.entries().size()).orElse(0),
                group.map(found -> inWords(found.days())).orElse(""));
    }

    /** The bare needles of a lot. */
    private Optional<Markup> swatch(Shelf shelf, Leaf leaf) {
        return shelf == Shelf.LOTS ? materials.index().bareColour(leaf.id()).map(colours::bareSwatch)
                : Optional.empty();
    }

    /** The photographs that a lot's colours were read off. */
    private List<Photograph> photographs(Shelf shelf, Leaf leaf) {
        return shelf != Shelf.LOTS ? List.of() : materials.index().lot(leaf.id())
                .map(new PhotographComposer(materials, ways)::of).orElse(List.of());
    }

    private GroupPage.Start start(Group.Start start) {
        return new GroupPage.Start(entries.note(start.entry()), words.say("start.days", start.days()));
    }

    private List<Markup> notes(List<Note> notes) {
        return notes.stream().filter(note -> !note.isBlank())
                .map(note -> materials.prose().html(note, ways.root())).toList();
    }

    private List<Fact> counts(Group group) {
        Facts facts = new Facts(materials, ways);
        facts.known("fact.entries", Optional.of(String.valueOf(group.entries().size())))
                .known("fact.days", Optional.of(String.valueOf(group.days().all())))
                .known("fact.days-worked", Optional.of(String.valueOf(group.days().worked())))
                .known("fact.days-partly", Optional.of(String.valueOf(group.days().partly())))
                .known("fact.days-failed", Optional.of(String.valueOf(group.days().failed())))
                .known("fact.median", group.median().map(colours::figures));
        return facts.facts();
    }

    private String inWords(Group.VerdictDays days) {
        List<String> pieces = new ArrayList<>();
        pieces.add(words.say("days.all", days.all()));
        count(pieces, "days.worked", days.worked());
        count(pieces, "days.partly", days.partly());
        count(pieces, "days.failed", days.failed());
        return String.join(words.say("pieces"), pieces);
    }

    private void count(List<String> pieces, String key, int days) {
        if (days > 0) {
            pieces.add(words.say(key, days));
        }
    }
}
