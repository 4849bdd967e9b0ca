package fascicle.workings;

import fascicle.bath.Batch;
import fascicle.bath.Dose;
import fascicle.bath.Liquor;
import fascicle.bath.Magnitude;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is in one bath: the liquor, and what was put into it.
 *
 * @param needles dry needles, g
 * @param ratio mL of liquor to a gram of needles
 * @param standing what stood in it from the bath before, mL; zero for a fresh bath
 * @param liquor all the liquid
 * @param dye what colours
 * @param others everything else
 */
record Mixture(Magnitude needles, Magnitude ratio, Magnitude standing, Liquor liquor, List<Line> dye,
        List<Line> others) {

    /** A bath whose water was measured. */
    static Mixture poured(Magnitude water, Magnitude standing, Magnitude needles, List<Line> dye, List<Line> others) {
        Liquor liquor = Liquor.poured(water, standing, needles, doses(dye, others));
        return new Mixture(needles, liquor.total().over(needles), standing, liquor, dye, others);
    }

    /** A bath filled up to a volume. */
    static Mixture filled(Magnitude total, Magnitude standing, Magnitude needles, List<Line> dye, List<Line> others) {
        Liquor liquor = Liquor.filled(total, standing, needles, doses(dye, others));
        return new Mixture(needles, total.over(needles), standing, liquor, dye, others);
    }

    /** A bath filled up to a ratio to its needles, which holds for other needles even where these are unknown. */
    static Mixture byRatio(Magnitude ratio, Magnitude standing, Magnitude needles, List<Line> dye,
            List<Line> others) {
        Liquor liquor = Liquor.filled(ratio.times(needles), standing, needles, doses(dye, others));
        return new Mixture(needles, ratio, standing, liquor, dye, others);
    }

    /** The same where nobody said how much water was poured. */
    Mixture withoutWater() {
        return new Mixture(needles, ratio, standing, liquor.withoutWater(), dye, others);
    }

    /** Everything in it but water. */
    List<Line> lines() {
        return Stream.concat(dye.stream(), others.stream()).toList();
    }

    /** What amounts follow here. */
    Batch batch() {
        return new Batch(needles, liquor.total());
    }

    /** The same bath for other needles, at the same ratio; of a reused bath as much more or less is taken. */
    Mixture scaledTo(Magnitude grams) {
        Magnitude left = standing.equals(Magnitude.ZERO) ? standing : standing.over(needles).times(grams);
        return byRatio(ratio, left, grams, dye.stream().map(line -> line.growingFrom(batch())).toList(),
                others.stream().map(line -> line.growingFrom(batch())).toList());
    }

    /** The same things, with no amount or volume known. */
    Mixture unknown() {
        return new Mixture(Magnitude.UNKNOWN, Magnitude.UNKNOWN, Magnitude.UNKNOWN, Liquor.UNKNOWN,
                dye.stream().map(Line::unknown).toList(), others.stream().map(Line::unknown).toList());
    }

    /** The figures of a dyebath. */
    BathFigures figures() {
        return new BathFigures(liquor.water().value(), liquor.total().value(), ratio.value(),
                liquor.about(), figures(dye), figures(others));
    }

    /** The figures of everything in it but water. */
    List<PartFigures> partFigures() {
        return figures(lines());
    }

    private List<PartFigures> figures(List<Line> lines) {
        return lines.stream().map(line -> line.in(batch())).toList();
    }

    private static List<Dose> doses(List<Line> dye, List<Line> others) {
        return Stream.concat(dye.stream(), others.stream()).map(Line::dose).toList();
    }
}
