package fascicle.workings;

import fascicle.bath.Batch;
import fascicle.bath.Dose;
import fascicle.bath.Magnitude;
import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.Glass;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Origin;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import fascicle.notebook.Water;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Works out the recipes of a notebook.
 *
 * <p>An amount taken from a method was written for that method's own weight and liquor, however many methods lie
 * between; so each method is worked out first, and its amounts grow from there.
 */
final class Recipes {

    private final Notebook notebook;
    private final Map<String, Dye> dyes;
    private final Map<String, Vessel> vessels;
    private final Map<String, Method> methods;
    private final Map<String, Entry> entries;
    private final Map<String, WorkedRecipe> workedMethods = new HashMap<>();
    private final Set<String> inHand = new HashSet<>();

    Recipes(Notebook notebook) {
        this.notebook = notebook;
        dyes = Notebook.byId(notebook.shelf().dyes(), Dye::id);
        vessels = Notebook.byId(notebook.shelf().vessels(), Vessel::id);
        methods = Notebook.byId(notebook.shelf().methods(), Method::id);
        entries = Notebook.byId(notebook.entries(), Entry::id);
        // All at once, so that whoever asks later only reads.
        notebook.shelf().methods().forEach(this::ofMethod);
    }

    /** An entry's recipe, for its dry needles in g. */
    WorkedRecipe ofEntry(Entry entry, Magnitude needles) {
        return work(entry.recipe(), needles, entry.id());
    }

    /** The recipe of a method on the shelf, for the weight its amounts are for. */
    private WorkedRecipe ofMethod(Method method) {
        String key = Ids.key(method.id());
        WorkedRecipe known = workedMethods.get(key);
        if (known == null) {
            inHand.add(key);
            known = work(method.recipe(), weight(method), method.id());
            inHand.remove(key);
            workedMethods.put(key, known);
        }
        return known;
    }

    /**
     * A method's recipe as it is shown, for the weight its amounts are for. It may be less than what entries that
     * follow the method rest on.
     */
    WorkedRecipe ofShown(Method method) {
        return work(method.recipe(), weight(method), method.id());
    }

    /** The weight that a method's amounts are for, in g. */
    static Magnitude weight(Method method) {
        return method.forWeight().map(noted -> Substance.size(noted.value())).filter(size -> size.orThrow() > 0)
                .orElse(Magnitude.UNKNOWN);
    }

    /** What a part of a recipe names. */
    Substance thing(Part part) {
        Optional<Dye> dye = Optional.ofNullable(dyes.get(Ids.key(part.is().value())));
        return new Substance(dye.map(Dye::id).orElse(part.is().value()), dye, notebook.cover().kitchen());
    }

    /** The vessel of a recipe, if it names one that there is. */
    Optional<Vessel> vessel(Recipe recipe) {
        return recipe.bath().vessel().flatMap(noted -> Optional.ofNullable(vessels.get(Ids.key(noted.value()))));
    }

    private WorkedRecipe work(Recipe recipe, Magnitude needles, String id) {
        Mixture bath = bath(recipe, needles, id).reusing(recipe.bath().reuses().isPresent())
                .drawing(recipe.bath().extract().map(plant -> drawn(plant, needles, id)));
        // A finish has no litres, so what is written for each litre is nothing that anyone could weigh out.
        List<Line> finish = lines(recipe.finish(), false, id, source -> Optional.of(source.bath())).stream()
                .map(line -> line.goesByTheLitre() ? line.unknown() : line).toList();
        return new WorkedRecipe(bath, recipe.presoak().map(presoak -> presoak(presoak, needles, id)),
                treatments(recipe.before(), needles, id, WorkedRecipe::before),
                treatments(recipe.after(), needles, id, WorkedRecipe::after), finish);
    }

    private Mixture bath(Recipe recipe, Magnitude needles, String id) {
        Bath bath = recipe.bath();
        List<Line> dye = lines(bath.dye(), true, id, source -> Optional.of(source.bath()));
        List<Line> others = lines(bath.assistants(), false, id, source -> Optional.of(source.bath()));
        Magnitude standing = standing(bath);
        // A bath that was there already was not poured as the method says.
        Optional<Noted<Water>> given = bath.water().filter(water -> bath.reuses().isEmpty()
                || !(water.value() instanceof Water.Poured) || isWrittenFor(water.origin(), id));
        if (given.isEmpty()) {
            return bath.reuses().isPresent()
                    ? Mixture.poured(Magnitude.ZERO, standing, needles, dye, others).withoutWater()
                    : Mixture.poured(Magnitude.UNKNOWN, standing, needles, dye, others);
        }
        Noted<Water> water = given.get();
        if (water.value() instanceof Water.ByRatio ratio) {
            return Mixture.byRatio(Magnitude.of(ratio.millilitresPerGram()), standing, needles, dye, others);
        }
        if (water.value() instanceof Water.ByDepth depth) {
            return Mixture.filled(volume(recipe, depth.depth()), standing, needles, dye, others).toThisDepth();
        }
        Optional<Method> from = lender(water.origin(), id);
        if (from.isPresent()) {
            Magnitude ratio = worked(from.get()).map(source -> source.bath().ratio()).orElse(Magnitude.UNKNOWN);
            return Mixture.byRatio(ratio, standing, needles, dye, others);
        }
        Magnitude poured = water.value() instanceof Water.Poured own && isWrittenFor(water.origin(), id)
                ? Substance.size(own.volume())
                : Magnitude.UNKNOWN;
        return Mixture.poured(poured, standing, needles, dye, others);
    }

    /** What the bath before left in the pot, in mL: nothing in a fresh bath. */
    private Magnitude standing(Bath bath) {
        if (bath.reuses().isEmpty()) {
            return Magnitude.ZERO;
        }
        return Optional.ofNullable(entries.get(Ids.key(bath.reuses().get().value()))).flatMap(Entry::glass)
                .flatMap(Glass::measuredLeft).map(noted -> Substance.size(noted.value())).orElse(Magnitude.UNKNOWN);
    }

    private Magnitude volume(Recipe recipe, Quantity depth) {
        return vessel(recipe).flatMap(Vessel::basin)
                .map(basin -> Magnitude.of(basin.millilitres(depth.value()), depth.about()))
                .orElse(Magnitude.UNKNOWN);
    }

    private Drawn drawn(Bath.Extract extract, Magnitude needles, String id) {
        return new Drawn(extract.of().map(plant -> writtenFor(plant, needles, id)).orElse(Magnitude.UNKNOWN),
                extract.water().map(water -> writtenFor(water, needles, id)).orElse(Magnitude.UNKNOWN));
    }

    /** A quantity in its base unit; one taken from a method grows or shrinks with the needles. */
    private Magnitude writtenFor(Noted<Quantity> noted, Magnitude needles, String id) {
        Magnitude written = Substance.size(noted.value());
        return isWrittenFor(noted.origin(), id)
                ? written
                : written.over(lender(noted.origin(), id).map(Recipes::weight).orElse(Magnitude.UNKNOWN))
                        .times(needles);
    }

    private Soak presoak(Recipe.Presoak presoak, Magnitude needles, String id) {
        boolean shared = presoak.origin() instanceof Origin.Shared;
        return new Soak(Optional.empty(), soak(presoak.water(), presoak.with(), shared ? Magnitude.UNKNOWN : needles,
                id, source -> source.presoak().map(Soak::mixture)), shared);
    }

    private List<Soak> treatments(List<Recipe.Treatment> treatments, Magnitude needles, String id,
            Function<WorkedRecipe, List<Soak>> same) {
        return IntStream.range(0, treatments.size()).mapToObj(index -> {
            Recipe.Treatment treatment = treatments.get(index);
            // A list is taken over whole, so the lender's treatment stands at the same place.
            Mixture mixture = soak(treatment.water(), treatment.with(), needles, id,
                    source -> same.apply(source).stream().skip(index).findFirst().map(Soak::mixture));
            return new Soak(treatment.as().map(Noted::written), mixture, false);
        }).toList();
    }

    private Mixture soak(Optional<Noted<Quantity>> water, List<Part> with, Magnitude needles, String id,
            Function<WorkedRecipe, Optional<Mixture>> same) {
        List<Line> lines = lines(with, false, id, same);
        Magnitude poured = water.map(noted -> writtenFor(noted, needles, id)).orElse(Magnitude.UNKNOWN);
        return Mixture.poured(poured, Magnitude.ZERO, needles, List.of(), lines);
    }

    private List<Line> lines(List<Part> parts, boolean amongDyes, String id,
            Function<WorkedRecipe, Optional<Mixture>> same) {
        return parts.stream().map(part -> line(part, amongDyes, id, same)).toList();
    }

    /**
     * Understands a line of a recipe.
     *
     * @param id whose recipe it is
     * @param same finds the bath the line stands in among those of the method it was written for
     */
    private Line line(Part part, boolean amongDyes, String id, Function<WorkedRecipe, Optional<Mixture>> same) {
        Substance thing = thing(part);
        Dose dose = thing.dose(Line.amount(part));
        Line line = new Line(part, thing,
                thing.basis(Line.amount(part), part.by().map(Noted::value), amongDyes), dose);
        Origin origin = part.amount().map(Noted::origin).orElse(Origin.OWN);
        if (isWrittenFor(origin, id)) {
            return line;
        }
        Optional<Method> lender = lender(origin, id);
        Batch written = new Batch(lender.map(Recipes::weight).orElse(Magnitude.UNKNOWN),
                lender.flatMap(this::worked).flatMap(same).map(mixture -> mixture.liquor().total())
                        .orElse(Magnitude.UNKNOWN));
        return line.growingFrom(written);
    }

    private static boolean isWrittenFor(Origin origin, String id) {
        return !(origin instanceof Origin.Method method) || Ids.same(method.method(), id);
    }

    /** The method a value was taken from; nothing where it was written here. */
    private Optional<Method> lender(Origin origin, String id) {
        return origin instanceof Origin.Method method && !isWrittenFor(origin, id)
                ? Optional.ofNullable(methods.get(Ids.key(method.method())))
                : Optional.empty();
    }

    /** A lender's recipe; nothing where methods lend to one another in a circle. */
    private Optional<WorkedRecipe> worked(Method method) {
        return inHand.contains(Ids.key(method.id())) ? Optional.empty() : Optional.of(ofMethod(method));
    }
}
