package fascicle.workings.clock;

import fascicle.notebook.Cover;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.workings.Boil;
import fascicle.workings.EntryWorking;
import fascicle.workings.MethodWorking;
import fascicle.workings.SoakFigures;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a clock is made for: a recipe, and the figures that its times rest on.
 *
 * @param recipe what is done
 * @param liquor of the dyebath, mL
 * @param before liquors of the treatments before it, mL, in their order
 * @param after liquors of the treatments after it
 * @param boil where water boils, °C
 * @param dampKeeps how long damp dyed needles keep cold, min
 */
public record Work(Recipe recipe, OptionalDouble liquor, List<OptionalDouble> before, List<OptionalDouble> after,
        double boil, OptionalDouble dampKeeps) {

    /**
     * The work of a method, for the weight its amounts are for.
     *
     * @param method the method
     * @param cover what its notebook says of the workshop
     * @return the work
     */
    public static Work of(MethodWorking method, Cover cover) {
        return new Work(method.method().recipe(), method.bath().liquorMl(), liquors(method.before()),
                liquors(method.after()), Boil.of(cover).celsius(), dampKeeps(cover));
    }

    /**
     * The work of an entry.
     *
     * @param entry the entry
     * @param cover what its notebook says of the workshop
     * @return the work
     */
    public static Work of(EntryWorking entry, Cover cover) {
        return new Work(entry.entry().recipe(), entry.bath().liquorMl(), liquors(entry.before()),
                liquors(entry.after()), Boil.of(cover).celsius(), dampKeeps(cover));
    }

    /**
     * The same work with another weight of needles.
     *
     * @param millilitres the liquor of the dyebath then
     * @param beforehand the treatments before it then
     * @param afterwards the treatments after it then
     * @return a copy
     */
    public Work with(OptionalDouble millilitres, List<SoakFigures> beforehand, List<SoakFigures> afterwards) {
        return new Work(recipe, millilitres, liquors(beforehand), liquors(afterwards), boil, dampKeeps);
    }

    private static List<OptionalDouble> liquors(List<SoakFigures> treatments) {
        return treatments.stream().map(SoakFigures::liquorMl).toList();
    }

    private static OptionalDouble dampKeeps(Cover cover) {
        return cover.dampKeeps().map(Noted::value).map(keeps -> OptionalDouble.of(keeps.value()))
                .orElse(OptionalDouble.empty());
    }
}
