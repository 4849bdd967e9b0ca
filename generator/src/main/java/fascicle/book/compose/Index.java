package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.notebook.Conditions;
import fascicle.notebook.Day;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Vessel;
import fascicle.workings.ColourFigures;
import fascicle.workings.Group;
import fascicle.workings.LotWorking;
import fascicle.workings.Workings;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What pages look up, by id in any case, however large the notebook is. */
final class Index {

    private final Map<String, Dye> dyes;
    private final Map<String, Vessel> vessels;
    private final Map<String, LotWorking> lots;
    private final Conditions conditions;
    private final Map<LocalDate, Day> days = new HashMap<>();
    private final Map<Shelf, Map<String, Group>> groups = new EnumMap<>(Shelf.class);

    Index(Workings workings) {
        Notebook notebook = workings.notebook();
        dyes = Notebook.byId(notebook.dyes(), Dye::id);
        vessels = Notebook.byId(notebook.vessels(), Vessel::id);
        lots = Notebook.byId(workings.lots(), working -> working.lot().id());
        conditions = Conditions.of(notebook.cover());
        notebook.days().forEach(day -> days.put(day.date(), day));
        for (Shelf shelf : Shelf.values()) {
            groups.put(shelf, Notebook.byId(workings.groups(shelf.kind()), Group::id));
        }
    }

    Optional<Dye> dye(String id) {
        return Optional.ofNullable(dyes.get(Ids.key(id)));
    }

    Optional<Vessel> vessel(String id) {
        return Optional.ofNullable(vessels.get(Ids.key(id)));
    }

    Optional<NeedleLot> lot(String id) {
        return Optional.ofNullable(lots.get(Ids.key(id))).map(LotWorking::lot);
    }

    /** The bare colour of a lot. */
    Optional<ColourFigures> bareColour(String lot) {
        return Optional.ofNullable(lots.get(Ids.key(lot))).flatMap(LotWorking::colour);
    }

    /** A condition in words; its id where the notebook does not know it. */
    String condition(String id) {
        return conditions.find(id).map(Conditions.Condition::title).orElse(id);
    }

    /** What was written of a whole day. */
    Optional<Day> day(LocalDate date) {
        return Optional.ofNullable(days.get(date));
    }

    Optional<Group> group(Shelf shelf, String id) {
        return Optional.ofNullable(groups.getOrDefault(shelf, Map.of()).get(Ids.key(id)));
    }
}
