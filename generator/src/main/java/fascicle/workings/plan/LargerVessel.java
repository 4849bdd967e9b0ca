package fascicle.workings.plan;

import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import fascicle.workings.Workings;
import fascicle.workings.care.Care;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Hazards;
import fascicle.workings.care.Uses;
import java.util.Optional;

/**
 * Looks for a vessel of the notebook that would hold all of a batch in one, and that a plan would take: of a material
 * that is known and takes no part in the bath, that a stove does not melt or crack where anything is heated, and that a
 * class may have.
 */
record LargerVessel(Workings workings, Care care, Ask ask) {

    Optional<Vessel> of(Chosen chosen, double grams) {
        return workings.notebook().vessels().stream().filter(vessel -> holds(vessel, chosen, grams))
                .filter(vessel -> suits(vessel, care.uses(chosen.recipe(), Optional.of(vessel)))).findFirst();
    }

    private boolean holds(Vessel vessel, Chosen chosen, double grams) {
        return workings.scale(chosen.id(), grams, Optional.of(vessel))
                .filter(scaled -> scaled.pots().orElse(0) == 1).isPresent();
    }

    private boolean suits(Vessel vessel, Uses uses) {
        return vessel.madeOf().map(Noted::value).filter(made -> !uses.hot() || made.bearsHeat()).isPresent()
                && uses.pots().stream().noneMatch(pot -> Hazards.ofPot(pot).isPresent())
                && (!ask.isClass() || ClassRules.of(uses, ask.minors()).allows());
    }
}
