package fascicle.workings;

import fascicle.bath.Magnitude;
import fascicle.measure.Quantity;
import fascicle.notebook.Part;

/** What a maker should know of a batch beside its quantities. */
public sealed interface BatchRemark {

    /**
     * The needles had a colour already when this was done to them.
     *
     * @param called the title of the entry that dyed them, or its id where it is not there
     */
    record OverDye(String called) implements BatchRemark {}

    /**
     * There is more liquor to the needles than in the recipe, so that the colour comes out paler.
     *
     * @param from the recipe's ratio, mL/g
     * @param to the batch's ratio, mL/g
     */
    record Paler(double from, double to) implements BatchRemark {}

    /**
     * The needles are longer than the longest line in the vessel.
     *
     * @param length of the needles
     * @param line the longest line that lies flat in the vessel, cm
     */
    record TooLong(Quantity length, double line) implements BatchRemark {}

    /**
     * The depth that the recipe asks for leaves no room for needles in the vessel.
     *
     * @param depth asked for
     * @param most how high the vessel is filled at most, cm
     */
    record NoRoom(Quantity depth, double most) implements BatchRemark {}

    /**
     * It stands so low in the vessel that needles lie bare.
     *
     * @param depth how deep it stands once the needles are in, cm
     */
    record TooShallow(double depth) implements BatchRemark {}

    /**
     * The measures of the vessel are not all known, so that nobody can tell what it holds.
     *
     * @param vessel what it is called
     */
    record Unmeasured(String vessel) implements BatchRemark {}

    /**
     * It stands in what an earlier bath left, and that cannot be poured anew.
     *
     * @param left how much that was, mL
     */
    record Reused(Magnitude left) implements BatchRemark {}

    /**
     * It would take more of what an earlier bath left than there was.
     *
     * @param taken how much it would take, mL
     * @param left how much was left, mL
     * @param enoughFor how many g of needles that is enough for
     */
    record LeftTooLittle(Magnitude taken, Magnitude left, Magnitude enoughFor) implements BatchRemark {}

    /**
     * What is odd about the recipe itself, whatever it is worked out for: someone should check it before it is done.
     */
    sealed interface Odd extends BatchRemark {}

    /**
     * The recipe has more of a thing than anyone weighs out or pours.
     *
     * @param called its title
     * @param excess how it is too much
     */
    record Absurd(String called, Excess excess) implements Odd {}

    /**
     * The recipe asks for heat that no open pot has, or for time that nobody takes.
     *
     * @param beyond what it asks for
     */
    record Heat(Beyond beyond) implements Odd {}

    /**
     * It would fill more pots than anyone fills in a day.
     *
     * @param pots how many
     * @param most how many one fills at most
     */
    record ManyPots(int pots, int most) implements BatchRemark {}

    /**
     * Nobody knows how much liquor it takes, since neither water nor ratio nor depth is told, or not for which needles.
     */
    record NoLiquor() implements BatchRemark {}

    /** The liquid parts alone come to more than the liquor. */
    record TooWeak() implements BatchRemark {}

    /**
     * The stock solution that the balance would ask for is more than the water.
     *
     * @param part the line of the recipe
     * @param thing what it would be a solution of
     * @param millilitres of the stock
     */
    record TooMuchStock(Part part, String thing, double millilitres) implements BatchRemark {}
}
