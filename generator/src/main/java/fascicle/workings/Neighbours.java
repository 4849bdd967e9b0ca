package fascicle.workings;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.notebook.Ids;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which entries stand next to an entry: in time, in colour, and by recipe. Safe for use from several threads. */
public final class Neighbours {

    private static final Comparator<Alike> NEAREST_FIRST = Comparator.comparingDouble(Alike::difference)
            .thenComparing(alike -> alike.entry().id());

    private final List<EntryWorking> entries;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<RecipeKey, List<EntryWorking>> byRecipe = new HashMap<>();
    private final Map<String, RecipeKey> recipes = new HashMap<>();
    private final List<Coloured> byLightness = new ArrayList<>();

    /** An entry that has a colour. */
    private record Coloured(EntryWorking entry, Lab lab) {}

    Neighbours(List<EntryWorking> entries, Grouping grouping) {
        this.entries = entries;
        for (EntryWorking entry : entries) {
            String id = Ids.key(entry.id());
            places.put(id, places.size());
            entry.colour().ifPresent(colour -> byLightness.add(new Coloured(entry, colour.lab())));
            grouping.recipe(entry).filter(recipe -> !saysNothing(entry)).ifPresent(recipe -> {
                recipes.put(id, recipe);
                byRecipe.computeIfAbsent(recipe, unused -> new ArrayList<>()).add(entry);
            });
        }
        byLightness.sort(Comparator.comparingDouble((Coloured coloured) -> coloured.lab().lightness()));
    }

    /** Two pots of which nothing was written do not repeat each other. */
    private static boolean saysNothing(EntryWorking entry) {
        return entry.bath().parts().isEmpty() && entry.entry().recipe().heat().isEmpty();
    }

    /**
     * The entry before.
     *
     * @param entry any entry
     * @return the one before it in the notebook's order
     */
    public Optional<EntryWorking> previous(EntryWorking entry) {
        return at(place(entry) - 1);
    }

    /**
     * The entry after.
     *
     * @param entry any entry
     * @return the one after it in the notebook's order
     */
    public Optional<EntryWorking> next(EntryWorking entry) {
        return at(place(entry) + 1);
    }

    /**
     * The other pots of a dye day.
     *
     * @param entry any entry
     * @return the others of its day, in the notebook's order
     */
    public List<EntryWorking> sameDay(EntryWorking entry) {
        int from = place(entry);
        while (isOfDay(from - 1, entry)) {
            from--;
        }
        List<EntryWorking> others = new ArrayList<>();
        for (int place = from; isOfDay(place, entry); place++) {
            if (place != place(entry)) {
                others.add(entries.get(place));
            }
        }
        return List.copyOf(others);
    }

    /**
     * The repeats of a recipe, whatever came of them.
     *
     * @param entry any entry
     * @return it and the others of the same recipe, oldest first; nothing where no recipe was written
     */
    public List<EntryWorking> sameRecipe(EntryWorking entry) {
        return Optional.ofNullable(recipes.get(Ids.key(entry.id()))).map(byRecipe::get)
                .map(List::copyOf).orElse(List.of());
    }

    /**
     * The entries whose colours lie nearest to an entry's.
     *
     * @param entry any entry
     * @param most how many at most
     * @return the nearest first; nothing where its colour is not known
     */
    public List<Alike> alike(EntryWorking entry, int most) {
        return entry.colour().map(colour -> nearest(entry, colour.lab(), most)).orElse(List.of());
    }

    /**
     * Searches outward from the entry's own lightness, on whichever side lies nearer, until lightness alone is more than
     * the worst of the best.
     */
    private List<Alike> nearest(EntryWorking entry, Lab colour, int most) {
        List<Alike> best = new ArrayList<>();
        int above = Collections.binarySearch(byLightness, new Coloured(entry, colour),
                Comparator.comparingDouble((Coloured coloured) -> coloured.lab().lightness()));
        above = above < 0 ? -above - 1 : above;
        int below = above - 1;
        while (above < byLightness.size() || below >= 0) {
            boolean up = below < 0 || above < byLightness.size() && step(above, colour) <= step(below, colour);
            Coloured candidate = byLightness.get(up ? above++ : below--);
            double worst = best.size() < most ? Double.POSITIVE_INFINITY : best.get(most - 1).difference();
            if (lightnessAtLeast(candidate.lab(), colour) > worst) {
                break;
            }
            boolean itself = candidate.entry().id().equals(entry.id());
            if (!itself && ColourDifference.ciede2000AtLeast(candidate.lab(), colour) <= worst) {
                add(best, new Alike(candidate.entry(), ColourDifference.ciede2000(candidate.lab(), colour)), most);
            }
        }
        return List.copyOf(best);
    }

    private double step(int place, Lab colour) {
        return StrictMath.abs(byLightness.get(place).lab().lightness() - colour.lightness());
    }

    /**
     * What lightness alone makes of a difference. The other terms of CIEDE2000 never take away from it, and its weight
     * SL = 1 + 0.015 x² / √(20 + x²), with x the mean lightness less 50, is at most 1 + 0.015 |x|. It grows with the
     * step, so that whatever lies farther out on that side is farther.
     */
    private static double lightnessAtLeast(Lab one, Lab other) {
        double step = StrictMath.abs(one.lightness() - other.lightness());
        return step / (1 + 0.015 * (StrictMath.abs(other.lightness() - 50) + step / 2)) * (1 - 1e-9);
    }

    private static void add(List<Alike> best, Alike found, int most) {
        int place = Collections.binarySearch(best, found, NEAREST_FIRST);
        best.add(place < 0 ? -place - 1 : place, found);
        if (best.size() > most) {
            best.remove(most);
        }
    }

    private int place(EntryWorking entry) {
        Integer place = places.get(Ids.key(entry.id()));
        if (place == null) {
            throw new IllegalArgumentException("not an entry of this notebook: " + entry.id());
        }
        return place;
    }

    private boolean isOfDay(int place, EntryWorking entry) {
        return at(place).filter(other -> other.entry().date().equals(entry.entry().date())).isPresent();
    }

    private Optional<EntryWorking> at(int place) {
        return place >= 0 && place < entries.size() ? Optional.of(entries.get(place)) : Optional.empty();
    }
}
