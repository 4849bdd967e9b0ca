package fascicle.workings;

import fascicle.bath.Batch;
import fascicle.bath.Dose;
import fascicle.bath.Magnitude;
import fascicle.measure.Quantity;
import fascicle.notebook.Part;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@link Scaled} is worked out from, so that a page can work it out for a weight that is typed there: every amount
 * for one gram of needles, one millilitre of liquor or one batch.
 *
 * @param ratio mL of liquor to g of dry needles
 * @param standing what stands in the pot from the bath before, mL for each gram of needles; zero in a fresh bath
 * @param reused whether it stands in what an earlier bath left
 * @param waterUnsaid whether nobody said how much water such a bath was given
 * @param left how much the earlier bath left, mL
 * @param dyedBefore what the needles were called that had been dyed before; nothing for bare ones, and for methods
 * @param odd what is odd about the recipe itself
 * @param extract the plant that is drawn out for a gram of needles
 * @param depth the depth that the recipe asks for in its vessel
 * @param depthAbout whether that is rough
 * @param vesselId the id of the recipe's vessel, where there is such a one
 * @param needleLength of the needles
 * @param bath dyes, then assistants
 * @param presoak the bin before
 * @param before treatments before the bath
 * @param after treatments after it
 * @param finish what the needles are finished with
 */
public record Doses(Magnitude ratio, Magnitude standing, boolean reused, boolean waterUnsaid,
        Magnitude left, Optional<String> dyedBefore, List<BatchRemark.Odd> odd, Optional<DrawnDose> extract,
        Optional<Quantity> depth, boolean depthAbout, Optional<String> vesselId, Optional<Quantity> needleLength,
        List<Portion> bath, Optional<SoakDoses> presoak,
        List<SoakDoses> before, List<SoakDoses> after, List<Portion> finish) {

    /**
     * One part.
     *
     * @param part the line of the recipe
     * @param called the thing's title
     * @param written the amount as written
     * @param dose how much of it goes with what
     * @param spooned whether grams come from spoons
     * @param stockPercent strength of the stock it is measured from, g per 100 mL
     * @param bySpoon whether the maker measured it in spoons or cups
     * @param dissolves whether it is a dry thing of which a solution can be made
     */
    public record Portion(Part part, String called, Optional<String> written, Dose dose, boolean spooned,
            OptionalDouble stockPercent, boolean bySpoon, boolean dissolves) {}

    /**
     * A plant that is drawn out.
     *
     * @param plant of it, g
     * @param water it is drawn out in, mL
     * @param needles that they are for, g
     */
    public record DrawnDose(Magnitude plant, Magnitude water, Magnitude needles) {}

    /**
     * A presoak, or a treatment with a bath of its own.
     *
     * @param as what a treatment is for
     * @param shared whether several pots share it, so that nothing can be said of it for other needles
     * @param ratio mL of liquor to g of dry needles
     * @param with what is added
     */
    public record SoakDoses(Optional<String> as, boolean shared, Magnitude ratio, List<Portion> with) {}

    static Doses of(Scaling scaling) {
        WorkedRecipe worked = scaling.worked();
        Mixture bath = worked.bath();
        Magnitude standing = bath.reused() ? bath.standing().over(bath.needles()) : Magnitude.ZERO;
        return new Doses(bath.ratio(), standing, bath.reused(), bath.reused() && !bath.liquor().water().known(),
                bath.reused() ? bath.standing() : Magnitude.UNKNOWN, scaling.dyedBefore(), scaling.odd(),
                bath.drawn().map(plant -> new DrawnDose(plant.plant(), plant.water(), bath.needles())), scaling.depth(),
                bath.cover().about(),
                scaling.own().map(vessel -> vessel.id()), scaling.needleLength(), portions(bath.lines(), bath.batch()),
                worked.presoak().map(Doses::soak), worked.before().stream().map(Doses::soak).toList(),
                worked.after().stream().map(Doses::soak).toList(), portions(worked.finish(), bath.batch()));
    }

    private static SoakDoses soak(Soak soak) {
        return new SoakDoses(soak.as(), soak.shared(), soak.mixture().ratio(),
                portions(soak.mixture().lines(), soak.mixture().batch()));
    }

    private static List<Portion> portions(List<Line> lines, Batch batch) {
        return lines.stream().map(line -> portion(line.growingFrom(batch))).toList();
    }

    private static Portion portion(Line line) {
        PartFigures figures = line.beside(new Batch(Magnitude.UNKNOWN, Magnitude.UNKNOWN));
        return new Portion(line.part(), figures.called(), figures.asWritten(), line.dose(), figures.spooned(),
                figures.stockPercent(), figures.bySpoon(), figures.dissolves());
    }
}
