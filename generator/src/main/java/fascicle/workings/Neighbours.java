package fascicle.workings;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.notebook.Ids;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which entries stand next to an entry: in time, in colour, and by recipe. Safe for use from several threads. */
public final class Neighbours {

    private final List<EntryWorking> entries;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<LocalDate, List<EntryWorking>> byDay = new HashMap<>();
    private final Map<RecipeKey, Repeats> byRecipe = new HashMap<>();
    private final Map<String, RecipeKey> recipes = new HashMap<>();
    private final List<Coloured> byLightness;
    private final Map<String, Integer> placesByLightness = new HashMap<>();

    /**
     * The repeats of a recipe, whatever came of them.
     *
     * @param entries all its entries, oldest first
     * @param days their dye days by verdict
     */
    public record Repeats(List<EntryWorking> entries, Group.VerdictDays days) {}

    /** An entry that has a colour. */
    private record Coloured(EntryWorking entry, Lab lab) {}

    Neighbours(List<EntryWorking> entries, Grouping grouping) {
        this.entries = entries;
        Map<RecipeKey, List<EntryWorking>> repeats = new HashMap<>();
        List<Coloured> coloured = new ArrayList<>();
        for (EntryWorking entry : entries) {
            String id = Ids.key(entry.id());
            places.put(id, places.size());
            byDay.computeIfAbsent(entry.entry().date(), unused -> new ArrayList<>()).add(entry);
            entry.colour().ifPresent(colour -> coloured.add(new Coloured(entry, colour.lab())));
            grouping.recipe(entry).filter(recipe -> !saysNothing(entry)).ifPresent(recipe -> {
                recipes.put(id, recipe);
                repeats.computeIfAbsent(recipe, unused -> new ArrayList<>()).add(entry);
            });
        }
        repeats.forEach((recipe, of) -> byRecipe.put(recipe, new Repeats(List.copyOf(of), Group.VerdictDays.of(of))));
        byLightness = coloured.stream().sorted(Comparator.comparingDouble((Coloured one) -> one.lab().lightness())
                .thenComparing(one -> one.entry().id())).toList();
        byLightness.forEach(one -> placesByLightness.put(Ids.key(one.entry().id()), placesByLightness.size()));
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
     * The pots of a dye day.
     *
     * @param entry any entry
     * @return it and the others of its day, in the notebook's order
     */
    public List<EntryWorking> day(EntryWorking entry) {
        return Collections.unmodifiableList(byDay.getOrDefault(entry.entry().date(), List.of()));
    }

    /**
     * The repeats of an entry's recipe.
     *
     * @param entry any entry
     * @return it and the others of the same recipe; nothing where no recipe was written
     */
    public Optional<Repeats> repeats(EntryWorking entry) {
        return Optional.ofNullable(recipes.get(Ids.key(entry.id()))).map(byRecipe::get);
    }

    /**
     * The entries whose colours lie nearest to an entry's.
     *
     * @param entry any entry
     * @param most how many at most
     * @return the nearest first; nothing where its colour is not known
     */
    public List<Alike> alike(EntryWorking entry, int most) {
        Integer place = placesByLightness.get(Ids.key(entry.id()));
        return place == null ? List.of() : nearest(place, byLightness.get(place).lab(), most);
    }

    /**
     * Searches outward from a place in the order of lightness, on whichever side lies nearer, until lightness alone is
     * as much as the worst of the best. Of equals the one met first stays, so that many equal colours are not all
     * looked at.
     */
    private List<Alike> nearest(int place, Lab colour, int most) {
        List<Alike> best = new ArrayList<>();
        int above = place + 1;
        int below = place - 1;
        while (above < byLightness.size() || below >= 0) {
            boolean up = below < 0 || above < byLightness.size() && step(above, colour) <= step(below, colour);
            Coloured candidate = byLightness.get(up ? above++ : below--);
            double worst = best.size() < most ? Double.POSITIVE_INFINITY : best.get(most - 1).difference();
            if (lightnessAtLeast(candidate.lab(), colour) >= worst) {
                break;
            }
            if (ColourDifference.ciede2000AtLeast(candidate.lab(), colour) < worst) {
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
     * step, so that whatever lies farther out on either side is farther.
     */
    private static double lightnessAtLeast(Lab one, Lab other) {
        double step = StrictMath.abs(one.lightness() - other.lightness());
        return step / (1 + 0.015 * (StrictMath.abs(other.lightness() - 50) + step / 2)) * (1 - 1e-9);
    }

    private static void add(List<Alike> best, Alike found, int most) {
        int place = best.size();
        while (place > 0 && best.get(place - 1).difference() > found.difference()) {
            place--;
        }
        best.add(place, found);
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

    private Optional<EntryWorking> at(int place) {
        return place >= 0 && place < entries.size() ? Optional.of(entries.get(place)) : Optional.empty();
    }
}
