package fascicle.workings;

import fascicle.notebook.HeatStep;
import fascicle.notebook.Noted;
import fascicle.notebook.Recipe;
import fascicle.notebook.Span;
import fascicle.notebook.Water;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One thing in which a pot went another way than the method it follows. */
public sealed interface Departure {

    /** Where in the work something stands. */
    enum Step {
        /** The bin before everything. */
        PRESOAK,
        /** Baths before the dyebath. */
        BEFORE,
        /** What colours. */
        DYE,
        /** What helps it. */
        ASSISTANTS,
        /** Cooling in the bath. */
        COOL,
        /** Baths after the dyebath. */
        AFTER,
        /** Drying. */
        DRY,
        /** What the needles are finished with. */
        FINISH
    }

    /**
     * A part that was added, left out, or taken in another amount.
     *
     * @param step where it stands
     * @param here as it was; nothing where it was left out
     * @param method as the method has it for these needles; nothing where it was added
     */
    record InPart(Step step, Optional<Used> here, Optional<Used> method) implements Departure {}

    /**
     * A part in its bath.
     *
     * @param part the part
     * @param liquorMl all the liquid it went into, mL
     */
    record Used(PartFigures part, OptionalDouble liquorMl) {}

    /**
     * A bath before or after the dyebath that was added, left out, or made otherwise.
     *
     * @param step before or after
     * @param here as it was; nothing where it was left out
     * @param method as the method has it; nothing where it was added
     */
    record InTreatment(Step step, Optional<Recipe.Treatment> here, Optional<Recipe.Treatment> method)
            implements Departure {}

    /**
     * Another vessel.
     *
     * @param here its id
     * @param method the id of the method's
     */
    record InVessel(String here, String method) implements Departure {}

    /**
     * Another proportion of liquor.
     *
     * @param here what fixed the liquor
     * @param hereRatio what that came to, mL/g
     * @param method what fixes it in the method
     * @param methodRatio what that comes to, mL/g
     */
    record InLiquor(Noted<Water> here, OptionalDouble hereRatio, Noted<Water> method, OptionalDouble methodRatio)
            implements Departure {}

    /**
     * Other temperatures or times of heating.
     *
     * @param here the steps; none where nothing was heated
     * @param method the method's
     */
    record InHeat(List<HeatStep> here, List<HeatStep> method) implements Departure {}

    /**
     * Another length of time.
     *
     * @param step of what
     * @param here as long as it was
     * @param method as long as the method has it
     */
    record InTime(Step step, Noted<Span> here, Noted<Span> method) implements Departure {}

    /**
     * A presoak that the method does not have.
     *
     * @param here the bin
     */
    record Presoaked(Recipe.Presoak here) implements Departure {}

    /**
     * Rinsed at another time.
     *
     * @param here when
     * @param method when the method rinses
     */
    record InRinse(Recipe.Rinse here, Recipe.Rinse method) implements Departure {}
}
