package fascicle.workings;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.colour.Lab;
import fascicle.colour.Rgb;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.UnreadableQuantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Edition;
import fascicle.notebook.Entry;
import fascicle.notebook.Glass;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Kept;
import fascicle.notebook.Method;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Outcome;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Reading;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import fascicle.notebook.Water;
import fascicle.photo.Picture;
import fascicle.photo.Sample;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** An entry or method in the making, written down as a maker would. Every value stands on a line of its own. */
final class Draft {

    final String id;
    private final Kitchen kitchen;
    private Origin origin = Origin.OWN;
    private int line = 1;
    private Needles needles = Needles.UNSAID;
    private Optional<Noted<String>> method = Optional.empty();
    private Optional<Noted<Quantity>> forWeight = Optional.empty();
    private Optional<Noted<String>> vessel = Optional.empty();
    private Optional<Noted<Water>> water = Optional.empty();
    private Optional<Noted<String>> reuses = Optional.empty();
    private Optional<Bath.Ph> ph = Optional.empty();
    private Optional<Recipe.Presoak> presoak = Optional.empty();
    private Optional<Glass> glass = Optional.empty();
    private Optional<Reading> target = Optional.empty();
    private Optional<Kept> kept = Optional.empty();
    private Optional<Noted<Outcome.Verdict>> verdict = Optional.empty();
    private Optional<Noted<Integer>> evenness = Optional.empty();
    private List<Part> dye = new ArrayList<>();
    private List<Part> assistants = new ArrayList<>();
    private final List<Part> finish = new ArrayList<>();
    private final List<Recipe.Treatment> before = new ArrayList<>();
    private final List<HeatStep> heat = new ArrayList<>();
    private final List<Reading> colour = new ArrayList<>();
    private String file;

    Draft(String id, Kitchen kitchen) {
        this.id = id;
        this.kitchen = kitchen;
        file = id + ".md";
    }

    /** Writes what the method lends; what the entry has of its own is written after. */
    Draft takenFrom(String method, Consumer<Draft> recipe) {
        origin = new Origin.Method(method);
        recipe.accept(this);
        origin = Origin.OWN;
        return this;
    }

    Draft written(Consumer<Draft> recipe) {
        recipe.accept(this);
        return this;
    }

    Draft follows(String id) {
        method = noted(id, id);
        return this;
    }

    /** One of several pots in a file. */
    Draft inFile(String shared) {
        file = shared;
        return this;
    }

    Draft forNeedles(String weight) {
        forWeight = mass(weight);
        return this;
    }

    Draft lot(String id) {
        return needles(new Needles(noted(id, id), needles.from(), needles.weight(), needles.bundles(),
                needles.sheaths(), needles.weighed()));
    }

    Draft from(String entry) {
        return needles(new Needles(needles.lot(), noted(entry, entry), needles.weight(), needles.bundles(),
                needles.sheaths(), needles.weighed()));
    }

    Draft weighing(String weight) {
        return needles(new Needles(needles.lot(), needles.from(), mass(weight), needles.bundles(), needles.sheaths(),
                needles.weighed()));
    }

    Draft bundles(double count) {
        return needles(new Needles(needles.lot(), needles.from(), needles.weight(), noted(count, "" + count),
                needles.sheaths(), needles.weighed()));
    }

    Draft weighed(Needles.Weighed state) {
        return needles(new Needles(needles.lot(), needles.from(), needles.weight(), needles.bundles(),
                needles.sheaths(), noted(state, state.word())));
    }

    private Draft needles(Needles changed) {
        needles = changed;
        return this;
    }

    Draft in(String id) {
        vessel = noted(id, id);
        return this;
    }

    Draft water(String volume) {
        water = noted(new Water.Poured(quantity(volume, Dimension.VOLUME)), volume);
        return this;
    }

    Draft ratio(double ratio) {
        water = noted(new Water.ByRatio(ratio), "" + ratio);
        return this;
    }

    Draft depth(String depth) {
        water = noted(new Water.ByDepth(quantity(depth, Dimension.LENGTH)), depth);
        return this;
    }

    Draft reuses(String entry) {
        reuses = noted(entry, entry);
        return this;
    }

    Draft left(String volume) {
        glass = Optional.of(new Glass(Optional.empty(), Optional.empty(), Optional.empty(), Glass.Diluted.NOT,
                noted(quantity(volume, Dimension.VOLUME), volume)));
        return this;
    }

    Draft ph(double reads) {
        ph = Optional.of(new Bath.Ph(note(reads, "" + reads), Optional.empty()));
        return this;
    }

    Draft dye(String is, String amount) {
        dye.add(part(is, amount, Optional.empty()));
        return this;
    }

    Draft with(String is, String amount) {
        assistants.add(part(is, amount, Optional.empty()));
        return this;
    }

    Draft with(String is, String amount, Basis by) {
        assistants.add(part(is, amount, noted(by, by.name())));
        return this;
    }

    /** Assistants of its own in place of what was lent: a list is taken over whole or not at all. */
    Draft withInstead(String is, String amount) {
        assistants = new ArrayList<>();
        return with(is, amount);
    }

    Draft finish(String is, String amount) {
        finish.add(part(is, amount, Optional.empty()));
        return this;
    }

    Draft presoak(String water, String is, String amount) {
        presoak = Optional.of(new Recipe.Presoak(noted(quantity(water, Dimension.VOLUME), water),
                List.of(part(is, amount, Optional.empty())), Optional.empty(), origin));
        return this;
    }

    Draft sharedPresoak(String water, String is, String amount) {
        origin = Origin.SHARED;
        presoak(water, is, amount);
        origin = Origin.OWN;
        return this;
    }

    Draft mordant(String water, String is, String amount) {
        before.add(new Recipe.Treatment(noted(Recipe.Purpose.MORDANT, "mordant"),
                noted(quantity(water, Dimension.VOLUME), water), List.of(part(is, amount, Optional.empty())), List.of(),
                origin));
        return this;
    }

    /** A step of heating; an empty text leaves its key out. */
    Draft heat(String to, String over, String hold) {
        return heat("", to, over, hold);
    }

    Draft heat(String from, String to, String over, String hold) {
        heat.add(new HeatStep(to.isEmpty() ? Optional.empty() : noted(end(to), to),
                from.isEmpty() ? Optional.empty() : noted(quantity(from, Dimension.TEMPERATURE), from),
                span(over), span(hold), Optional.empty()));
        return this;
    }

    Draft lab(double lightness, double a, double b) {
        colour.add(new Reading(new Reading.Metered(new Lab(lightness, a, b), ""), false, place()));
        return this;
    }

    Draft wetLab(double lightness, double a, double b) {
        colour.add(new Reading(new Reading.Metered(new Lab(lightness, a, b), ""), true, place()));
        return this;
    }

    /** Read off a photograph against a grey card, or by eye where there was none. */
    Draft photographed(double lightness, double a, double b, Sample.Against against) {
        Sample sample = new Sample(new Lab(lightness, a, b), against, 1000, 1, 6, OptionalDouble.empty(), List.of());
        colour.add(new Reading(new Reading.Photograph(noted("bench.jpg", "bench.jpg").orElseThrow(), Optional.empty(), Optional.empty(),
                Optional.of(new Reading.Taken("bench.jpg", new Picture("00", 100, 100), List.of(), Optional.of(sample)))),
                false, place()));
        return this;
    }

    Draft hex(String hex) {
        colour.add(new Reading(new Reading.Screen(Rgb.read(hex).orElseThrow()), false, place()));
        return this;
    }

    Draft target(double lightness, double a, double b) {
        target = Optional.of(new Reading(new Reading.Metered(new Lab(lightness, a, b), ""), false, place()));
        return this;
    }

    Draft worked() {
        return verdict(Outcome.Verdict.WORKED);
    }

    Draft verdict(Outcome.Verdict outcome) {
        verdict = noted(outcome, outcome.word());
        return this;
    }

    Draft evenness(int grade) {
        evenness = noted(grade, "" + grade);
        return this;
    }

    Draft keptSince(String date) {
        kept = Optional.of(new Kept(Optional.empty(), Optional.empty(), noted(LocalDate.parse(date), date), List.of()));
        return this;
    }

    /** What was kept; an empty text leaves its key out. */
    Draft kept(String weight, String how, String since) {
        kept = Optional.of(new Kept(weight.isEmpty() ? Optional.empty() : mass(weight),
                how.isEmpty() ? Optional.empty() : noted(Kept.How.valueOf(how.toUpperCase(Locale.ROOT)), how),
                since.isEmpty() ? Optional.empty() : noted(LocalDate.parse(since), since), List.of()));
        return this;
    }

    /** What a basket took of what was kept. */
    Draft used(String weight, String in) {
        Kept before = kept.orElseThrow();
        List<Kept.Use> used = new ArrayList<>(before.used());
        used.add(new Kept.Use(weight.isEmpty() ? Optional.empty() : mass(weight), noted(in, in)));
        kept = Optional.of(new Kept(before.weight(), before.how(), before.since(), List.copyOf(used)));
        return this;
    }

    Entry entry() {
        Optional<Outcome> outcome = verdict.isEmpty() && evenness.isEmpty() ? Optional.empty()
                : Optional.of(new Outcome(verdict, evenness, Optional.empty(), List.of()));
        return new Entry(id, LocalDate.parse(id.substring(0, 10)), id.substring(11), Place.of(file), Optional.empty(),
                Optional.empty(), Edition.STUDIO, method, needles, recipe(), List.copyOf(colour), glass, target,
                outcome, Optional.empty(), List.of(), kept, List.of());
    }

    Method method() {
        return new Method(id, Place.of(file), Optional.empty(), Edition.STUDIO, method, forWeight, Optional.empty(),
                needles, recipe(), target, List.of());
    }

    private Recipe recipe() {
        Bath bath = new Bath(vessel, water, Optional.empty(), List.copyOf(dye), List.copyOf(assistants),
                Optional.empty(), reuses, Optional.empty(), ph);
        return new Recipe(presoak, List.copyOf(before), bath, List.copyOf(heat), Optional.empty(), List.of(),
                Optional.empty(), Optional.empty(), List.copyOf(finish));
    }

    private Part part(String is, String amount, Optional<Noted<Basis>> by) {
        try {
            return new Part(note(is, is), amount.isEmpty() ? Optional.empty()
                    : noted(Amount.read(amount, kitchen), amount), by, Optional.empty());
        } catch (UnreadableQuantity unreadable) {
            throw new IllegalArgumentException(unreadable);
        }
    }

    private HeatStep.To end(String to) {
        for (HeatStep.Look look : HeatStep.Look.values()) {
            if (look.word().equals(to)) {
                return look;
            }
        }
        return new HeatStep.Degrees(quantity(to, Dimension.TEMPERATURE));
    }

    private Optional<Noted<Span>> span(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return noted(text.equals("overnight") ? new Span.Overnight() : new Span.Timed(quantity(text, Dimension.TIME)),
                text);
    }

    private Optional<Noted<Quantity>> mass(String weight) {
        return noted(quantity(weight, Dimension.MASS), weight);
    }

    private Quantity quantity(String text, Dimension dimension) {
        try {
            return Quantity.read(text, dimension, kitchen);
        } catch (UnreadableQuantity unreadable) {
            throw new IllegalArgumentException(unreadable);
        }
    }

    private <T> Optional<Noted<T>> noted(T value, String written) {
        return Optional.of(note(value, written));
    }

    private <T> Noted<T> note(T value, String written) {
        return new Noted<>(value, written, place(), origin);
    }

    private Place place() {
        return new Place(file, ++line, 1);
    }

    /** A figure that must be there. */
    static double known(OptionalDouble figure) {
        return figure.orElseThrow(() -> new AssertionError("the figure is unknown"));
    }
}
