package fascicle.workings.clock;

import fascicle.bath.Magnitude;
import fascicle.notebook.Cover;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.workings.Boil;
import fascicle.workings.EntryWorking;
import fascicle.workings.ExtractFigures;
import fascicle.workings.MethodWorking;
import fascicle.workings.Scaled;
import fascicle.workings.SoakFigures;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a clock is made for: a recipe, and the figures that its times rest on.
 *
 * @param recipe what is done
 * @param liquor of the dyebath, mL
 * @param extract the water a plant is drawn out in, mL
 * @param before liquors of the treatments before it, mL, in their order
 * @param after liquors of the treatments after it
 * @param boil where water boils, °C
 * @param dampKeeps how long damp dyed needles keep cold, min
 */
public record Work(Recipe recipe, OptionalDouble liquor, OptionalDouble extract, List<OptionalDouble> before,
        List<OptionalDouble> after, double boil, Magnitude dampKeeps) {

    /**
     * The work of a method, for the weight its amounts are for.
     *
     * @param method the method
     * @param cover what its notebook says of the workshop
     * @return the work
     */
    public static Work of(MethodWorking method, Cover cover) {
        return new Work(method.method().recipe(), method.bath().liquorMl(), water(method.bath().extract()),
                liquors(method.before()), liquors(method.after()), Boil.of(cover).celsius(), dampKeeps(cover));
    }

    /**
     * The work of an entry.
     *
     * @param entry the entry
     * @param cover what its notebook says of the workshop
     * @return the work
     */
    public static Work of(EntryWorking entry, Cover cover) {
        return new Work(entry.entry().recipe(), entry.bath().liquorMl(), water(entry.bath().extract()),
                liquors(entry.before()), liquors(entry.after()), Boil.of(cover).celsius(), dampKeeps(cover));
    }

    /**
     * The same work with another weight of needles.
     *
     * @param scaled the recipe worked out for them
     * @return a copy
     */
    public Work scaledTo(Scaled scaled) {
        return new Work(recipe, scaled.liquorMl(), water(scaled.extract()), liquors(scaled.before()),
                liquors(scaled.after()), boil, dampKeeps);
    }

    /**
     * The same work in the liquors of another.
     *
     * @param other as much work, done otherwise
     * @return a copy
     */
    public Work inLiquorsOf(Work other) {
        return new Work(recipe, other.liquor, other.extract, other.before, other.after, boil, dampKeeps);
    }

    private static OptionalDouble water(Optional<ExtractFigures> extract) {
        return extract.map(ExtractFigures::waterMl).orElse(OptionalDouble.empty());
    }

    private static List<OptionalDouble> liquors(List<SoakFigures> treatments) {
        return treatments.stream().map(SoakFigures::liquorMl).toList();
    }

    private static Magnitude dampKeeps(Cover cover) {
        return cover.dampKeeps().map(Noted::value).map(keeps -> Magnitude.of(keeps.value(), keeps.about()))
                .orElse(Magnitude.UNKNOWN);
    }
}
