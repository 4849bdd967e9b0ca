package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fascicle.measure.Kitchen;
import fascicle.notebook.Dye;
import fascicle.notebook.Needles;
import fascicle.workings.Workroom.Label;
import fascicle.workings.stock.Cost;
import fascicle.workings.stock.Stocktaking;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a pot cost, on small notebooks; the figures were worked by hand and stand beside each test. */
class CostTest {

    private final Workroom room = new Workroom(Kitchen.METRIC)
            .thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("50 g", 0).price(4.20))
            .thing(new Label("vinegar").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).density(1.006).pack("2000 mL", 0)
                    .price(1.40))
            .thing(new Label("alum").kind(Dye.Kind.MORDANT).form(Dye.Form.CRYSTALS).pack("500 g", 0).price(5))
            .thing(new Label("gift").form(Dye.Form.POWDER).pack("10 g", 0).price(0))
            .thing(new Label("unpriced").form(Dye.Form.POWDER).pack("10 g", 0))
            .thing("found", Dye.Kind.DYE, Dye.Form.PLANT);

    private Cost cost(String id) {
        return Stocktaking.of(room.workings()).cost(id).orElseThrow();
    }

    private static List<String> gaps(Cost cost) {
        return cost.gaps().stream().map(gap -> gap.place().file() + " " + gap.kind().word()).toList();
    }

    /**
     * Brick 1.5 % of 50 g = 0.75 g at 4.20/50 = 0.063; vinegar 250 + 60 + 40 = 350 mL at 1.40/2000 = 0.245; alum 10 % of
     * 50 g = 5 g at 5/500 = 0.05. In all 0.358, and 0.716 for 100 g of needles.
     */
    @Test
    void aPotCostsWhatWentIntoAllItsBaths() {
        room.entry("2026-05-09-a").weighing("50 g").presoak("6 L", "vinegar", "250 mL").mordant("3 L", "alum", "10 % owf")
                .water("3 L").dye("brick", "1.5 % owf").with("vinegar", "60 mL").finish("vinegar", "40 mL");
        assertEquals(0.358, cost("2026-05-09-a").total().orThrow(), 1e-9);
        assertEquals(0.716, cost("2026-05-09-a").per100g().orThrow(), 1e-9);
        assertEquals(List.of(), cost("2026-05-09-a").gaps());
    }

    /** A bin with 300 mL of vinegar costs 0.21; each of three pots bears 0.07. */
    @Test
    void aSharedBinIsPaidForByItsPotsAlike() {
        for (String id : List.of("2026-05-09-a", "2026-05-09-b", "2026-05-09-c")) {
            room.entry(id).inFile("pots.md").weighing("50 g").sharedPresoak("6 L", "vinegar", "300 mL").water("3 L");
        }
        assertEquals(0.07, cost("2026-05-09-a").total().orThrow(), 1e-9);
        assertEquals(0.07, cost("2026-05-09-c").total().orThrow(), 1e-9);
    }

    @Test
    void waterAndAGiftCostNothingAndThatIsKnown() {
        room.entry("2026-05-09-water").weighing("50 g").water("3 L");
        room.entry("2026-05-09-gift").weighing("50 g").water("3 L").dye("gift", "2 g");
        assertEquals(0, cost("2026-05-09-water").total().orThrow());
        assertEquals(0, cost("2026-05-09-gift").per100g().orThrow());
    }

    @Test
    void whatWasNotToldIsNotFree() {
        room.entry("2026-05-09-a").weighing("50 g");
        assertFalse(cost("2026-05-09-a").total().known());
        assertEquals(List.of("2026-05-09-a.md recipe"), gaps(cost("2026-05-09-a")));
    }

    @Test
    void everyLineThatWouldMakeItKnownIsNamedOnce() {
        room.entry("2026-05-09-a").weighing("50 g").water("3 L").dye("found", "200 g").dye("found", "50 g")
                .with("unpriced", "1 g").with("vinegar", "a splash");
        assertFalse(cost("2026-05-09-a").total().known());
        assertEquals(List.of("found.md pack", "unpriced.md price", "2026-05-09-a.md size"), gaps(cost("2026-05-09-a")));
    }

    /** 1 g of brick costs 0.084 however wet the needles were weighed. */
    @Test
    void dampNeedlesLeaveTheCostOfTheirWeightUnknown() {
        room.entry("2026-05-09-a").weighing("50 g").weighed(Needles.Weighed.DAMP).water("3 L").dye("brick", "1 g");
        assertEquals(0.084, cost("2026-05-09-a").total().orThrow(), 1e-9);
        assertFalse(cost("2026-05-09-a").per100g().known());
        assertEquals(List.of("2026-05-09-a.md needles-dry"), gaps(cost("2026-05-09-a")));
    }
}
