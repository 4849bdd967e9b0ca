package fascicle.workings.stock;

import fascicle.notebook.Ids;
import fascicle.notebook.Kept;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A basket, and what went into it.
 *
 * @param name as it was first written
 * @param taken the bundles, oldest entry first
 */
public record Basket(String name, List<Taken> taken) {

    /**
     * A bundle that went into it.
     *
     * @param entry whose
     * @param weight how much of it, g
     */
    public record Taken(EntryWorking entry, Total weight) {}

    /**
     * All that went into it.
     *
     * @return g of dyed needles
     */
    public Total weight() {
        return Total.sum(taken.stream().map(Taken::weight).toList());
    }

    /** The baskets of some bundles, by name; a name is the same however its letters are large or its words spaced. */
    static List<Basket> of(List<DyedBundle> bundles) {
        Map<String, Basket> baskets = new TreeMap<>();
        for (DyedBundle bundle : bundles) {
            for (Kept.Use use : bundle.kept().used()) {
                use.in().map(Noted::value).ifPresent(name -> baskets
                        .computeIfAbsent(key(name), unused -> new Basket(name.strip(), new ArrayList<>()))
                        .taken.add(new Taken(bundle.entry(), DyedBundle.grams(bundle.entry(), use))));
            }
        }
        return baskets.values().stream().map(basket -> new Basket(basket.name, List.copyOf(basket.taken))).toList();
    }

    private static String key(String name) {
        return Ids.key(name.strip().replaceAll("[\\s\\u00a0]+", " "));
    }
}
