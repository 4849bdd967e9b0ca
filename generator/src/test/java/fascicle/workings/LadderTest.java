package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import fascicle.notebook.Dye;
import fascicle.notebook.Outcome;
import fascicle.workings.grid.Cell;
import fascicle.workings.grid.Ladder;
import java.util.List;
import org.junit.jupiter.api.Test;

class LadderTest {

    private final Workroom room = Workroom.usual().thing("ochre", Dye.Kind.DYE, Dye.Form.POWDER)
            .lot("faded", "light-faded").lot("scalded", "scalded");

    @Test
    void depthsRiseAndThoseEqualToTwoFiguresAreOneRung() {
        dyed("2026-05-01-a", "scalded", "2 % owf");
        dyed("2026-05-02-b", "scalded", "0.5 % owf");
        dyed("2026-05-03-c", "faded", "1.96 % owf");
        dyed("2026-05-04-d", "scalded", "10 % owf");
        assertEquals(List.of(0.5, 2.0, 10.0), depths("brick"));
        Ladder ladder = Ladder.of(room.workings(), "BRICK");
        assertEquals(List.of("light-faded", "scalded"), ladder.rows().stream().map(Ladder.Row::condition).toList());
        assertEquals(List.of(0, 1, 0), entries(ladder, 0));
        assertEquals(List.of(1, 1, 1), entries(ladder, 1));
    }

    @Test
    void gramsOnWeighedNeedlesAreADepthToo() {
        room.entry("2026-05-01-a").lot("scalded").weighing("40 g").dye("brick", "0.6 g");
        assertEquals(List.of(1.5), depths("brick"));
    }

    @Test
    void dyeAddedBitByBitIsOneDepth() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 % owf").dye("brick", "0.5 % owf");
        assertEquals(List.of(1.5), depths("brick"));
    }

    @Test
    void aRungShowsWhatWorkedAndElseWhatPartlyDid() {
        dyed("2026-05-01-a", "scalded", "1 % owf").lab(50, 20, 10).verdict(Outcome.Verdict.PARTLY);
        dyed("2026-05-02-b", "scalded", "2 % owf").lab(40, 20, 10).verdict(Outcome.Verdict.PARTLY);
        dyed("2026-05-03-c", "scalded", "2 % owf").lab(30, 20, 10).worked();
        dyed("2026-05-03-d", "scalded", "3 % owf").lab(20, 20, 10).verdict(Outcome.Verdict.FAILED);
        List<Cell> cells = Ladder.of(room.workings(), "brick").rows().get(0).cells();
        assertEquals(new Lab(50, 20, 10), cells.get(0).median().orElseThrow().colour());
        assertEquals(Outcome.Verdict.PARTLY, cells.get(0).median().orElseThrow().of());
        assertEquals(new Lab(30, 20, 10), cells.get(1).median().orElseThrow().colour());
        assertEquals(Outcome.Verdict.WORKED, cells.get(1).median().orElseThrow().of());
        assertTrue(cells.get(2).median().isEmpty(), "what failed lends no colour");
    }

    @Test
    void whatIsNotAloneOrNotMeasuredIsNoRung() {
        dyed("2026-05-01-mixed", "scalded", "1 % owf").dye("ochre", "1 % owf");
        dyed("2026-05-01-unweighed", "scalded", "1 g");
        dyed("2026-05-01-handful", "scalded", "a handful");
        dyed("2026-05-01-rest", "scalded", "1 % owf").reuses("2026-05-01-mixed");
        room.entry("2026-05-01-unsaid").dye("brick", "1 % owf");
        assertTrue(Ladder.all(room.workings()).isEmpty());
    }

    @Test
    void aRungThatRestsOnARoughFigureSaysSo() {
        dyed("2026-05-01-a", "scalded", "about 1 % owf");
        dyed("2026-05-02-b", "scalded", "2 % owf");
        assertEquals(List.of(new Ladder.Rung(1, true), new Ladder.Rung(2, false)),
                Ladder.of(room.workings(), "brick").rungs());
    }

    @Test
    void everyDyeHasItsLadderInTheNotebooksOrder() {
        room.entry("2026-05-01-a").lot("scalded").dye("ochre", "1 % owf");
        dyed("2026-05-02-b", "scalded", "2 % owf");
        List<Ladder> all = Ladder.all(room.workings());
        assertEquals(List.of("brick", "ochre"), all.stream().map(Ladder::dye).toList());
        assertEquals(all.get(0), Ladder.of(room.workings(), "brick"), "alone it is the same as among all");
    }

    private Draft dyed(String id, String lot, String amount) {
        return room.entry(id).lot(lot).dye("brick", amount);
    }

    private List<Double> depths(String dye) {
        return Ladder.of(room.workings(), dye).rungs().stream().map(Ladder.Rung::owfPercent).toList();
    }

    private static List<Integer> entries(Ladder ladder, int row) {
        return ladder.rows().get(row).cells().stream().map(cell -> cell.entries().size()).toList();
    }
}
