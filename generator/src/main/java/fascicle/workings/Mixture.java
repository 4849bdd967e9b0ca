package fascicle.workings;

import fascicle.bath.Batch;
import fascicle.bath.Dose;
import fascicle.bath.Liquor;
import fascicle.bath.Magnitude;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is in one bath: the liquor, and what was put into it.
 *
 * @param needles dry needles, g
 * @param ratio mL of liquor to a gram of needles
 * @param reused whether it stands in what an earlier bath left
 * @param standing what stood in it from the bath before, mL; zero for a fresh bath
 * @param liquor all the liquid
 * @param cover the liquor that the recipe's depth asks for in its vessel, mL; zero where it asks for none
 * @param dye what colours
 * @param others everything else
 * @param drawn the plant that is drawn out for it
 */
record Mixture(Magnitude needles, Magnitude ratio, boolean reused, Magnitude standing, Liquor liquor,
        Magnitude cover, List<Line> dye, List<Line> others, Optional<Drawn> drawn) {

    /** A bath whose water was measured. */
    static Mixture poured(Magnitude water, Magnitude standing, Magnitude needles, List<Line> dye, List<Line> others) {
        Liquor liquor = Liquor.poured(water, standing, needles, doses(dye, others));
        return new Mixture(needles, liquor.total().over(needles), false, standing, liquor, Magnitude.ZERO, dye, others,
                Optional.empty());
    }

    /** A bath filled up to a volume. */
    static Mixture filled(Magnitude total, Magnitude standing, Magnitude needles, List<Line> dye, List<Line> others) {
        Liquor liquor = Liquor.filled(total, standing, needles, doses(dye, others));
        return new Mixture(needles, total.over(needles), false, standing, liquor, Magnitude.ZERO, dye, others,
                Optional.empty());
    }

    /** A bath filled up to a ratio to its needles, which holds for other needles even where these are unknown. */
    static Mixture byRatio(Magnitude ratio, Magnitude standing, Magnitude needles, List<Line> dye,
            List<Line> others) {
        Liquor liquor = Liquor.filled(ratio.times(needles), standing, needles, doses(dye, others));
        return new Mixture(needles, ratio, false, standing, liquor, Magnitude.ZERO, dye, others, Optional.empty());
    }

    /** The same bath, whose depth is asked for however few needles there are. */
    Mixture toThisDepth() {
        return new Mixture(needles, ratio, reused, standing, liquor, liquor.total(), dye, others, drawn);
    }

    /** The same where nobody said how much water was poured. */
    Mixture withoutWater() {
        return new Mixture(needles, ratio, reused, standing, liquor.withoutWater(), cover, dye, others, drawn);
    }

    /** The same for which a plant is drawn out. */
    Mixture drawing(Optional<Drawn> plant) {
        return new Mixture(needles, ratio, reused, standing, liquor, cover, dye, others, plant);
    }

    /** The same as one that stands in what an earlier bath left, or not. */
    Mixture reusing(boolean earlier) {
        return new Mixture(needles, ratio, earlier, standing, liquor, cover, dye, others, drawn);
    }

    /** How much of what an earlier bath left is taken, mL: no more than there is room for beside the liquid parts. */
    Magnitude taken() {
        Magnitude room = liquor.total().minus(liquor.liquidParts());
        boolean tooMuch = standing.known() && room.known() && room.orThrow() < standing.orThrow();
        return tooMuch && !liquor.impossible() ? room : standing;
    }

    /** Everything in it but water. */
    List<Line> lines() {
        return Stream.concat(dye.stream(), others.stream()).toList();
    }

    /** What amounts follow here. */
    Batch batch() {
        return new Batch(needles, liquor.total());
    }

    /**
     * The same bath for other needles: at the same ratio, unless its depth needs more. Of a reused bath as much more or
     * less is taken.
     */
    Mixture scaledTo(Magnitude grams) {
        return scaledTo(grams, cover);
    }

    /** The same bath for other needles, at the same ratio unless so much liquor, in mL, is needed to cover them. */
    Mixture scaledTo(Magnitude grams, Magnitude covering) {
        Magnitude left = reused ? standing.over(needles).times(grams) : standing;
        List<Line> scaledDye = dye.stream().map(line -> line.growingFrom(batch())).toList();
        List<Line> scaledOthers = others.stream().map(line -> line.growingFrom(batch())).toList();
        Magnitude total = ratio.times(grams);
        boolean deeper = total.known() && covering.known() && covering.orThrow() > total.orThrow();
        Mixture scaled = deeper ? filled(covering, left, grams, scaledDye, scaledOthers)
                : byRatio(ratio, left, grams, scaledDye, scaledOthers);
        boolean unsaid = reused && !liquor.water().known();
        return (unsaid ? scaled.withoutWater() : scaled).reusing(reused)
                .drawing(drawn.map(plant -> plant.times(grams.over(needles))));
    }

    /** The same things, with no amount or volume known. */
    Mixture unknown() {
        return new Mixture(Magnitude.UNKNOWN, Magnitude.UNKNOWN, reused, Magnitude.UNKNOWN, Liquor.UNKNOWN,
                Magnitude.ZERO, dye.stream().map(Line::unknown).toList(), others.stream().map(Line::unknown).toList(),
                Optional.empty());
    }

    /** Whether there is more of a liquid in it than anyone pours. */
    boolean isFlooded() {
        return Stream.concat(dye.stream().map(line -> Absurdity.flood(line, batch(), true)),
                others.stream().map(line -> Absurdity.flood(line, batch(), false))).anyMatch(Optional::isPresent);
    }

    /** The liquid part of which there is most, and more than water. */
    Optional<Line> mostlyOf() {
        double poured = liquor.water().value().orElse(Double.POSITIVE_INFINITY);
        return mostLiquid().filter(line -> volume(line) > poured);
    }

    /** The liquid part of which there is most. */
    Optional<Line> mostLiquid() {
        return lines().stream().filter(line -> volume(line) > 0).max(Comparator.comparingDouble(this::volume));
    }

    private double volume(Line line) {
        return line.dose().liquid() ? line.dose().millilitresIn(batch()).value().orElse(0) : 0;
    }

    /** The figures of a dyebath. */
    BathFigures figures() {
        return new BathFigures(liquor.water().value(), liquor.total().value(), liquor.liquidParts().value(), taken(),
                ratio.value(), liquor.about(), figures(dye), figures(others), drawn.map(Drawn::figures));
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
