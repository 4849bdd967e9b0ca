package fascicle.workings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A presoak, or a treatment with a bath of its own, in figures. A bin shared by several pots is given whole.
 *
 * @param as what a treatment is for, as written; nothing for a presoak
 * @param waterMl water poured in, mL
 * @param liquorMl the water and the liquid parts, mL
 * @param about whether the liquor rests on a rough figure
 * @param with what was added
 * @param shared whether several pots shared it
 */
public record SoakFigures(Optional<String> as, OptionalDouble waterMl, OptionalDouble liquorMl, boolean about,
        List<PartFigures> with, boolean shared) {

    /**
     * The same bath with other water and other parts.
     *
     * @param millilitres to pour
     * @param parts what is added
     * @return a copy
     */
    public SoakFigures pouring(OptionalDouble millilitres, List<PartFigures> parts) {
        return new SoakFigures(as, millilitres, liquorMl, about, parts, shared);
    }
}
