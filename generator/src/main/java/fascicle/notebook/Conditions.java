package fascicle.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What may have been done to needles before dyeing: the usual conditions, then the maker's own. */
public final class Conditions {

    private static final Map<String, String> USUAL = new LinkedHashMap<>();

    static {
        USUAL.put("fresh-green", "Fresh green");
        USUAL.put("shade-dried", "Shade-dried");
        USUAL.put("light-faded", "Light-faded");
        USUAL.put("sun-bleached", "Sun-bleached");
        USUAL.put("fallen", "Fallen");
        USUAL.put("scalded", "Scalded");
        USUAL.put("glycerined", "Glycerined");
    }

    private final Map<String, Condition> byKey = new LinkedHashMap<>();

    private Conditions(Map<String, String> own) {
        USUAL.forEach(this::put);
        new TreeMap<>(own).forEach(this::put);
    }

    /**
     * The conditions that a notebook knows.
     *
     * @param cover its cover, which may declare more; words it gives to a usual condition take the place of ours
     * @return the conditions
     */
    public static Conditions of(Cover cover) {
        return new Conditions(cover.conditions());
    }

    /**
     * All of them.
     *
     * @return the usual ones from green to glycerined, then the maker's own by id
     */
    public List<Condition> all() {
        return List.copyOf(byKey.values());
    }

    /**
     * Finds a condition.
     *
     * @param id its id, in any case
     * @return the condition, if the notebook knows it
     */
    public Optional<Condition> find(String id) {
        return Optional.ofNullable(byKey.get(Ids.key(id)));
    }

    private void put(String id, String title) {
        byKey.put(Ids.key(id), new Condition(id, title));
    }

    /**
     * A condition of needles.
     *
     * @param id its id
     * @param title what it is called
     */
    public record Condition(String id, String title) {}
}
