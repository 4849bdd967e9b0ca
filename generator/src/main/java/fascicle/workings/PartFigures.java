package fascicle.workings;

import fascicle.bath.Basis;
import fascicle.bath.Magnitude;
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
 * @param gramsAbout whether the mass itself does; 40 g on about 45 g of needles are still 40 g
 * @param mlAbout whether the volume itself does
 * @param spooned whether grams come from spoons, and so wander by a fifth
 * @param stockPercent strength of the stock it was measured from, g per 100 mL
 * @param bySpoon whether the maker measured it in spoons or cups, be it a liquid or not
 * @param liquid whether it is a liquid as it is sold; a powder that comes as a stock solution is none
 * @param pours whether what is put into the bath is a liquid and adds to the liquor, be it a stock solution
 * @param dissolves whether it is a dry thing of which a solution can be made: no liquid, and no plant
 */
public record PartFigures(Part part, String is, String called, Optional<String> asWritten, OptionalDouble grams,
        OptionalDouble ml, OptionalDouble owfPercent, OptionalDouble gramsPerLitre, Basis by, boolean about,
        boolean gramsAbout, boolean mlAbout, boolean spooned, OptionalDouble stockPercent, boolean bySpoon,
        boolean liquid, boolean pours, boolean dissolves) {

    /**
     * How much it weighs.
     *
     * @return in g, rough where it was spooned; of a stock the mass of what is dissolved
     */
    public Magnitude mass() {
        return new Magnitude(grams, gramsAbout || spooned);
    }

    /**
     * How much room it takes.
     *
     * @return in mL; of a stock the volume of solution
     */
    public Magnitude volume() {
        return new Magnitude(ml, mlAbout);
    }

    /**
     * How much of the thing itself it is by volume: of a stock solution, or where no volume is known, what the mass
     * comes to.
     *
     * @param density of the thing as it is sold, g/mL
     * @return in mL
     */
    public Magnitude volumeAsSold(Magnitude density) {
        return stockPercent.isPresent() || ml.isEmpty() ? mass().over(density) : volume();
    }

    /**
     * Whether any of its figures is rough, be it that spoons wander.
     *
     * @return false where all are as sure as what was written
     */
    public boolean isRough() {
        return about || spooned;
    }

    /**
     * An equal share of it.
     *
     * @param shares how many shares there are; 1 or more
     * @return the same part with so much less mass and volume
     */
    public PartFigures sharedBy(int shares) {
        return amounting(share(grams, shares), share(ml, shares));
    }

    /**
     * The same part in another amount.
     *
     * @param mass in g
     * @param volume in mL
     * @return a copy
     */
    public PartFigures amounting(OptionalDouble mass, OptionalDouble volume) {
        return new PartFigures(part, is, called, asWritten, mass, volume, owfPercent, gramsPerLitre, by, about,
                gramsAbout, mlAbout, spooned, stockPercent, bySpoon, liquid, pours, dissolves);
    }

    private static OptionalDouble share(OptionalDouble whole, int shares) {
        return whole.isPresent() ? OptionalDouble.of(whole.getAsDouble() / shares) : whole;
    }
}
