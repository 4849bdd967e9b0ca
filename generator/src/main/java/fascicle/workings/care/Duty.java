package fascicle.workings.care;

import fascicle.notebook.Dye;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * What the teacher of a class does, ahead or alone ({@code common practice, no source}).
 *
 * @param task what
 * @param things the titles of what it is done with; none where it is done with the whole recipe
 */
public record Duty(Task task, List<String> things) {

    /** What a teacher does, in the order of the day. */
    public enum Task {
        /** Makes stock solutions of the powders ahead; no student weighs one. */
        MAKE_SOLUTIONS,
        /** Brings the dye that a recipe leaves open as a solution, whatever dye it is. */
        BRING_OPEN_DYE,
        /** Dissolves alum, and crystals of acid or alkali, ahead; for minors. */
        DISSOLVE,
        /** Puts in what no solution can be made of. */
        ADD_DRY,
        /** Does the work at the stove; for minors. */
        WORK_THE_STOVE,
        /** Reads the packs of which the notebook tells nothing, before the class. */
        READ_PACKS,
        /** Has packs and labels at hand. */
        SHOW_LABELS,
        /** Collects the baths with metal in them. */
        COLLECT_BATHS
    }

    /**
     * The duties of a class.
     *
     * @param uses what one recipe uses, or several together
     * @param minors whether anyone in the class is under eighteen
     * @param madeAhead whether a thing really comes to the class as a solution
     * @param stillDry whether any of a thing comes to it dry, though nobody but the teacher should handle that
     * @return what the teacher does, in the order of the day
     */
    public static List<Duty> of(Uses uses, boolean minors, Predicate<Dye> madeAhead, Predicate<Dye> stillDry) {
        List<Duty> duties = new ArrayList<>();
        add(duties, Task.MAKE_SOLUTIONS, uses.powders().stream().filter(madeAhead).toList());
        if (uses.dyeLeftOpen()) {
            duties.add(new Duty(Task.BRING_OPEN_DYE, List.of()));
        }
        add(duties, Task.DISSOLVE, !minors ? List.of()
                : ClassRules.dissolvedAhead(uses).stream().filter(madeAhead).toList());
        add(duties, Task.ADD_DRY, uses.things().stream().filter(stillDry).toList());
        if (minors && uses.hot()) {
            duties.add(new Duty(Task.WORK_THE_STOVE, List.of()));
        }
        add(duties, Task.READ_PACKS, uses.unlabelled());
        add(duties, Task.SHOW_LABELS, uses.things().stream().filter(Hazards::isLabelled).toList());
        if (!uses.salts().isEmpty()) {
            duties.add(new Duty(Task.COLLECT_BATHS, List.of()));
        }
        return List.copyOf(duties);
    }

    private static void add(List<Duty> duties, Task task, List<Dye> things) {
        if (!things.isEmpty()) {
            duties.add(new Duty(task, things.stream().map(Dye::called).toList()));
        }
    }
}
