package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Outcome;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which recipe a maker is shown to start from. Each statement needs the one before to be a tie. */
class StartingTest {

    private final Workroom room = Workroom.usual();

    @Test
    void theRecipeThatWorkedOnMostDays() {
        pot("2026-05-09-a", "1 % owf").lab(40, 10, 10);
        pot("2026-05-09-b", "1 % owf").lab(40, 10, 10);
        pot("2026-05-09-c", "1 % owf").lab(40, 10, 10);
        pot("2026-05-16-d", "2 % owf").lab(80, 10, 10);
        pot("2026-05-23-e", "2 % owf").lab(80, 10, 10);
        Group.Start start = start().orElseThrow();
        assertEquals("2026-05-23-e", start.entry().id(), "two days count more than three pots");
        assertEquals(2, start.days());
        assertFalse(start.once());
    }

    @Test
    void thenTheEntryNearestTheMedianColour() {
        pot("2026-05-09-far", "1 % owf").lab(30, 10, 10).evenness(5);
        pot("2026-05-16-near", "2 % owf").lab(51, 10, 10);
        pot("2026-05-23-other", "3 % owf").lab(60, 10, 10).evenness(5);
        pot("2026-05-30-colourless", "4 % owf").evenness(5);
        Group.Start start = start().orElseThrow();
        assertEquals("2026-05-16-near", start.entry().id());
        assertTrue(start.once());
    }

    @Test
    void thenTheMostEven() {
        pot("2026-05-09-even", "1 % owf").lab(50, 10, 10).evenness(5);
        pot("2026-05-16-streaked", "1.1 % owf").lab(50, 10, 10).evenness(2);
        pot("2026-05-23-ungraded", "1.2 % owf").lab(50, 10, 10);
        assertEquals("2026-05-09-even", start().orElseThrow().entry().id());
    }

    @Test
    void thenTheNewest() {
        pot("2026-05-09-old", "1 % owf");
        pot("2026-05-16-new", "2 % owf");
        assertEquals("2026-05-16-new", start().orElseThrow().entry().id());
    }

    @Test
    void thenTheFirstById() {
        pot("2026-05-09-b", "1 % owf");
        pot("2026-05-09-a", "1 % owf");
        assertEquals("2026-05-09-a", start().orElseThrow().entry().id());
    }

    @Test
    void whatDidNotWorkIsNoStart() {
        room.entry("2026-05-09-a").verdict(Outcome.Verdict.PARTLY);
        room.entry("2026-05-09-b");
        assertEquals(Optional.empty(), start());
    }

    private Draft pot(String id, String amount) {
        return room.entry(id).weighing("45 g").water("3 L").dye("brick", amount).worked();
    }

    private Optional<Group.Start> start() {
        return room.workings().group(Group.Kind.YEAR, "2026").orElseThrow().start();
    }
}
