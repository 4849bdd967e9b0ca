package fascicle.workings;

import fascicle.bath.Basin;
import fascicle.colour.Lab;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;
import fascicle.notebook.Cover;
import fascicle.notebook.Dye;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Place;
import fascicle.notebook.Reading;
import fascicle.notebook.Vessel;
import fascicle.workings.proof.Proofreading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A small notebook in the making: what stands on a maker's room, and drafts of what was done with it. */
final class Workroom {

    private final Kitchen kitchen;
    private Map<String, String> conditions = Map.of();
    private Optional<Noted<Quantity>> dampKeeps = Optional.empty();
    private final List<NeedleLot> lots = new ArrayList<>();
    private final List<Dye> dyes = new ArrayList<>();
    private final List<Vessel> vessels = new ArrayList<>();
    private final List<Draft> methods = new ArrayList<>();
    private final List<Draft> unshown = new ArrayList<>();
    private final List<Draft> entries = new ArrayList<>();

    Workroom(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** A dye, salt and vinegar, as the plan's example has them. */
    static Workroom usual() {
        return new Workroom(Kitchen.METRIC)
                .thing("brick", Dye.Kind.DYE, Dye.Form.POWDER)
                .thing("salt", Dye.Kind.SALT, Dye.Form.CRYSTALS)
                .thing("white-vinegar", Dye.Kind.ACID, Dye.Form.LIQUID);
    }

    Draft entry(String id) {
        Draft draft = new Draft(id, kitchen);
        entries.add(draft);
        return draft;
    }

    Draft method(String id) {
        Draft draft = new Draft(id, kitchen);
        methods.add(draft);
        return draft;
    }

    /** A method that lends to entries and is not shown itself. */
    Draft unshownMethod(String id) {
        Draft draft = new Draft(id, kitchen);
        unshown.add(draft);
        return draft;
    }

    Workroom conditions(Map<String, String> own) {
        conditions = own;
        return this;
    }

    Workroom dampKeeps(String time) {
        dampKeeps = Optional.of(note(quantity(time, Dimension.TIME, kitchen), time, Place.of("notebook.yaml")));
        return this;
    }

    Workroom thing(String id, Dye.Kind kind, Dye.Form form) {
        return thing(new Label(id).kind(kind).form(form));
    }

    Workroom thing(Label label) {
        dyes.add(label.dye(kitchen));
        return this;
    }

    Workroom lot(String id, String condition) {
        return lot(id, condition, "", "", List.of());
    }

    /** A lot; an empty text leaves its key out, and ten bundles are weighed together. */
    Workroom lot(String id, String condition, String weight, String tenBundles, List<Lab> colour) {
        Place place = Place.of(id + ".md");
        lots.add(new NeedleLot(id, place, Optional.empty(), Edition.STUDIO, Optional.empty(),
                Optional.of(note(condition, condition, place)),
                Optional.of(note(LocalDate.parse("2025-10-04"), "2025-10-04", place)), Optional.empty(),
                mass(weight, kitchen, place), mass(tenBundles, kitchen, place)
                        .map(weighed -> new NeedleLot.Bundle(weighed, note(10.0, "10", place))),
                colour.stream().map(lab -> new Reading(new Reading.Metered(lab, ""), false, place)).toList(),
                List.of(), List.of()));
        return this;
    }

    Workroom vessel(String id, Basin basin) {
        vessels.add(new Vessel(id, Place.of("vessels.yaml"), Optional.empty(), Optional.of(basin), Optional.empty(),
                Optional.empty(), Optional.empty()));
        return this;
    }

    Workings workings() {
        Cover unsaid = Cover.UNSAID;
        Cover cover = new Cover(unsaid.title(), unsaid.maker(), unsaid.language(), kitchen, true, unsaid.balance(),
                unsaid.alkalinity(), unsaid.ph(), unsaid.height(), unsaid.currency(), dampKeeps,
                unsaid.theme(), conditions, unsaid.address(), unsaid.weights(), unsaid.photoUncertainty());
        List<Method> shown = methods.stream().map(Draft::method).toList();
        List<Method> all = Stream.concat(shown.stream(), unshown.stream().map(Draft::method)).toList();
        return Workings.of(new Notebook(cover, List.copyOf(lots), List.copyOf(dyes), List.copyOf(vessels), shown,
                List.of(), entries.stream().map(Draft::entry).sorted(Comparator.comparing(Entry::id)).toList(),
                List.of(), new Notebook.Shelf(List.copyOf(dyes), List.copyOf(vessels), all)));
    }

    EntryWorking worked(String id) {
        return workings().entry(id).orElseThrow();
    }

    /** The findings in words. */
    List<String> findings() {
        return Proofreading.of(workings().notebook(), List.of()).findings().stream().map(Finding::toString).toList();
    }

    private static Optional<Noted<Quantity>> size(String text, Kitchen kitchen, Place place) {
        return text.endsWith(" mL")
                ? Optional.of(note(quantity(text, Dimension.VOLUME, kitchen), text, place))
                : mass(text, kitchen, place);
    }

    private static Optional<Noted<Quantity>> mass(String text, Kitchen kitchen, Place place) {
        return text.isEmpty() ? Optional.empty()
                : Optional.of(note(quantity(text, Dimension.MASS, kitchen), text, place));
    }

    private static Quantity quantity(String text, Dimension dimension, Kitchen kitchen) {
        try {
            return Quantity.read(text, dimension, kitchen);
        } catch (UnreadableQuantity unreadable) {
            throw new IllegalArgumentException(unreadable);
        }
    }

    private static <T> Noted<T> note(T value, String written, Place place) {
        return new Noted<>(value, written, place, Origin.OWN);
    }

    /** What a jar on the room says of its content. */
    static final class Label {

        private final String id;
        private final Place place;
        private Optional<Noted<Dye.Kind>> kind = Optional.empty();
        private Optional<Noted<Dye.Form>> form = Optional.empty();
        private Optional<Noted<Double>> acidity = Optional.empty();
        private Optional<Noted<Double>> density = Optional.empty();
        private String levelTeaspoon = "";
        private String holds = "";
        private double packs;
        private Optional<Noted<LocalDate>> on = Optional.empty();
        private Optional<Noted<Double>> price = Optional.empty();

        Label(String id) {
            this.id = id;
            place = Place.of(id + ".md");
        }

        Label kind(Dye.Kind said) {
            kind = Optional.of(note(said, said.word(), place));
            return this;
        }

        Label form(Dye.Form said) {
            form = Optional.of(note(said, said.word(), place));
            return this;
        }

        Label acidity(double percent) {
            acidity = Optional.of(note(percent, percent + " %", place));
            return this;
        }

        Label density(double gramsPerMillilitre) {
            density = Optional.of(note(gramsPerMillilitre, gramsPerMillilitre + " g/mL", place));
            return this;
        }

        Label levelTeaspoon(String weight) {
            levelTeaspoon = weight;
            return this;
        }

        Label pack(String contents, double bought) {
            holds = contents;
            packs = bought;
            return this;
        }

        Label on(String date) {
            on = Optional.of(note(LocalDate.parse(date), date, place));
            return this;
        }

        Label price(double ofAPack) {
            price = Optional.of(note(ofAPack, "" + ofAPack, place));
            return this;
        }

        Dye dye(Kitchen kitchen) {
            Optional<Dye.Pack> pack = size(holds, kitchen, place)
                    .map(contents -> new Dye.Pack(Optional.of(contents), price));
            List<Dye.Purchase> bought = packs == 0 ? List.of()
                    : List.of(new Dye.Purchase(on, Optional.of(note(packs, "" + packs, place))));
            return new Dye(id, place, Optional.empty(), Edition.STUDIO, kind, Optional.empty(), form, acidity,
                    Optional.empty(), Optional.empty(), mass(levelTeaspoon, kitchen, place)
                            .map(weight -> new Dye.LevelTeaspoon(weight, Optional.empty())),
                    density, pack, bought, Optional.empty(), List.of(), List.of());
        }
    }
}
