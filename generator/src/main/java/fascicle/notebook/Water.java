package fascicle.notebook;

import fascicle.measure.Quantity;

/** What fixes a bath's water: the amount poured in, or the liquor by ratio or depth. */
public sealed interface Water {

    /**
     * Poured in.
     *
     * @param volume the water without the liquid parts
     */
    record Poured(Quantity volume) implements Water {}

    /**
     * The liquor by its ratio to the needles.
     *
     * @param millilitresPerGram mL of liquor to g of dry needles; above 0
     */
    record ByRatio(double millilitresPerGram) implements Water {}

    /**
     * The liquor by its depth in the vessel, before the needles.
     *
     * @param depth a length
     */
    record ByDepth(Quantity depth) implements Water {}
}
