package fascicle.workings.chain;

import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.Workings;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was in the pots of a notebook's entries, that of the baths before included. */
final class Pots {

    private final Succession succession;
    private final Map<String, Dye> dyes;

    Pots(Workings workings, Succession succession) {
        this.succession = succession;
        dyes = Notebook.byId(workings.notebook().shelf().dyes(), Dye::id);
    }

    /** Whether the first of a path used a bath of which nothing is known. */
    boolean beginInTheDark(List<EntryWorking> path) {
        return succession.isOfUnknownBath(path.get(0));
    }

    /** What the last bath of a path held when everything had gone in. */
    Pot held(List<EntryWorking> path) {
        Pot pot = added(path.get(0));
        for (int place = 1; place < path.size(); place++) {
            EntryWorking entry = path.get(place);
            EntryWorking before = path.get(place - 1);
            pot = pot.after(before, Pot.share(before, Optional.of(entry)), entry.bath()).plus(added(entry));
        }
        return pot;
    }

    private Pot added(EntryWorking entry) {
        Pot added = new Pot(Contents.of(entry.bath().dye()),
                Contents.of(entry.bath().assistants().stream().filter(this::stays).toList()));
        return succession.isOfUnknownBath(entry)
                ? new Pot(added.dye().times(Estimate.UNKNOWN), added.salts().times(Estimate.UNKNOWN)) : added;
    }

    /** Whether a thing stays in the bath but for what the needles carry out: salt and acid do. */
    private boolean stays(PartFigures part) {
        return Optional.ofNullable(dyes.get(Ids.key(part.is()))).flatMap(Dye::kind)
                .filter(kind -> kind.value() == Dye.Kind.SALT || kind.value() == Dye.Kind.ACID).isPresent();
    }
}
