package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import fascicle.notebook.Dye;
import fascicle.notebook.Outcome;
import fascicle.workings.grid.Cell;
import fascicle.workings.grid.DyeGrid;
import java.util.List;
import org.junit.jupiter.api.Test;

class DyeGridTest {

    private final Workroom room = Workroom.usual()
            .thing("ochre", Dye.Kind.DYE, Dye.Form.POWDER)
            .thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS)
            .lot("faded", "light-faded").lot("scalded", "scalded");

    @Test
    void aCellIsTheMedianColourOfWhatWorked() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 % owf").lab(30, 20, 10).worked();
        room.entry("2026-05-02-b").lot("scalded").dye("brick", "1 % owf").lab(40, 24, 14).worked();
        room.entry("2026-05-02-c").lot("scalded").dye("brick", "1 % owf").lab(90, 0, 0)
                .verdict(Outcome.Verdict.FAILED);
        Cell cell = cell("brick", "scalded");
        // Of an even count the mean of the middle two: Hyndman and Fan (1996), type 7.
        assertEquals(new Lab(35, 22, 12), cell.median().orElseThrow().colour());
        assertEquals(3, cell.entries().size());
        assertEquals(new Group.VerdictDays(2, 0, 1, 2, 2), cell.days());
    }

    @Test
    void whatOnlyPartlyWorkedLendsTheGridNoColour() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 g").lab(30, 20, 10).verdict(Outcome.Verdict.PARTLY);
        assertTrue(cell("brick", "scalded").median().isEmpty());
        assertEquals(1, cell("brick", "scalded").days().partly());
    }

    @Test
    void aMixtureSaysLittleOfOneDyeAndHasItsOwnRow() {
        room.entry("2026-05-01-a").lot("scalded").dye("ochre", "1 g").dye("brick", "2 g").worked();
        room.entry("2026-05-02-b").lot("scalded").dye("BRICK", "3 g").dye("ochre", "1 g").worked();
        assertEquals(List.of(List.of("brick"), List.of("ochre"), List.of("brick", "ochre")), rows());
        assertTrue(cell("brick", "scalded").entries().isEmpty());
        assertEquals(2, grid().rows().get(2).cells().get(0).entries().size());
    }

    @Test
    void theSameDyeAddedTwiceIsStillAlone() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 g").dye("brick", "1 tsp").worked();
        assertEquals(1, cell("brick", "scalded").entries().size());
    }

    @Test
    void assistantsAndMordantsDoNotColour() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 g").dye("alum", "5 g").with("salt", "10 g")
                .mordant("1 L", "alum", "1 g");
        assertEquals(List.of(List.of("brick")), rows());
        assertEquals(1, cell("brick", "scalded").entries().size());
    }

    @Test
    void whatIsListedAsDyeColoursWhereItsJarSaysNothing() {
        room.thing(new Workroom.Label("bark"));
        room.entry("2026-05-01-a").lot("scalded").dye("bark", "20 g").with("brick", "1 g");
        assertEquals(List.of("brick", "bark"), rows().get(2), "and a dye among the assistants colours all the same");
    }

    @Test
    void everyConditionWithAnEntryHasAColumnAndWhatWasNotTriedIsEmpty() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 g");
        room.entry("2026-05-01-b").lot("faded").dye("ochre", "1 g");
        assertEquals(List.of("light-faded", "scalded"), grid().conditions());
        assertTrue(cell("brick", "light-faded").entries().isEmpty());
        assertEquals(0, cell("brick", "light-faded").days().all());
    }

    @Test
    void needlesOrBathsThatWereUsedBeforeStandAside() {
        room.entry("2026-05-01-a").lot("scalded").dye("brick", "1 g");
        room.entry("2026-05-02-over").from("2026-05-01-a").dye("ochre", "1 g");
        room.entry("2026-05-02-rest").lot("scalded").reuses("2026-05-01-a").dye("brick", "1 g");
        room.entry("2026-05-02-unsaid").dye("brick", "1 g");
        room.entry("2026-05-02-blank").lot("scalded");
        assertEquals(1, cell("brick", "scalded").entries().size());
        assertTrue(cell("ochre", "scalded").entries().isEmpty());
        assertEquals(4, grid().aside());
    }

    @Test
    void aDyesOwnGridHoldsItAloneAndInItsMixtures() {
        room.entry("2026-05-01-a").lot("scalded").dye("ochre", "1 g");
        room.entry("2026-05-02-b").lot("scalded").dye("ochre", "1 g").dye("brick", "1 g");
        DyeGrid grid = DyeGrid.ofDye(room.workings(), "Brick");
        assertEquals(List.of(List.of("brick"), List.of("brick", "ochre")),
                grid.rows().stream().map(DyeGrid.Row::dyes).toList());
    }

    @Test
    void nothingDyedIsNothingLaidOut() {
        assertTrue(grid().rows().isEmpty());
        assertTrue(DyeGrid.ofDye(room.workings(), "brick").rows().isEmpty());
    }

    private DyeGrid grid() {
        Workings workings = room.workings();
        return DyeGrid.of(workings, workings.entries());
    }

    private List<List<String>> rows() {
        return grid().rows().stream().map(DyeGrid.Row::dyes).toList();
    }

    private Cell cell(String dye, String condition) {
        DyeGrid grid = grid();
        return grid.rows().stream().filter(row -> row.dyes().equals(List.of(dye))).findFirst().orElseThrow()
                .cells().get(grid.conditions().indexOf(condition));
    }
}
