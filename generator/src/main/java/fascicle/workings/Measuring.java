package fascicle.workings;

import fascicle.bath.StockToMake;
import fascicle.measure.Kitchen;
import fascicle.measure.Scoops;
import fascicle.notebook.Cover;
import fascicle.notebook.Noted;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a person measures an amount out: with the balance she has, with the spoons of her kitchen, or, where the balance
 * is too coarse, out of a stock solution.
 *
 * @param kitchen whose spoons and cups are at hand
 * @param balance the smallest step of the balance, g; unknown where the notebook does not say
 */
public record Measuring(Kitchen kitchen, OptionalDouble balance) {

    /**
     * What the notebook says is at hand.
     *
     * @param cover the notebook's cover
     * @return its kitchen and its balance
     */
    public static Measuring of(Cover cover) {
        return new Measuring(cover.kitchen(), cover.balance().map(Noted::value)
                .map(step -> OptionalDouble.of(step.value())).filter(step -> step.getAsDouble() > 0)
                .orElse(OptionalDouble.empty()));
    }

    /**
     * The same balance in another kitchen.
     *
     * @param other whose spoons and cups are at hand
     * @return a copy
     */
    public Measuring in(Kitchen other) {
        return new Measuring(other, balance);
    }

    /**
     * A part in spoons and cups, where that is how the maker measured it.
     *
     * @param part any part
     * @return the scoops; nothing where it was weighed or poured, or its volume is not known
     */
    public Optional<Scoops> scoops(PartFigures part) {
        return part.bySpoon() && part.ml().isPresent() ? Scoops.of(part.ml().getAsDouble(), kitchen) : Optional.empty();
    }

    /**
     * The stock solution to make for a part that the balance cannot weigh.
     *
     * @param part any part
     * @return the stock; nothing where the balance is fine enough or not known, or where the part is no dry thing that
     *     dissolves
     */
    public Optional<StockToMake> stock(PartFigures part) {
        return part.dissolves() && balance.isPresent() && part.grams().isPresent()
                ? StockToMake.of(part.grams().getAsDouble(), balance.getAsDouble()) : Optional.empty();
    }
}
