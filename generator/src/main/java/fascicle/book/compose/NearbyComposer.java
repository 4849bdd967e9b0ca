package fascicle.book.compose;

import fascicle.book.page.Link;
import fascicle.book.page.Nearby;
import fascicle.book.words.Words;
import fascicle.colour.Lab;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.Neighbours;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** What stands next to an entry: in colour, in time, and by recipe. */
final class NearbyComposer {

    private static final int ALIKE = 5;

    /** Beside the batches of a reused bath there are fewer, so that the page stays light enough for an old phone. */
    private static final int ALIKE_BESIDE_BATCHES = 3;

    /** A page does not grow with the notebook: of many repeats the newest are named. */
    private static final int NAMED = 12;

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final ColourComposer colours;
    private final Neighbours neighbours;

    NearbyComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.colours = new ColourComposer(materials, ways);
        this.neighbours = materials.workings().neighbours();
    }

    /** What stands next to an entry. */
    Nearby of(EntryWorking working) {
        int most = materials.chains().chain(working).isPresent() ? ALIKE_BESIDE_BATCHES : ALIKE;
        return new Nearby(neighbours.alike(working, most).stream().map(alike -> alike(working, alike.entry())).toList(),
                working.colour().map(ColourFigures::lab).map(this::moreLike),
                neighbours.previous(working).map(ways::entry), neighbours.next(working).map(ways::entry),
                others(neighbours.repeats(working).map(Neighbours.Repeats::entries).orElse(List.of()), working),
                others(neighbours.day(working), working));
    }

    /** How often the same recipe worked; nothing where it was made once. */
    Optional<String> again(EntryWorking working) {
        return neighbours.repeats(working).filter(repeats -> repeats.entries().size() > 1)
                .map(Neighbours.Repeats::days).filter(days -> days.share().isPresent())
                .map(days -> words.say("repeats.share", new Shares(words).of(days)));
    }

    private Nearby.Alike alike(EntryWorking working, EntryWorking near) {
        return new Nearby.Alike(colours.swatch(near).small(), ways.entry(near),
                working.colour().flatMap(colour -> near.colour().map(colour::from))
                        .map(materials.figures()::difference).orElse(""), new Outcomes(words).verdict(near.entry()));
    }

    private Link moreLike(Lab colour) {
        return ways.lookUp(words.say("look-up.more-like"), "near", colour.toRgb().hex().substring(1));
    }

    /** The newest of some entries, oldest first, but for one. */
    private Nearby.Others others(List<EntryWorking> all, EntryWorking itself) {
        List<Link> named = new ArrayList<>();
        for (int place = all.size() - 1; place >= 0 && named.size() < NAMED; place--) {
            if (!all.get(place).id().equals(itself.id())) {
                named.add(ways.entry(all.get(place)));
            }
        }
        Collections.reverse(named);
        int left = all.size() - 1 - named.size();
        return new Nearby.Others(List.copyOf(named),
                left > 0 ? Optional.of(words.say("more", left)) : Optional.empty());
    }
}
