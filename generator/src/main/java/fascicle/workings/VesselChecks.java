package fascicle.workings;

import fascicle.bath.Magnitude;
import fascicle.bath.Pot;
import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.notebook.Vessel;
import fascicle.notebook.Water;
import java.util.Optional;

/** Whether a bath fits its vessel. */
final class VesselChecks {

    private final Unread unread;
    private final Findings findings;

    VesselChecks(Unread unread, Findings findings) {
        this.unread = unread;
        this.findings = findings;
    }

    /**
     * Checks a bath in its vessel.
     *
     * @param called the entry or method it is of
     * @param worked its recipe as worked out
     * @param water how much of it was written, if that was
     * @param vessel what it stands in, if that is known
     * @param pot the bath in that vessel
     * @param whole where its entry or method begins
     */
    void check(String called, WorkedRecipe worked, Optional<Noted<Water>> water, Optional<Vessel> vessel,
            PotFigures pot, Place whole) {
        boolean said = water.filter(written -> measures(written, vessel)
                || runsOver(most(written, worked.bath()), worked.bath().liquor().total(), vessel)).isPresent();
        if (!said && pot.isTooFull()) {
            findings.warning(water.map(Noted::place).orElse(whole), "the bath of “" + called + "” fills "
                    + Say.figure(pot.filledPercent().orElseThrow()) + " % of the height of “"
                    + vessel.map(Vessel::called).orElseThrow() + "” once the needles are in, more than the "
                    + Say.figure(100 * Pot.FULL) + " % that can be stirred and carried; take a larger vessel, less "
                    + "liquor, or two pots");
        }
    }

    /** Says so where a depth and its vessel's measures do not go together. */
    private boolean measures(Noted<Water> water, Optional<Vessel> vessel) {
        if (!(water.value() instanceof Water.ByDepth given)) {
            return false;
        }
        if (vessel.isEmpty() && unread.holdsVessels()) {
            return true;
        }
        if (vessel.flatMap(Vessel::basin).isEmpty()) {
            findings.warning(water.place(), "“depth: " + water.written() + "” tells no volume, because "
                    + vessel.map(known -> "the measures of “" + known.called() + "” (" + known.place()
                            + ") are not all "
                            + "known; it needs a shape, with length and width or with a diameter, each above 0 cm")
                            .orElse("the bath names no vessel; name one"));
            return true;
        }
        Optional<Double> height = height(vessel).filter(high -> given.depth().value() > high);
        height.ifPresent(high -> findings.error(water.place(), "“depth: " + water.written() + "” is deeper than “"
                + vessel.orElseThrow().called() + "” is high (" + Say.figure(high) + " cm); check the depth, or the "
                + "vessel"));
        return height.isPresent();
    }

    /** What most of the liquor is: the water, or what was poured in beside it. */
    private static Noted<?> most(Noted<Water> water, Mixture bath) {
        Optional<Noted<?>> part = bath.mostlyOf().flatMap(line -> line.part().amount());
        return part.filter(unused -> water.value() instanceof Water.Poured).orElse(water);
    }

    private boolean runsOver(Noted<?> most, Magnitude liquor, Optional<Vessel> vessel) {
        Optional<Pot> pot = vessel.flatMap(Vessel::pot);
        if (pot.isEmpty() || !liquor.known() || liquor.orThrow() <= pot.get().brim()) {
            return false;
        }
        findings.warning(most.place(), "“" + most.written() + "” makes " + Say.volume(liquor.orThrow())
                + " of liquor, which cannot be: “" + vessel.orElseThrow().called() + "” holds "
                + Say.volume(pot.get().brim()) + " to the brim; check "
                + (most.value() instanceof Water ? "the water" : "it")
                + ", the weight of the needles, or the vessel");
        return true;
    }

    private static Optional<Double> height(Optional<Vessel> vessel) {
        return vessel.flatMap(Vessel::height).map(noted -> noted.value().value());
    }
}
