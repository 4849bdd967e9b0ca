package fascicle.workings.care;

import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Vessel;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a recipe, or several together, use that care depends on.
 *
 * @param things everything that goes into a bath or on the needles, or still stands in a bath that is used again, each
 *     once, in the order of the work
 * @param added those of them that are put in now
 * @param finish those of them that the needles are finished with
 * @param unsorted those of them that are used as something else than a dye, and nothing tells as what
 * @param salts the metals that mordants bring
 * @param hot whether anything is heated so that it scalds
 * @param sourSteam whether an acid is in what is heated
 * @param colours whether needles come out with more than water, salt or acid on them: dyed, mordanted or tanned
 * @param dyeLeftOpen whether there is a dyebath that does not name its dye
 * @param unknownBath whether a bath is one that was used before, of which nothing is known
 * @param likeADrink whether a bath stands where it is taken for a drink: in the sun or in glass
 * @param pots the vessels of the dyebaths
 */
public record Uses(List<Dye> things, List<Dye> added, List<Dye> finish, List<Dye> unsorted, List<Salt> salts,
        boolean hot, boolean sourSteam, boolean colours, boolean dyeLeftOpen,
        boolean unknownBath, boolean likeADrink, List<Pot> pots) {

    /** Nothing at all. */
    public static final Uses NOTHING =
            new Uses(List.of(), List.of(), List.of(), List.of(), List.of(), false, false, false, false, false,
                    false, List.of());

    /** From here on acetic acid bears a label: Regulation (EC) No 1272/2008, Annex VI, 607-002-00-6 (from memory). */
    private static final double LABELLED_FROM_PERCENT = 10;

    /**
     * A metal in a bath.
     *
     * @param thing what brings it; nothing where a mordant or iron bath does not name it
     * @param metal which metal; nothing where that is not known
     */
    public record Salt(Optional<Dye> thing, Optional<Dye.Metal> metal) {

        static Salt of(Dye thing) {
            return new Salt(Optional.of(thing), Metals.of(thing));
        }

        /** The same in an iron bath, which makes an unknown metal iron. */
        Salt orIron() {
            return new Salt(thing, metal.or(() -> Optional.of(Dye.Metal.IRON)));
        }
    }

    /**
     * A vessel with a bath in it.
     *
     * @param vessel the vessel
     * @param strain what the bath does to it
     */
    public record Pot(Vessel vessel, Strain strain) {}

    /**
     * What this and other recipes use together, as on one dye day.
     *
     * @param other what the others use
     * @return both, each thing once
     */
    public Uses plus(Uses other) {
        return new Uses(both(things, other.things, thing -> Ids.key(thing.id())),
                both(added, other.added, thing -> Ids.key(thing.id())),
                both(finish, other.finish, thing -> Ids.key(thing.id())),
                both(unsorted, other.unsorted, thing -> Ids.key(thing.id())), both(salts, other.salts, salt -> salt),
                hot || other.hot, sourSteam || other.sourSteam, colours || other.colours,
                dyeLeftOpen || other.dyeLeftOpen, unknownBath || other.unknownBath,
                likeADrink || other.likeADrink, both(pots, other.pots, pot -> pot));
    }

    /**
     * The things of a kind.
     *
     * @param kind what they are for
     * @return those whose files say so, in the order of the work
     */
    public List<Dye> of(Dye.Kind kind) {
        return things.stream().filter(thing -> thing.is(kind)).toList();
    }

    /**
     * The powders that are put in now and hurt lungs or eyes; in a bath that is used again none drifts any more. Salt
     * is none of them; a thing whose form nobody said is taken for one, unless it is a wetting agent or an acid of a
     * given strength, which are liquids.
     *
     * @return the powders, in the order of the work
     */
    public List<Dye> powders() {
        return added.stream().filter(Uses::isPowder).toList();
    }

    /**
     * The things whose pack should be read, since no label is noted for them, not even an empty one.
     *
     * @return those but plants, salt and vinegar, which are sold without one, and what nothing at all is known of
     */
    public List<Dye> unlabelled() {
        return things.stream().filter(thing -> thing.label().isEmpty() && !thing.saysNothing())
                .filter(thing -> !comesWithoutLabel(thing)).toList();
    }

    /**
     * The plants.
     *
     * @return those whose files say so, in the order of the work
     */
    public List<Dye> plants() {
        return things.stream().filter(Uses::isPlant).toList();
    }

    /**
     * The things of which nothing is known but their names.
     *
     * @return those whose files are missing, have errors or say nothing
     */
    public List<Dye> unknown() {
        return things.stream().filter(Dye::saysNothing).toList();
    }

    /** The salts of a metal, or of none that is known. */
    List<Salt> of(Optional<Dye.Metal> metal) {
        return salts.stream().filter(salt -> salt.metal().equals(metal)).toList();
    }

    private static boolean isPowder(Dye thing) {
        boolean liquid = thing.is(Dye.Kind.WETTING) || thing.is(Dye.Kind.ACID) && thing.acidity().isPresent();
        return !thing.is(Dye.Kind.SALT)
                && thing.form().map(form -> form.value() == Dye.Form.POWDER).orElse(!liquid);
    }

    private static boolean comesWithoutLabel(Dye thing) {
        return isPlant(thing) || thing.is(Dye.Kind.SALT) && !Metals.bringsMetal(thing) || isVinegar(thing);
    }

    private static boolean isPlant(Dye thing) {
        return thing.form().filter(form -> form.value() == Dye.Form.PLANT).isPresent();
    }

    /** A weak acid of the kitchen; of an acid of no said kind the name must tell it. */
    private static boolean isVinegar(Dye thing) {
        boolean kitchen = thing.acid().isPresent()
                || (thing.id() + " " + thing.called()).toLowerCase(Locale.ROOT).contains("vinegar");
        return thing.is(Dye.Kind.ACID) && kitchen
                && thing.acidity().filter(acidity -> acidity.value() < LABELLED_FROM_PERCENT).isPresent();
    }

    private static <T> List<T> both(List<T> some, List<T> others, Function<T, Object> same) {
        return each(Stream.concat(some.stream(), others.stream()), same);
    }

    /** Each once, the first kept. */
    static <T> List<T> each(Stream<T> all, Function<T, Object> same) {
        return List.copyOf(all.collect(Collectors.toMap(same, Function.identity(), (first, again) -> first,
                LinkedHashMap::new)).values());
    }
}
