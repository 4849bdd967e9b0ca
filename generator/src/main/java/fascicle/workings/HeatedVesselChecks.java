package fascicle.workings;

import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import java.util.Optional;

/** Whether the vessel of a bath bears the stove or the oven that it stands on or in. */
final class HeatedVesselChecks {

    private final Findings findings;

    HeatedVesselChecks(Findings findings) {
        this.findings = findings;
    }

    /**
     * Checks a recipe's dyebath in its vessel.
     *
     * @param called the entry or method it is of
     * @param recipe its recipe
     * @param vessel what its bath stands in, if that is known
     * @param whole where its entry or method begins
     */
    void check(String called, Recipe recipe, Optional<Vessel> vessel, Place whole) {
        vessel.filter(known -> recipe.isHeatedInItsVessel()).ifPresent(known -> known.madeOf()
                .filter(made -> !made.value().bearsHeat()).ifPresent(made -> {
                    Place place = recipe.bath().vessel().map(Noted::place).orElse(whole);
                    findings.warning(place, "the bath of “" + called + "” is heated in “" + known.called()
                            + "”, which is " + made.written() + " (" + made.place() + "): on a stove or in an oven it "
                            + (made.value() == Vessel.Material.PLASTIC ? "softens and drops its hot liquor; "
                                    : "cracks, unless its maker says that it may stand there; ")
                            + "name an enamel or stainless pot under “vessel:”, or write “on: sun” under “heat:” if "
                            + "the sun alone warms it");
                }));
    }
}
