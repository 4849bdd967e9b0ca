package fascicle.workings.stock;

import fascicle.bath.Magnitude;
import fascicle.notebook.Findings;
import fascicle.notebook.Ids;
import fascicle.notebook.Needles;
import fascicle.notebook.Noted;
import fascicle.notebook.Place;
import fascicle.workings.EntryWorking;
import fascicle.workings.Say;
import fascicle.workings.Workings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether more needles were dyed again than were dyed. Dry weights alone are compared. Where what was kept was weighed
 * dry, {@link ShelfChecks} compares with that.
 */
public final class OverdyeChecks {

    /** Dry needles take up some water from moist air, and some dye and salt ({@code common practice, no source}). */
    private static final double WEIGHED_AGAIN = 1.05;

    /** By so much rough weights may be off ({@code common practice, no source}). */
    private static final double ROUGHLY = 1.25;

    private final Workings workings;
    private final Stocktaking stock;
    private final Findings findings;

    /**
     * Checks of a notebook.
     *
     * @param workings its figures
     * @param stock what is left of it
     * @param findings where what was found is collected
     */
    public OverdyeChecks(Workings workings, Stocktaking stock, Findings findings) {
        this.workings = workings;
        this.stock = stock;
        this.findings = findings;
    }

    /** Checks every entry whose needles were dyed again. */
    public void check() {
        Map<String, List<EntryWorking>> again = new LinkedHashMap<>();
        workings.entries().forEach(entry -> entry.entry().needles().from().ifPresent(from ->
                again.computeIfAbsent(Ids.key(from.value()), unused -> new ArrayList<>()).add(entry)));
        again.forEach((id, takers) -> workings.entry(id).filter(first -> !isWeighedDry(first))
                .ifPresent(first -> check(first, takers)));
    }

    private boolean isWeighedDry(EntryWorking first) {
        return stock.bundle(first.id()).filter(bundle -> !bundle.isDamp() && bundle.kept().weight().isPresent())
                .isPresent();
    }

    private void check(EntryWorking first, List<EntryWorking> takers) {
        Magnitude dyed = Taking.needles(first).whole();
        Magnitude taken = Magnitude.ZERO;
        for (EntryWorking taker : takers) {
            taken = taken.plus(Taking.needles(taker).known());
            double room = dyed.about() || taken.about() ? ROUGHLY : WEIGHED_AGAIN;
            if (dyed.known() && taken.orThrow() > dyed.orThrow() * room) {
                tooMuch(first, dyed.orThrow(), taker, taken.orThrow());
                return;
            }
        }
    }

    /** Said of the entry with which it becomes too much. */
    private void tooMuch(EntryWorking first, double dyed, EntryWorking taker, double taken) {
        Needles needles = taker.entry().needles();
        Optional<Noted<?>> weight = needles.weight().<Noted<?>>map(noted -> noted).or(needles::bundles);
        Place place = weight.map(Noted::place).orElse(taker.entry().place());
        findings.warning(place, "with these, " + Say.weight(taken) + " of needles from “" + first.id() + "” were dyed "
                + "again, more than the " + Say.weight(dyed) + " that were dyed there; check the weights");
    }
}
