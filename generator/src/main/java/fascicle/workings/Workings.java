package fascicle.workings;

import fascicle.measure.Quantity;
import fascicle.notebook.Entry;
import fascicle.notebook.Ids;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything that is computed from one edition's notebook. */
public final class Workings {

    private final Notebook notebook;
    private final Recipes recipes;
    private final Map<String, EntryWorking> entries;
    private final Map<String, MethodWorking> methods;
    private final List<LotWorking> lots;
    private final Grouping grouping;
    private final Neighbours neighbours;
    private final Map<Group.Kind, Map<String, Group>> groups = new EnumMap<>(Group.Kind.class);

    private Workings(Notebook notebook) {
        this.notebook = notebook;
        recipes = new Recipes(notebook);
        methods = Notebook.byId(notebook.methods().stream().map(this::work).toList(), working -> working.method().id());
        Bundles bundles = new Bundles(notebook);
        // Entries rest on methods and on what was written of one another, never on one another's figures.
        List<EntryWorking> worked = notebook.entries().parallelStream()
                .map(entry -> work(entry, bundles.of(entry))).toList();
        entries = Notebook.byId(worked, EntryWorking::id);
        lots = notebook.lots().stream().map(lot -> new LotWorking(lot, Colours.of(lot))).toList();
        grouping = Grouping.of(notebook, worked);
        neighbours = new Neighbours(worked, grouping);
        for (Group.Kind kind : Group.Kind.values()) {
            groups.put(kind, Notebook.byId(grouping.of(kind), Group::id));
        }
    }

    /**
     * Computes a notebook's figures.
     *
     * @param notebook an edition's notebook
     * @return its workings
     */
    public static Workings of(Notebook notebook) {
        return new Workings(notebook);
    }

    /**
     * What the figures were computed from.
     *
     * @return the notebook
     */
    public Notebook notebook() {
        return notebook;
    }

    /**
     * The figures of all entries.
     *
     * @return in the notebook's order
     */
    public List<EntryWorking> entries() {
        return List.copyOf(entries.values());
    }

    /**
     * The figures of an entry.
     *
     * @param id its id, in any case
     * @return its figures, if there is such an entry
     */
    public Optional<EntryWorking> entry(String id) {
        return Optional.ofNullable(entries.get(Ids.key(id)));
    }

    /**
     * The figures of all methods.
     *
     * @return in the notebook's order
     */
    public List<MethodWorking> methods() {
        return List.copyOf(methods.values());
    }

    /**
     * The figures of a method.
     *
     * @param id its id, in any case
     * @return its figures, if there is such a method
     */
    public Optional<MethodWorking> method(String id) {
        return Optional.ofNullable(methods.get(Ids.key(id)));
    }

    /**
     * The figures of all needle lots.
     *
     * @return in the notebook's order
     */
    public List<LotWorking> lots() {
        return lots;
    }

    /**
     * Entries by what they have in common. Every lot, dye and method has a group, with no entries where it was never
     * used; of the other kinds there are only groups with an entry.
     *
     * @param kind what they have in common
     * @return families in the order of the standard, conditions from green to glycerined and then the maker's own,
     *     lots, dyes and methods in the notebook's order, days and years oldest first
     */
    public List<Group> groups(Group.Kind kind) {
        return List.copyOf(groups.getOrDefault(kind, Map.of()).values());
    }

    /**
     * One group.
     *
     * @param kind what its entries have in common
     * @param id which one, in any case
     * @return the group, if there is one
     */
    public Optional<Group> group(Group.Kind kind, String id) {
        return Optional.ofNullable(groups.getOrDefault(kind, Map.of()).get(Ids.key(id)));
    }

    /**
     * A group's entries by something else that they have in common: a dye's by condition, a family's by year.
     *
     * @param group any group of these workings
     * @param kind what the parts have in common
     * @return the parts that have entries, in the order of {@link #groups}
     */
    public List<Group> within(Group group, Group.Kind kind) {
        return grouping.among(group.entries()).of(kind).stream()
                .filter(part -> !part.entries().isEmpty()).toList();
    }

    /**
     * What stands next to an entry.
     *
     * @return its neighbours in time, in colour and by recipe
     */
    public Neighbours neighbours() {
        return neighbours;
    }

    /**
     * The methods an entry follows.
     *
     * @param working any entry
     * @return the ids of its method, the one that follows, and so on
     */
    public List<String> followed(EntryWorking working) {
        return List.copyOf(grouping.followed(working));
    }

    /**
     * Where an entry went another way than its method, as far as these workings show the method.
     *
     * @param working any entry
     * @return its departures in the order of the work, none where it did as the method says; nothing where it follows
     *     no method, or one whose recipe is not shown
     */
    public Optional<List<Departure>> departures(EntryWorking working) {
        return working.entry().method().flatMap(id -> method(id.value())).map(MethodWorking::method)
                .filter(method -> !method.recipe().equals(Recipe.UNSAID))
                .map(method -> Departures.of(working, method.recipe(), recipeFor(method, working.needles())));
    }

    /** A method for an entry's needles; for its own where theirs were not weighed dry. */
    private WorkedRecipe recipeFor(Method method, NeedleFigures needles) {
        WorkedRecipe shown = recipes.ofShown(method);
        return needles.dryGrams().isEmpty() ? shown : shown.scaledTo(Bundles.dry(needles));
    }

    /**
     * The dye days of any entries by verdict.
     *
     * @param entries the entries
     * @return their days
     */
    public Group.VerdictDays days(List<EntryWorking> entries) {
        return Group.VerdictDays.of(entries);
    }

    /**
     * Works a recipe out for another weight of needles, in its own vessel.
     *
     * @param id an entry's or a method's id, in any case
     * @param grams of dry needles
     * @return the quantities, if there is such an entry or method and more than its title may be shown
     * @throws IllegalArgumentException if the weight is 0 or less or not finite
     */
    public Optional<Scaled> scale(String id, double grams) {
        return scale(id, grams, Optional.empty());
    }

    /**
     * Works a recipe out for another weight of needles. What follows from no known figure is unknown, so that a recipe
     * whose own needles were never weighed still gives what it says in {@code % owf}.
     *
     * @param id an entry's or a method's id, in any case
     * @param grams of dry needles
     * @param vessel what it is done in; nothing for the recipe's own
     * @return the quantities, if there is such an entry or method and more than its title may be shown
     * @throws IllegalArgumentException if the weight is 0 or less or not finite
     */
    public Optional<Scaled> scale(String id, double grams, Optional<Vessel> vessel) {
        if (!(grams > 0) || !Double.isFinite(grams)) {
            throw new IllegalArgumentException("a recipe is scaled to more than 0 g of needles: " + grams);
        }
        return scaling(id).map(scaling -> scaling.to(grams, vessel));
    }

    /**
     * What a recipe's quantities are worked out from, for whoever works them out elsewhere.
     *
     * @param id an entry's or a method's id, in any case
     * @return its doses, if there is such an entry or method and more than its title may be shown
     */
    public Optional<Doses> doses(String id) {
        return scaling(id).map(Doses::of);
    }

    private Optional<Scaling> scaling(String id) {
        return entry(id).map(found -> new Scaling(found.id(), found.entry().recipe(), recipe(found),
                        recipes.vessel(found.entry().recipe()), length(found.needles().lot()), dyedBefore(found),
                        measuring(), boil()))
                .or(() -> method(id).map(MethodWorking::method).map(method -> new Scaling(method.id(), method.recipe(),
                        recipes.ofShown(method), recipes.vessel(method.recipe()), length(method.needles().lot()
                                .flatMap(lot -> lot(lot.value()))), Optional.empty(), measuring(), boil())));
    }

    /**
     * What needles were called that had been dyed before they were dyed here.
     *
     * @param working an entry of this notebook
     * @return the earlier entry's title, or its id where it is not there; nothing for bare needles
     */
    public Optional<String> dyedBefore(EntryWorking working) {
        return working.entry().needles().from().map(Noted::value)
                .map(id -> entry(id).map(earlier -> earlier.entry().called()).orElse(id));
    }

    private double boil() {
        return Boil.of(notebook.cover()).celsius();
    }

    private Optional<NeedleLot> lot(String id) {
        return notebook.lots().stream().filter(lot -> Ids.same(lot.id(), id)).findFirst();
    }

    private static Optional<Quantity> length(Optional<NeedleLot> lot) {
        return lot.flatMap(NeedleLot::length).map(Noted::value);
    }

    /**
     * How the notebook's maker measures amounts out.
     *
     * @return her kitchen and her balance
     */
    public Measuring measuring() {
        return Measuring.of(notebook.cover());
    }

    /**
     * Asks of a notebook without errors what only its figures can tell.
     *
     * @return what was found
     */
    public Found found() {
        return found(Set.of());
    }

    /**
     * Asks of the notebook what only its figures can tell.
     *
     * @param unread the files with errors, of which nothing is missed
     * @return what was found
     */
    public Found found(Set<String> unread) {
        return new Checks(this, recipes, new Unread(unread)).all();
    }

    /** An entry's recipe, from which it can be worked out for other needles. */
    WorkedRecipe recipe(EntryWorking working) {
        return recipes.ofEntry(working.entry(), Bundles.dry(working.needles()));
    }

    private EntryWorking work(Entry entry, NeedleFigures needles) {
        WorkedRecipe recipe = recipes.ofEntry(entry, Bundles.dry(needles));
        Optional<ColourFigures> colour = Colours.of(entry, needles.lot());
        BathFigures bath = recipe.bath().figures();
        PotFigures pot = PotFigures.of(recipes.vessel(entry.recipe()), bath.liquorMl(), needles.dryGrams(),
                length(needles.lot()));
        return new EntryWorking(entry, needles, bath, pot, recipe.presoakFigures(),
                WorkedRecipe.figures(recipe.before()), WorkedRecipe.figures(recipe.after()), recipe.finishFigures(),
                Heat.of(entry.recipe().heat()), colour,
                entry.glass().map(glass -> Uptakes.of(glass, bath.liquorMl())), Fading.of(entry, colour));
    }

    private MethodWorking work(Method method) {
        WorkedRecipe recipe = recipes.ofShown(method);
        BathFigures bath = recipe.bath().figures();
        PotFigures pot = PotFigures.of(recipes.vessel(method.recipe()), bath.liquorMl(), Recipes.weight(method).value(),
                length(method.needles().lot().flatMap(lot -> lot(lot.value()))));
        return new MethodWorking(method, Recipes.weight(method).value(), bath, pot,
                recipe.presoakFigures(), WorkedRecipe.figures(recipe.before()), WorkedRecipe.figures(recipe.after()),
                recipe.finishFigures(), Heat.of(method.recipe().heat()));
    }
}
