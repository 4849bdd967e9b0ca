package fascicle.workings;

import fascicle.bath.Basis;
import fascicle.notebook.Part;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One part of a bath in figures: true amounts of the thing as sold, never rounded to spoons.
 *
 * @param part the line of the recipe
 * @param is the thing's id, as its file spells it
 * @param called the thing's title
 * @param asWritten the amount in the maker's words; nothing where none was given
 * @param grams mass, g; of a stock the mass of what is dissolved
 * @param ml volume, mL; of a stock the volume of solution
 * @param owfPercent on the weight of the dry needles, per cent
 * @param gramsPerLitre in the liquor, g/L
 * @param by what the amount follows when the batch grows
 * @param about whether any of the figures rests on a rough one: the amount, the needles' weight or the liquor
 * @param amountAbout whether the mass and the volume themselves do; 40 g on about 45 g of needles are still 40 g
 * @param spooned whether grams come from spoons, and so wander by a fifth
 * @param stockPercent strength of the stock it was measured from, g per 100 mL
 */
public record PartFigures(Part part, String is, String called, Optional<String> asWritten, OptionalDouble grams,
        OptionalDouble ml, OptionalDouble owfPercent, OptionalDouble gramsPerLitre, Basis by, boolean about,
        boolean amountAbout, boolean spooned, OptionalDouble stockPercent) {}
