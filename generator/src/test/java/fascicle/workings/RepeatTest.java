package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.NeedleLot;
import fascicle.workings.grid.Repeat;
import fascicle.workings.grid.Spread;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatTest {

    private final Workroom room = Workroom.usual().lot("scalded", "scalded").lot("scalded-later", "scalded")
            .lot("faded", "light-faded");

    /**
     * Five readings whose mean CIEDE2000 from their mean is 0.3413: the worked example in
     * {@code fascicle/colour/unlevelness.csv}, computed apart from this program.
     */
    @Test
    void theSpreadIsTheMeanDifferenceFromTheMean() {
        brick("2026-05-01-a").lab(45.12, 22.30, 30.18);
        brick("2026-05-02-b").lab(44.80, 22.71, 29.60);
        brick("2026-05-03-c").lab(45.55, 21.95, 30.72);
        brick("2026-05-04-d").lab(45.02, 22.48, 30.05);
        brick("2026-05-05-e").lab(45.31, 22.06, 30.35);
        Spread spread = repeats().get(0).spread().orElseThrow();
        assertEquals(0.3413, spread.mean().de00(), 5e-5);
        assertEquals(5, spread.colours());
    }

    /** Pair 1 of G. Sharma, W. Wu and E. N. Dalal (2005), Color Research and Application 30, 21–30: 2.0425. */
    @Test
    void theLargestDifferenceIsThatOfTheTwoFarthestApart() {
        brick("2026-05-01-a").lab(50, 2.6772, -79.7751);
        brick("2026-05-02-b").lab(50, 0, -82.7485);
        brick("2026-05-03-c").lab(50, 1.3, -81.2);
        brick("2026-05-04-uncoloured");
        Spread spread = repeats().get(0).spread().orElseThrow();
        assertEquals(2.0425, spread.largest().de00(), 5e-5);
        assertEquals(3, spread.colours(), "only what has a colour enters");
        assertEquals(4, repeats().get(0).entries().size());
    }

    @Test
    void oneColourHasNoSpread() {
        brick("2026-05-01-a").lab(50, 10, 10);
        brick("2026-05-02-b");
        assertTrue(repeats().get(0).spread().isEmpty());
    }

    @Test
    void coloursReadInDifferentWaysSaySo() {
        brick("2026-05-01-a").lab(50, 10, 10);
        brick("2026-05-02-b").lab(51, 10, 10);
        assertTrue(repeats().get(0).spread().orElseThrow().readAlike());
        brick("2026-05-03-c").hex("#8a5a4a");
        assertFalse(repeats().get(0).spread().orElseThrow().readAlike());
    }

    @Test
    void anotherDepthOrConditionIsNoRepeat() {
        brick("2026-05-01-a");
        room.entry("2026-05-02-deeper").lot("scalded").dye("brick", "3 % owf");
        room.entry("2026-05-03-faded").lot("faded").dye("brick", "1.5 % owf");
        assertTrue(repeats().isEmpty());
    }

    /** The lots of this room name no species, so that only entries of one lot are surely of the same. */
    @Test
    void needlesOfUnknownSpeciesRepeatOnlyWithinTheirLot() {
        brick("2026-05-01-a");
        room.entry("2026-05-02-b").lot("scalded-later").dye("brick", "1.5 % owf");
        assertTrue(repeats().isEmpty());
        room.entry("2026-05-03-c").lot("scalded-later").dye("brick", "1.5 % owf");
        assertEquals(List.of("scalded-later"), repeats().get(0).lots().stream().map(NeedleLot::id).toList());
    }

    @Test
    void overDyesAndUsedBathsRepeatNothing() {
        brick("2026-05-01-a");
        brick("2026-05-02-b").reuses("2026-05-01-a");
        room.entry("2026-05-03-c").from("2026-05-01-a").dye("brick", "1.5 % owf");
        assertTrue(repeats().isEmpty());
    }

    @Test
    void twoPotsOfWhichNothingIsToldAreNoRepeats() {
        room.entry("2026-05-01-a").lot("scalded");
        room.entry("2026-05-02-b").lot("scalded");
        assertTrue(repeats().isEmpty());
    }

    @Test
    void whatWasRepeatedMostComesFirst() {
        brick("2026-05-01-a");
        brick("2026-05-02-b");
        for (int day = 3; day <= 5; day++) {
            room.entry("2026-05-0" + day + "-x").lot("faded").dye("brick", "1 % owf");
        }
        assertEquals(List.of(3, 2), repeats().stream().map(repeat -> repeat.entries().size()).toList());
    }

    @Test
    void threeThousandRepeatsAreNoLabour() {
        for (int pot = 0; pot < 3000; pot++) {
            brick("2026-05-01-" + pot).lab(40 + pot % 17 * 0.1, 20 + pot % 13 * 0.1, 10);
        }
        Workings workings = room.workings();
        assertTimeout(Duration.ofSeconds(2), () -> Repeat.among(workings.entries()));
    }

    private Draft brick(String id) {
        return room.entry(id).lot("scalded").dye("brick", "1.5 % owf");
    }

    private List<Repeat> repeats() {
        return Repeat.among(room.workings().entries());
    }
}
