package fascicle.cli;

import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Vessel;
import fascicle.notebook.read.Suggestion;
import java.util.List;

/** The vessels that a call may name. */
final class KnownVessels {

    private KnownVessels() {}

    /** The vessel of an id; a wrong call where there is none. */
    static Vessel find(Notebook read, String named) {
        List<String> known = read.vessels().stream().map(Vessel::id).toList();
        return read.vessels().stream().filter(vessel -> Ids.same(vessel.id(), named)).findFirst()
                .orElseThrow(() -> new WrongCall("There is no vessel “" + named + "”"
                        + Suggestion.of(named, known).map(near -> "; did you mean “" + near + "”?")
                                .orElse(known.isEmpty() ? "; vessels.yaml names no vessel yet."
                                        : "; vessels.yaml has " + String.join(", ", known) + ".")));
    }
}
