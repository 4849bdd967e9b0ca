package fascicle.workings;

import fascicle.bath.Uptake;
import fascicle.measure.Quantity;
import fascicle.notebook.Bath;
import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Glass;
import fascicle.notebook.Ids;
import fascicle.notebook.Noted;
import java.util.HashMap;
import java.util.Map;

/** Whether what is said of reused baths, and of what is left in them, can be. */
final class ReuseChecks {

    /** By how much a bath may grow though nothing was poured in: wet needles carry their presoak into it. */
    private static final double GROWS = 1.05;

    private final Workings workings;
    private final Findings findings;

    ReuseChecks(Workings workings, Findings findings) {
        this.workings = workings;
        this.findings = findings;
    }

    /** Checks every entry. */
    void check() {
        Map<String, Entry> taken = new HashMap<>();
        for (EntryWorking working : workings.entries()) {
            Entry entry = working.entry();
            Bath bath = entry.recipe().bath();
            if (bath.reuses().isEmpty()) {
                bath.left().ifPresent(left -> findings.warning(left.place(), "“left: " + left.written() + "” is a share "
                        + "of an earlier bath’s dye, and this bath names none; add “reuses:” with the entry whose bath "
                        + "it is, or take “left:” out"));
            }
            bath.reuses().ifPresent(reuses -> {
                Entry first = taken.putIfAbsent(Ids.key(reuses.value()), entry);
                if (first != null) {
                    findings.warning(reuses.place(), "the bath of “" + reuses.written() + "” went to “" + first.id()
                            + "” already; a bath stands in one pot, so name the entry that used it last, or check both");
                }
            });
            entry.glass().flatMap(Glass::left).ifPresent(left -> left(left, working));
            darker(working);
        }
    }

    private void left(Noted<Quantity> left, EntryWorking working) {
        double millilitres = left.value().value();
        if (millilitres <= 0) {
            findings.warning(left.place(), "“left: " + left.written() + "” is a glass of nothing, and no uptake is "
                    + "reckoned from it; write how much bath was left, or leave it out");
        } else if (millilitres > GROWS * working.bath().liquorMl().orElse(Double.POSITIVE_INFINITY)) {
            findings.warning(left.place(), "“left: " + left.written() + "” is more than there was: the bath of “"
                    + working.entry().called() + "” had " + Say.volume(working.bath().liquorMl().orElseThrow())
                    + " of liquor; check both");
        }
    }

    private void darker(EntryWorking working) {
        if (working.uptake().flatMap(Uptake::why).filter(Uptake.Why.DARKER::equals).isPresent()) {
            working.entry().glass().flatMap(Glass::after).ifPresent(after -> findings.warning(after.place(),
                    "by its glasses the bath of “" + working.entry().called() + "” held more dye after the needles than "
                            + "before; check that “before”, “after”, “diluted” and “left” are not mixed up, and that "
                            + "both glasses stood in the same light"));
        }
    }
}
