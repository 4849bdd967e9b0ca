package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.gist.Gist;
import fascicle.book.page.GroupPage;
import fascicle.book.words.Words;
import fascicle.notebook.Ids;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A group's entries by something else: a method's by condition, a lot's by dye. */
final class PartedComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final ColourComposer colours;
    private final Gist gist;

    PartedComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.colours = new ColourComposer(materials, ways);
        this.gist = materials.gist();
    }

    /** The tables of a group's page. */
    List<GroupPage.Parted> of(Shelf shelf, Group group) {
        return switch (shelf) {
            case METHODS, DYES, FAMILIES, YEARS -> tables(parted(group, Shelf.CONDITIONS, part -> true));
            case LOTS, CONDITIONS -> tables(parted(group, Shelf.METHODS, part -> true),
                    parted(group, Shelf.DYES, PartedComposer::colours));
            case DAYS -> List.of();
        };
    }

    private static List<GroupPage.Parted> tables(GroupPage.Parted... all) {
        List<GroupPage.Parted> filled = new ArrayList<>(List.of(all));
        filled.removeIf(table -> table.parts().isEmpty());
        return List.copyOf(filled);
    }

    private GroupPage.Parted parted(Group group, Shelf by, Predicate<Group> kept) {
        return new GroupPage.Parted(words.say("parted." + by.word()), words.say("kind." + by.kind().word()),
                materials.workings().within(group, by.kind()).stream().filter(kept)
                        .map(part -> part(by, part)).toList());
    }

    /** Whether a thing is used as a dye in any of its entries; what only helps has no table. */
    private static boolean colours(Group thing) {
        return thing.entries().stream().flatMap(entry -> entry.bath().dye().stream())
                .anyMatch(part -> Ids.same(part.is(), thing.id()));
    }

    private GroupPage.Part part(Shelf by, Group part) {
        Optional<EntryWorking> start = part.start().map(Group.Start::entry);
        return new GroupPage.Part(colours.single(part.median()).small(), ways.to(by, part.id()),
                new Shares(words).of(part.days()), part.best(1).stream().findFirst().map(ways::entry),
                start.map(ways::entry), start.map(gist::line),
                part.start().map(found -> words.say("start.days", found.days())));
    }
}
