package fascicle.workings;

import fascicle.notebook.NeedleLot;
import java.util.Optional;

/**
 * The figures of a needle lot.
 *
 * @param lot the lot
 * @param colour the colour of its bare needles, where a dry reading has figures; without a shift or a target
 */
public record LotWorking(NeedleLot lot, Optional<ColourFigures> colour) {}
