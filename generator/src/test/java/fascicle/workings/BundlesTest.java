package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.measure.Kitchen;
import fascicle.notebook.Needles;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BundlesTest {

    private final Workroom room = new Workroom(Kitchen.METRIC).lot("scalded-2025", "Scalded", "900 g", "150 g", List.of())
            .lot("loose-2025", "fallen");

    @Test
    void bundlesAreWeighedByTheirLot() {
        room.entry("2026-05-09-three").lot("scalded-2025").bundles(3);
        NeedleFigures needles = room.worked("2026-05-09-three").needles();
        assertEquals(45, known(needles.dryGrams()), 1e-12);
        assertTrue(needles.about(), "no two bundles are alike");
        assertEquals(Optional.of("scalded"), needles.condition(), "spelled as the notebook spells it");
    }

    @Test
    void bundlesOfALotThatWasNeverWeighedHaveNoWeight() {
        room.entry("2026-05-09-three").lot("loose-2025").bundles(3);
        assertEquals(OptionalDouble.empty(), room.worked("2026-05-09-three").needles().grams());
    }

    @Test
    void aGuessIsADryWeightButRough() {
        room.entry("2026-05-09-guess").lot("loose-2025").weighing("45 g").weighed(Needles.Weighed.GUESSED);
        NeedleFigures needles = room.worked("2026-05-09-guess").needles();
        assertEquals(45, known(needles.dryGrams()));
        assertTrue(needles.about());
    }

    @Test
    void anOverDyeIsOfTheLotThatWasDyedFirst() {
        room.entry("2026-05-02-gold").lot("scalded-2025").weighing("45 g");
        room.entry("2026-05-09-rust").from("2026-05-02-Gold").weighing("20 g");
        room.entry("2026-05-16-night").from("2026-05-09-rust");
        NeedleFigures twice = room.worked("2026-05-16-night").needles();
        assertEquals("scalded-2025", twice.lot().orElseThrow().id());
        assertEquals(OptionalDouble.empty(), twice.grams(), "nobody weighed them again");
        assertEquals(20, known(room.worked("2026-05-09-rust").needles().dryGrams()));
    }

    @Test
    void overDyesInACircleAreOfNoLot() {
        room.entry("2026-05-02-hen").from("2026-05-09-egg").weighing("45 g");
        room.entry("2026-05-09-egg").from("2026-05-02-hen").weighing("45 g");
        assertTimeoutPreemptively(Duration.ofSeconds(10),
                () -> assertEquals(Optional.empty(), room.worked("2026-05-02-hen").needles().lot()));
    }
}
