package fascicle.workings.plan;

import fascicle.notebook.Noted;
import fascicle.notebook.Vessel;
import fascicle.workings.BatchRemark;
import fascicle.workings.Workings;
import fascicle.workings.care.Care;
import fascicle.workings.care.ClassRules;
import fascicle.workings.care.Hazards;
import fascicle.workings.care.Uses;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for a vessel of the notebook that would hold all of a batch in one and cover it, and that a plan would take: of
 * a material that is known and takes no part in the bath, that a stove does not melt or crack where anything is heated,
 * that a class may have, and in which no other batch of the day stands or is to stand.
 */
record LargerVessel(Workings workings, Care care, Ask ask) {

    /**
     * The batches of a day, each that takes several pots with the vessel that would hold all of it; each vessel once.
     */
    List<Batch> named(List<Batch> batches) {
        List<Vessel> taken = new ArrayList<>(batches.stream().flatMap(batch -> batch.whole().vessel().stream())
                .toList());
        return batches.stream().map(batch -> {
            Optional<Vessel> found = batch.pots() == 1 ? Optional.empty()
                    : of(batch.chosen(), batch.whole().needlesGrams(), taken);
            found.ifPresent(taken::add);
            return batch.withLarger(found);
        }).toList();
    }

    private Optional<Vessel> of(Chosen chosen, double grams, List<Vessel> taken) {
        return workings.notebook().vessels().stream().filter(vessel -> !taken.contains(vessel))
                .filter(vessel -> holds(vessel, chosen, grams))
                .filter(vessel -> suits(vessel, care.uses(chosen.recipe(), Optional.of(vessel)))).findFirst();
    }

    private boolean holds(Vessel vessel, Chosen chosen, double grams) {
        return workings.scale(chosen.id(), grams, Optional.of(vessel))
                .filter(scaled -> scaled.pots().orElse(0) == 1)
                .filter(scaled -> scaled.remarks().stream().noneMatch(BatchRemark.TooShallow.class::isInstance))
                .isPresent();
    }

    private boolean suits(Vessel vessel, Uses uses) {
        return vessel.madeOf().map(Noted::value).filter(made -> !uses.hot() || made.bearsHeat()).isPresent()
                && uses.pots().stream().noneMatch(pot -> Hazards.ofPot(pot).isPresent())
                && (!ask.isClass() || ClassRules.of(uses, ask.minors()).allows());
    }
}
