package fascicle.workings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A recipe worked out for another weight of needles; parts are totals of the batch.
 *
 * @param of the id of the entry or method
 * @param needlesGrams the new weight of dry needles, g
 * @param liquorMl the new liquor, mL
 * @param waterMl the water to pour, mL
 * @param vessel the id of the recipe's vessel
 * @param parts dyes, then assistants
 * @param presoak the bin before, which keeps its ratio to the needles
 * @param before treatments before the bath
 * @param after treatments after it
 * @param finish what the needles are finished with
 */
public record Scaled(String of, double needlesGrams, OptionalDouble liquorMl, OptionalDouble waterMl,
        Optional<String> vessel, List<PartFigures> parts, Optional<SoakFigures> presoak, List<SoakFigures> before,
        List<SoakFigures> after, List<PartFigures> finish) {}
