package fascicle.notebook;

import fascicle.measure.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is done to a bundle of needles: the steps that entries and methods share.
 *
 * @param presoak the bin before the bath
 * @param before treatments before the dyebath: mordant, tannin, scour, iron
 * @param bath the dyebath
 * @param heat its heating, step by step
 * @param cool how long the needles cool in the bath
 * @param after treatments after the dyebath
 * @param dry how long they dry
 * @param rinse when they are rinsed
 * @param finish what they are finished with
 */
public record Recipe(Optional<Presoak> presoak, List<Treatment> before, Bath bath, List<HeatStep> heat,
        Optional<Noted<Span>> cool, List<Treatment> after, Optional<Noted<Span>> dry, Optional<Noted<Rinse>> rinse,
        List<Part> finish) {

    /** A recipe of which nothing was said. */
    public static final Recipe UNSAID = new Recipe(Optional.empty(), List.of(), Bath.UNSAID, List.of(),
            Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of());

    /**
     * The same recipe with another bath.
     *
     * @param changed its dyebath
     * @return a copy
     */
    public Recipe withBath(Bath changed) {
        return new Recipe(presoak, before, changed, heat, cool, after, dry, rinse, finish);
    }

    /**
     * Whether its dyebath stands on a stove or in an oven, whatever vessel that is in. What is drawn out beforehand and
     * what treatments heat may stand in another, which nobody names.
     *
     * @return false for a bath that is cold or stands in the sun
     */
    public boolean isHeatedInItsVessel() {
        return heat.stream().anyMatch(step -> !step.isInTheSun());
    }

    /**
     * Every part of it, in the order of work: presoak, before, bath, after, finish.
     *
     * @return the parts
     */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        presoak.ifPresent(bin -> parts.addAll(bin.with()));
        before.forEach(treatment -> parts.addAll(treatment.with()));
        parts.addAll(bath.dye());
        parts.addAll(bath.assistants());
        after.forEach(treatment -> parts.addAll(treatment.with()));
        parts.addAll(finish);
        return List.copyOf(parts);
    }

    /**
     * A bin in which needles soak before they are dyed.
     *
     * @param water what was poured in
     * @param with what was added
     * @param time how long they soak ({@code for:})
     * @param origin whose it is; a bin shared by several pots is one bin
     */
    public record Presoak(Optional<Noted<Quantity>> water, List<Part> with, Optional<Noted<Span>> time,
            Origin origin) {}

    /**
     * A bath of its own before or after the dyebath.
     *
     * @param as what it is for
     * @param water what was poured in
     * @param with what was added
     * @param heat how it was heated
     * @param origin whose it is
     */
    public record Treatment(Optional<Noted<Purpose>> as, Optional<Noted<Quantity>> water, List<Part> with,
            List<HeatStep> heat, Origin origin) {}

    /** What a treatment is for. */
    public enum Purpose implements Word {
        /** A metal salt that helps dye to hold. */
        MORDANT,
        /** A tannin under or over a mordant. */
        TANNIN,
        /** A wash that opens the needles. */
        SCOUR,
        /** Iron, which saddens. */
        IRON
    }

    /** When needles are rinsed. */
    public enum Rinse implements Word {
        /** While still wet. */
        BEFORE_DRYING,
        /** When dry. */
        AFTER_DRYING,
        /** Not at all. */
        NONE
    }
}
