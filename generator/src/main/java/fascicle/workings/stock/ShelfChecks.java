package fascicle.workings.stock;

import fascicle.measure.Dimension;
import fascicle.notebook.Dye;
import fascicle.notebook.Findings;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.workings.Say;

/** Whether more was used than there was. */
public final class ShelfChecks {

    private final Notebook notebook;
    private final Stocktaking stock;
    private final Findings findings;

    /**
     * Checks of a shelf.
     *
     * @param notebook the notebook
     * @param stock what is left of it
     * @param findings where what was found is collected
     */
    public ShelfChecks(Notebook notebook, Stocktaking stock, Findings findings) {
        this.notebook = notebook;
        this.stock = stock;
        this.findings = findings;
    }

    /** Checks lots, purchases and what was kept. */
    public void check() {
        stock.bundles().stream().filter(bundle -> bundle.remainder().isOverdrawn()).forEach(this::overdrawn);
        notebook.lots().forEach(lot -> stock.lot(lot.id())
                .filter(supply -> supply.remainder().isOverdrawn()).ifPresent(supply -> overdrawn(lot, supply)));
        notebook.dyes().forEach(dye -> stock.dye(dye.id())
                .filter(supply -> supply.remainder().isOverdrawn()).ifPresent(supply -> overdrawn(dye, supply)));
    }

    private void overdrawn(NeedleLot lot, Supply supply) {
        lot.weight().ifPresent(weight -> findings.warning(weight.place(), "entries took "
                + Say.weight(used(supply.remainder())) + " of “" + lot.called() + "”, which weighs “" + weight.written()
                + "”; check the entries' weights, or the lot's"));
    }

    private void overdrawn(DyedBundle bundle) {
        String who = bundle.overdyed().isEmpty() ? "baskets" : "baskets and over-dyes";
        bundle.kept().weight().ifPresent(weight -> findings.warning(weight.place(), who + " took "
                + Say.weight(used(bundle.remainder())) + " of what was kept, which weighs “" + weight.written()
                + "”; check the weights"));
    }

    private void overdrawn(Dye dye, Supply supply) {
        boolean byMass = supply.measured() == Dimension.MASS;
        double bought = supply.remainder().had().known().orThrow();
        findings.warning(dye.place(), "entries used " + said(used(supply.remainder()), byMass) + " of “" + dye.called()
                + "”, but only " + said(bought, byMass) + " was bought; add the purchase under “bought:”, or check the "
                + "amounts");
    }

    private static double used(Remainder remainder) {
        return remainder.used().known().orThrow();
    }

    private static String said(double amount, boolean byMass) {
        return byMass ? Say.weight(amount) : Say.volume(amount);
    }
}
