package fascicle.workings.stock;

import fascicle.notebook.Ids;
import fascicle.notebook.Kept;
import fascicle.notebook.Noted;
import fascicle.workings.EntryWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
     * @param weight how much of it, g, as it was kept
     * @param damp whether it was kept damp, and so weighed with its water
     */
    public record Taken(EntryWorking entry, Total weight, boolean damp) {}

    /**
     * All that went into it of one kind: damp and dry needles make no sum.
     *
     * @param damp whether what was kept damp, or all else
     * @return g of dyed needles as they were kept; nothing where there were none of that kind
     */
    public Optional<Total> weight(boolean damp) {
        List<Total> alike = taken.stream().filter(one -> one.damp() == damp).map(Taken::weight).toList();
        return alike.isEmpty() ? Optional.empty() : Optional.of(Total.sum(alike));
    }

    /** The baskets of some bundles, by name; a name is the same however its letters are large or its words spaced. */
    static List<Basket> of(List<DyedBundle> bundles) {
        Map<String, Basket> baskets = new TreeMap<>();
        for (DyedBundle bundle : bundles) {
            for (Kept.Use use : bundle.kept().used()) {
                use.in().map(Noted::value).ifPresent(name -> baskets
                        .computeIfAbsent(key(name), unused -> new Basket(name.strip(), new ArrayList<>()))
                        .taken.add(new Taken(bundle.entry(), DyedBundle.grams(bundle.entry(), use),
                                bundle.isDamp())));
            }
        }
        return baskets.values().stream().map(basket -> new Basket(basket.name, List.copyOf(basket.taken))).toList();
    }

    private static String key(String name) {
        return Ids.key(name.strip().replaceAll("[\\s\\u00a0]+", " "));
    }
}
