package fascicle.notebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A notebook, read and with what was left out filled in. Every list is in order of id, entries by day first.
 *
 * @param cover what it says of itself
 * @param lots needle lots
 * @param dyes dyes and assistants
 * @param vessels pots and pans
 * @param methods ways of working
 * @param days what was written of whole dye days
 * @param entries pots
 * @param missing what errors kept out
 * @param shelf what figures rest on, shown or not
 */
public record Notebook(Cover cover, List<NeedleLot> lots, List<Dye> dyes, List<Vessel> vessels, List<Method> methods,
        List<Day> days, List<Entry> entries, List<Missing> missing, Shelf shelf) {

    /**
     * The definitions that arithmetic looks up. An edition shows fewer of them, or less of each, and yet its figures
     * are those of the studio's book; so these are never cut, and never shown.
     *
     * @param dyes dyes and assistants
     * @param vessels pots and pans
     * @param methods ways of working
     */
    public record Shelf(List<Dye> dyes, List<Vessel> vessels, List<Method> methods) {}

    /**
     * A notebook of which everything is shown.
     *
     * @param cover what it says of itself
     * @param lots needle lots
     * @param dyes dyes and assistants
     * @param vessels pots and pans
     * @param methods ways of working
     * @param days what was written of whole dye days
     * @param entries pots
     * @param missing what errors kept out
     */
    public Notebook(Cover cover, List<NeedleLot> lots, List<Dye> dyes, List<Vessel> vessels, List<Method> methods,
            List<Day> days, List<Entry> entries, List<Missing> missing) {
        this(cover, lots, dyes, vessels, methods, days, entries, missing, new Shelf(dyes, vessels, methods));
    }

    /**
     * The same notebook without some entries that turned out to be faulty.
     *
     * @param faulty what is wrong with which entries
     * @return a copy in which they are missing
     */
    public Notebook without(List<Missing> faulty) {
        List<String> gone = faulty.stream().map(Missing::what).toList();
        List<Missing> allMissing = new ArrayList<>(missing);
        allMissing.addAll(faulty);
        allMissing.sort(Comparator.comparing(Missing::place));
        return new Notebook(cover, lots, dyes, vessels, methods, days,
                entries.stream().filter(entry -> !gone.contains(entry.id())).toList(), List.copyOf(allMissing), shelf);
    }

    /**
     * Things by id, to be looked up by {@link Ids#key}.
     *
     * @param <T> what they are
     * @param things the things
     * @param id a thing's id
     * @return the things in order
     */
    public static <T> Map<String, T> byId(Collection<T> things, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        for (T thing : things) {
            map.put(Ids.key(id.apply(thing)), thing);
        }
        return map;
    }

    /**
     * Finds an entry.
     *
     * @param id its id, in any case
     * @return the entry, if there is one
     */
    public Optional<Entry> entry(String id) {
        return entries.stream().filter(entry -> Ids.same(entry.id(), id)).findFirst();
    }

    /**
     * Finds a method.
     *
     * @param id its id, in any case
     * @return the method, if there is one
     */
    public Optional<Method> method(String id) {
        return methods.stream().filter(method -> Ids.same(method.id(), id)).findFirst();
    }
}
