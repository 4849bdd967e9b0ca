package fascicle.workings;

import fascicle.bath.Magnitude;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A dyebath in figures.
 *
 * @param waterMl water poured in, mL
 * @param liquorMl all the liquid in the bath: the water, the liquid parts and what stood in it, mL
 * @param liquidPartsMl the liquid parts together, mL; splashes that nobody measured are not counted
 * @param standingMl what it took of the bath before, mL; 0 for a fresh bath
 * @param ratio mL of liquor to g of dry needles
 * @param about whether the liquor rests on a rough figure
 * @param dye what colours
 * @param assistants what helps
 * @param extract the plant that is drawn out for it
 */
public record BathFigures(OptionalDouble waterMl, OptionalDouble liquorMl, OptionalDouble liquidPartsMl,
        Magnitude standingMl, OptionalDouble ratio, boolean about, List<PartFigures> dye, List<PartFigures> assistants,
        Optional<ExtractFigures> extract) {

    /**
     * Everything in the bath but water.
     *
     * @return the dyes, then the assistants
     */
    public List<PartFigures> parts() {
        return Stream.concat(dye.stream(), assistants.stream()).toList();
    }
}
