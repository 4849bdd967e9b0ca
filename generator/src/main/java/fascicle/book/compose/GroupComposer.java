package fascicle.book.compose;

import fascicle.book.address.Leaf;
import fascicle.book.address.Shelf;
import fascicle.book.page.EntryRow;
import fascicle.book.page.Fact;
import fascicle.book.page.GroupPage;
import fascicle.book.page.GroupRow;
import fascicle.book.page.Markup;
import fascicle.book.page.Scaling;
import fascicle.book.page.Step;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.notebook.Note;
import fascicle.workings.ColourFigures;
import fascicle.workings.Group;
import fascicle.workings.MethodWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pages of what entries have in common, and their rows in lists. */
public final class GroupComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final EntryComposer entries;
    private final ColourComposer colours;

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
        Optional<MethodWorking> method =
                shelf == Shelf.METHODS ? materials.workings().method(leaf.id()) : Optional.empty();
        Optional<Worked> worked = method.map(Worked::of);
        List<Step> steps = worked.map(new RecipeComposer(materials, ways)::steps).orElse(List.of());
        Optional<Scaling> scaling = method.flatMap(found -> new ScalingComposer(materials).of(found.method().id()));
        List<EntryRow> rows = group.map(found -> found.entries().stream().map(entries::row).toList()).orElse(List.of());
        ThingComposer things = new ThingComposer(materials, ways);
        return new GroupPage(ways.frame(ways.list(shelf), leaf.title()), words.say("kind." + shelf.kind().word()),
                worked.flatMap(found -> Cautions.of(found, materials)), things.facts(shelf, leaf.id()),
                group.map(this::counts).orElse(List.of()), swatch(shelf, leaf, group),
                group.flatMap(Group::start).map(this::start), steps, scaling,
                notes(things.notes(shelf, leaf.id())), rows);
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

    private Optional<Markup> swatch(Shelf shelf, Leaf leaf, Optional<Group> group) {
        if (shelf == Shelf.LOTS) {
            return materials.index().bareColour(leaf.id()).map(colours::bareSwatch);
        }
        return group.flatMap(Group::median).map(median -> colours.single(Optional.of(median)).large());
    }

    private GroupPage.Start start(Group.Start start) {
        return new GroupPage.Start(ways.entry(start.entry()), words.say("start.days", start.days()));
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
