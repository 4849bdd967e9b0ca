package fascicle.workings;

import fascicle.bath.Uptake;
import fascicle.notebook.Findings;
import fascicle.notebook.Glass;

/** Whether a bath can be as it was seen in its glasses. */
final class GlassChecks {

    /**
     * By how much a bath may grow though nothing was poured in: wet needles carry their presoak into it
     * ({@code common practice, no source}).
     */
    private static final double GROWS = 1.05;

    private final Findings findings;

    GlassChecks(Findings findings) {
        this.findings = findings;
    }

    /** Checks what was seen of an entry's bath. */
    void check(EntryWorking working) {
        working.entry().glass().ifPresent(glass -> {
            left(glass, working);
            darker(glass, working);
            plain(glass, working);
        });
    }

    private void left(Glass glass, EntryWorking working) {
        double liquor = working.bath().liquorMl().orElse(Double.POSITIVE_INFINITY);
        glass.left().ifPresent(left -> {
            if (glass.measuredLeft().isEmpty()) {
                findings.warning(left.place(), "“left: " + left.written() + "” is a glass of nothing, and no uptake is "
                        + "reckoned from it; write how much bath was left, or leave it out");
            } else if (left.value().value() > GROWS * liquor) {
                findings.warning(left.place(), "“left: " + left.written() + "” is more than there was: the bath of “"
                        + working.entry().called() + "” had " + Say.volume(liquor) + " of liquor; check both");
            }
        });
    }

    private void plain(Glass glass, EntryWorking working) {
        if (working.uptake().flatMap(Uptake::why).filter(Uptake.Why.DARK_PLAIN_WATER::equals).isPresent()) {
            glass.plain().ifPresent(plain -> findings.warning(plain.place(), "the glass of plain water is darker than "
                    + "that of the bath of “" + working.entry().called() + "”, which cannot be in the same light, and "
                    + "no uptake is reckoned from it; check that “plain” and “before” are not mixed up, or read them "
                    + "again side by side"));
        }
    }

    private void darker(Glass glass, EntryWorking working) {
        if (working.uptake().flatMap(Uptake::why).filter(Uptake.Why.DARKER::equals).isPresent()) {
            glass.after().ifPresent(after -> findings.warning(after.place(),
                    "by its glasses the bath of “" + working.entry().called() + "” held more dye after the needles "
                            + "than before; check that “before”, “after”, “diluted” and “left” are not mixed up, and "
                            + "that both glasses stood in the same light"));
        }
    }
}
