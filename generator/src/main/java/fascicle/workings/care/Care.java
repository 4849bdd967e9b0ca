package fascicle.workings.care;

import fascicle.notebook.Bath;
import fascicle.notebook.Dye;
import fascicle.notebook.Entry;
import fascicle.notebook.HeatStep;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Part;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds what a notebook's recipes use that care depends on. It does not change and may be shared between threads.
 *
 * <p>A bath that is used again still holds what was put into it before, as far as the notebook shows that entry.
 */
public final class Care {

    /** Water this hot burns skin within minutes (from memory), however it was heated. */
    private static final double SCALDS_FROM_CELSIUS = 49;

    private final Map<String, Dye> dyes;
    private final Map<String, Vessel> vessels;
    private final Map<String, Entry> entries;

    private Care(Notebook notebook) {
        dyes = Notebook.byId(notebook.dyes(), Dye::id);
        vessels = Notebook.byId(notebook.vessels(), Vessel::id);
        entries = Notebook.byId(notebook.entries(), Entry::id);
    }

    /**
     * Takes care of a notebook's recipes.
     *
     * @param notebook an edition's notebook
     * @return the care for it
     */
    public static Care of(Notebook notebook) {
        return new Care(notebook);
    }

    /**
     * What a recipe uses, in the vessel that it names.
     *
     * @param recipe an entry's or a method's; its amounts do not matter
     * @return what care depends on; {@link Uses#plus} adds another recipe
     */
    public Uses uses(Recipe recipe) {
        return uses(recipe, recipe.bath().vessel()
                .flatMap(noted -> Optional.ofNullable(vessels.get(Ids.key(noted.value())))));
    }

    /**
     * What a recipe uses, in another vessel.
     *
     * @param recipe an entry's or a method's
     * @param vessel where its bath is made; nothing where that is not known
     * @return what care depends on
     */
    public Uses uses(Recipe recipe, Optional<Vessel> vessel) {
        Bath bath = recipe.bath();
        List<Bath> before = before(bath);
        List<Part> left = before.stream().flatMap(pot -> Stream.of(pot.dye(), pot.assistants())).flatMap(List::stream)
                .toList();
        List<Recipe.Treatment> treatments = Stream.concat(recipe.before().stream(), recipe.after().stream()).toList();
        List<Dye> things = named(Stream.of(recipe.parts(), left));
        List<Dye> added = named(Stream.of(recipe.parts()));
        List<Dye> asDyes = named(Stream.concat(Stream.of(bath), before.stream()).map(Bath::dye));
        List<Uses.Salt> salts = salts(treatments, things);
        List<Dye> unsorted = things.stream().filter(Care::isUnsorted).filter(thing -> !asDyes.contains(thing))
                .filter(thing -> salts.stream().noneMatch(salt -> salt.thing().equals(Optional.of(thing)))).toList();
        boolean dyebath = !bath.equals(Bath.UNSAID);
        boolean named = !bath.dye().isEmpty() || !left.isEmpty() || bath.extract().isPresent();
        boolean colours = dyebath || !salts.isEmpty()
                || treatments.stream().anyMatch(treatment -> is(treatment, Recipe.Purpose.TANNIN))
                || things.stream().anyMatch(Care::mayColour);
        boolean hot = heating(recipe).anyMatch(Care::isHot);
        Strain strain = strain(recipe);
        boolean sourSteam = strain.sour() && isHot(recipe.heat()) || treatments.stream()
                .anyMatch(treatment -> isHot(treatment.heat()) && has(Dye.Kind.ACID, Stream.of(treatment.with())));
        boolean likeADrink = colours && (heating(recipe).anyMatch(HeatStep::isInTheSun)
                || vessel.flatMap(Vessel::madeOf).filter(of -> of.value() == Vessel.Material.GLASS).isPresent());
        return new Uses(things, added, named(Stream.of(recipe.finish())), unsorted, salts, hot, sourSteam, colours,
                dyebath && !named, isUnknown(bath, before), likeADrink,
                vessel.map(pot -> new Uses.Pot(pot, strain)).stream().toList());
    }

    /**
     * What a recipe's dyebath does to whatever vessel it stands in.
     *
     * @param recipe an entry's or a method's
     * @return the same for each vessel
     */
    public Strain strain(Recipe recipe) {
        List<List<Part>> bath = Stream.concat(Stream.of(recipe.bath()), before(recipe.bath()).stream())
                .flatMap(pot -> Stream.of(pot.dye(), pot.assistants())).toList();
        Stream<List<Part>> treatments = Stream.concat(recipe.before().stream(), recipe.after().stream())
                .map(Recipe.Treatment::with);
        return new Strain(has(Dye.Kind.ACID, bath.stream()),
                has(Dye.Kind.ALKALI, Stream.concat(bath.stream(), treatments)), recipe.isHeatedInItsVessel());
    }

    /**
     * What a dye or assistant needs by itself, on the shelf.
     *
     * @param thing the dye or assistant
     * @return what care depends on
     */
    public static Uses uses(Dye thing) {
        boolean metal = Metals.bringsMetal(thing);
        return new Uses(List.of(thing), List.of(thing), List.of(),
                isUnsorted(thing) && !metal ? List.of(thing) : List.of(),
                metal ? List.of(Uses.Salt.of(thing)) : List.of(), false, false, metal || mayColour(thing), false, false,
                false, List.of());
    }

    /** The baths of which something still stands in this one, however many they were. */
    private List<Bath> before(Bath bath) {
        List<Bath> found = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Optional<Bath> before = before(bath, seen);
        while (before.isPresent()) {
            found.add(before.get());
            before = before(before.get(), seen);
        }
        return found;
    }

    /** Whether the first of several baths is one that somebody else made, of which nothing is written here. */
    private boolean isUnknown(Bath bath, List<Bath> before) {
        Bath first = before.isEmpty() ? bath : before.get(before.size() - 1);
        return first.reuses().filter(of -> !entries.containsKey(Ids.key(of.value()))).isPresent();
    }

    private Optional<Bath> before(Bath bath, Set<String> seen) {
        return bath.reuses().map(noted -> Ids.key(noted.value())).filter(seen::add)
                .flatMap(id -> Optional.ofNullable(entries.get(id))).map(entry -> entry.recipe().bath());
    }

    /** What parts name, even where no file tells of it; a gap to be filled names nothing. */
    private List<Dye> named(Stream<List<Part>> parts) {
        Stream<Dye> found = parts.flatMap(List::stream).map(Part::is).filter(is -> !is.value().isEmpty())
                .map(is -> Optional.ofNullable(dyes.get(Ids.key(is.value())))
                        .orElseGet(() -> Dye.unsaid(is.value(), Place.of("dyes/" + is.value() + ".md"))));
        return Uses.each(found, thing -> Ids.key(thing.id()));
    }

    private boolean has(Dye.Kind kind, Stream<List<Part>> parts) {
        return named(parts).stream().anyMatch(thing -> thing.is(kind));
    }

    /** Whether a file tells something of a thing, and not what it is for. */
    private static boolean isUnsorted(Dye thing) {
        return thing.kind().isEmpty() && !thing.saysNothing();
    }

    /** Whether it is a dye, or may be one for all that its file says. */
    private static boolean mayColour(Dye thing) {
        return thing.kind().isEmpty() || thing.is(Dye.Kind.DYE);
    }

    /** Each metal once: what a mordant or iron bath is for tells more of a thing than its name alone. */
    private List<Uses.Salt> salts(List<Recipe.Treatment> treatments, List<Dye> things) {
        return Uses.each(Stream.concat(treatments.stream().flatMap(treatment -> salts(treatment).stream()),
                things.stream().filter(Metals::bringsMetal).map(Uses.Salt::of)),
                salt -> salt.thing().isPresent() ? salt.thing() : salt);
    }

    /** The metals of a mordant or iron bath, even where it does not name what brings them. */
    private List<Uses.Salt> salts(Recipe.Treatment treatment) {
        boolean iron = is(treatment, Recipe.Purpose.IRON);
        if (!iron && !is(treatment, Recipe.Purpose.MORDANT)) {
            return List.of();
        }
        List<Uses.Salt> brought = named(Stream.of(treatment.with())).stream()
                .filter(thing -> Metals.bringsMetal(thing) || thing.kind().isEmpty())
                .map(Uses.Salt::of).map(salt -> iron ? salt.orIron() : salt).toList();
        Optional<Dye.Metal> metal = iron ? Optional.of(Dye.Metal.IRON) : Optional.empty();
        boolean named = brought.stream().anyMatch(salt -> !iron || salt.metal().equals(metal));
        return named ? brought
                : Stream.concat(brought.stream(), Stream.of(new Uses.Salt(Optional.empty(), metal))).toList();
    }

    /** Every step of heat, of whichever bath. */
    private static Stream<HeatStep> heating(Recipe recipe) {
        return Stream.of(recipe.heat().stream(),
                recipe.bath().extract().stream().flatMap(extract -> extract.heat().stream()),
                Stream.concat(recipe.before().stream(), recipe.after().stream())
                        .flatMap(treatment -> treatment.heat().stream())).flatMap(steps -> steps);
    }

    private static boolean isHot(List<HeatStep> steps) {
        return steps.stream().anyMatch(Care::isHot);
    }

    private static boolean isHot(HeatStep step) {
        return !step.isInTheSun() || step.to().filter(to -> to.value() instanceof HeatStep.Degrees degrees
                && degrees.temperature().value() >= SCALDS_FROM_CELSIUS).isPresent();
    }

    private static boolean is(Recipe.Treatment treatment, Recipe.Purpose purpose) {
        return treatment.as().filter(as -> as.value() == purpose).isPresent();
    }
}
