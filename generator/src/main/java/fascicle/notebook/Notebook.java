package fascicle.notebook;

import java.util.Collection;
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
 */
public record Notebook(Cover cover, List<NeedleLot> lots, List<Dye> dyes, List<Vessel> vessels, List<Method> methods,
        List<Day> days, List<Entry> entries, List<Missing> missing) {

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
