package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.measure.Kitchen;
import fascicle.notebook.Dye;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What only computing reveals. */
class FindingsTest {

    private final Workroom room = Workroom.usual();

    @Test
    void aGoodNotebookHasNone() {
        room.lot("scalded-2025", "scalded", "900 g", "150 g", List.of());
        room.method("simmer").forNeedles("50 g").ratio(60).dye("brick", "1 g").with("salt", "30 g");
        room.entry("2026-05-09-pot").lot("scalded-2025").weighing("45 g").water("3.2 L").dye("brick", "1.5 % owf")
                .with("white-vinegar", "60 mL").heat("88 °C", "30 min", "2 h").worked().lab(40, 20, 20)
                .keptSince("2026-05-09").ph(4.5);
        assertFindings();
    }

    /** The lab dip of LiquorTest at 1:5 and 3 %: 15 + 15 = 30 mL for a bath of 25 mL. */
    @Test
    void aBathOfMoreStockThanLiquorCannotBe() {
        room.entry("2026-05-09-dip").weighing("5 g").ratio(5).dye("brick", "15 mL of 1 % stock")
                .with("salt", "15 mL of 20 % stock");
        assertFindings("2026-05-09-dip.md:3:1: error: in “dip” the liquid parts come to 30 mL but the liquor is only 25 mL: "
                + "use a stronger stock, or a higher ratio");
    }

    @Test
    void norCanAMethodThatAsksForOne() {
        room.method("dip").forNeedles("5 g").ratio(5).dye("brick", "30 mL of 1 % stock");
        assertFindings("dip.md:3:1: error: in “dip” the liquid parts come to 30 mL but the liquor is only 25 mL: "
                + "use a stronger stock, or a higher ratio");
    }

    @Test
    void norABathOfWhichEveryLitreIsMoreThanFull() {
        room.thing(new Workroom.Label("amber").kind(Dye.Kind.DYE).form(Dye.Form.LIQUID).density(1));
        room.entry("2026-05-09-thick").lot("nobody's").water("1 L").dye("amber", "1200 g/L").bundles(1);
        assertEquals(List.of("error", "warning"), room.workings().found().findings().stream()
                .map(finding -> finding.level().word()).toList());
    }

    @Test
    void needlesWithoutAWeight() {
        room.lot("loose", "fallen");
        room.entry("2026-05-09-none").water("3 L");
        room.entry("2026-05-09-three").lot("loose").bundles(3);
        assertFindings("2026-05-09-none.md:1:1: warning: “none” does not say what its needles weighed; add a weight or a "
                        + "number of bundles under “needles:” (about is welcome)",
                "2026-05-09-three.md:3:1: warning: “3.0” bundles have no weight, because “loose” does not say what a "
                        + "bundle weighs; add “bundle: {weight: …, counted: …}” there, or the weight here");
    }

    @Test
    void aSuccessWithoutAColour() {
        room.entry("2026-05-09-blind").weighing("45 g").worked();
        assertFindings("2026-05-09-blind.md:1:1: warning: “blind” worked but has no colour; add a reading of the dry needles "
                + "under “colour:”, so that it can be found and repeated");
    }

    @Test
    void aPowderWithoutADensityIsNamedOnce() {
        room.entry("2026-05-09-one").weighing("45 g").water("3 L").dye("brick", "1 tsp");
        room.entry("2026-05-09-two").weighing("45 g").water("3 L").dye("brick", "2 tsp").with("salt", "1 tsp");
        assertFindings("brick.md:1:1: warning: “brick” is measured by spoons or cups (“1 tsp”) but nothing says what they "
                + "weigh; add “level-tsp: {weight: …}” or “density:”, or “form: liquid” if it is one");
    }

    @Test
    void aMethodWithoutAWeight() {
        room.method("simmer").water("3 L").dye("brick", "1 % owf");
        room.method("careful").ratio(60).dye("brick", "1 % owf").with("salt", "10 g/L");
        assertFindings("simmer.md:1:1: warning: “for:” is missing: “3 L” is for a certain weight of needles, and nobody can "
                + "tell which; add it, such as “for: 50 g”");
    }

    @Test
    void moreNeedlesThanTheLotHeld() {
        room.lot("small", "fallen", "100 g", "", List.of());
        room.entry("2026-05-09-a").lot("small").weighing("60 g");
        room.entry("2026-05-09-b").lot("small").weighing("40 g");
        room.entry("2026-05-16-over").from("2026-05-09-a").weighing("60 g");
        assertFindings();
        room.entry("2026-05-23-c").lot("small").weighing("1 g");
        assertFindings("small.md:1:1: warning: entries took 101 g of “small”, which weighs “100 g”; check the entries' "
                + "weights, or the lot's");
    }

    @Test
    void moreDyeThanWasBought() {
        room.thing(new Workroom.Label("moss").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("5 g", 2));
        room.entry("2026-05-09-a").weighing("100 g").ratio(60).dye("moss", "6 % owf");
        room.entry("2026-05-09-b").weighing("100 g").dye("moss", "400 mL of 1 % stock").ratio(60);
        assertFindings();
        room.entry("2026-05-16-c").weighing("100 g").ratio(60).dye("moss", "1 g");
        assertFindings("moss.md:1:1: warning: entries used 11 g of “moss”, but only 10 g was bought; add the purchase under "
                + "“bought:”, or check the amounts");
    }

    @Test
    void datesOutOfOrder() {
        room.lot("autumn-2025", "fallen");
        room.entry("2025-10-03-early").lot("autumn-2025").weighing("45 g").keptSince("2025-10-02");
        room.entry("2025-10-05-later").lot("autumn-2025").weighing("45 g").left("2 L");
        room.entry("2025-10-04-between").from("2025-10-05-later").weighing("45 g").reuses("2025-10-05-later");
        assertFindings("2025-10-03-early.md:2:1: warning: needles of “autumn-2025” were gathered on 2025-10-04, after this "
                        + "dye day of 2025-10-03; check both dates, and whether another lot is meant",
                "2025-10-03-early.md:4:1: warning: kept since “2025-10-02”, but the needles were dyed on 2025-10-03; one of "
                        + "the dates is wrong",
                "2025-10-04-between.md:2:1: warning: the needles came from “2025-10-05-later”, dyed on 2025-10-05, after "
                        + "this dye day of 2025-10-04; name an earlier entry",
                "2025-10-04-between.md:4:1: warning: the bath came from “2025-10-05-later”, dyed on 2025-10-05, after this "
                        + "dye day of 2025-10-04; name an earlier entry");
    }

    @Test
    void absurdAmounts() {
        room.entry("2026-05-09-a").weighing("45 g").water("3 L").dye("brick", "15 g").with("salt", "400 g");
        assertFindings("2026-05-09-a.md:5:1: warning: “15 g” of brick comes to 33.33 % owf, more than the 20 % owf that one "
                        + "expects at most of a dye; check the figure and its unit, or say “form: plant” in its file if it "
                        + "is one",
                "2026-05-09-a.md:7:1: warning: “400 g” of salt comes to 888.9 % owf, more than the 100 % owf that one "
                        + "expects at most of anything but a plant; check the figure and its unit, or say “form: plant” in "
                        + "its file if it is one");
    }

    @Test
    void noAmountOfAPlantIsAbsurdNorVinegarOrSaltInABigBath() {
        room.thing("onion-skins", Dye.Kind.DYE, Dye.Form.PLANT);
        room.thing(new Workroom.Label("spirit").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).density(1.006));
        room.entry("2026-05-09-a").weighing("40 g").ratio(100).dye("onion-skins", "200 % owf").with("salt", "12 g/L")
                .with("spirit", "60 mL");
        assertFindings();
    }

    @Test
    void absurdBaths() {
        room.entry("2026-05-09-a").weighing("45 g").water("3 mL");
        room.entry("2026-05-09-b").weighing("45 g").ratio(501);
        room.entry("2026-05-09-c").weighing("4.9 kg").water("201 L").heat("190 °C", "", "1 h").ph(1);
        room.entry("2026-05-09-d").weighing("5.1 kg").ratio(45);
        assertFindings("2026-05-09-a.md:3:1: warning: “3 mL” gives 0.06667 mL of liquor to a gram of needles, where 3 to 500 "
                        + "is usual; check the water and the weight",
                "2026-05-09-b.md:3:1: warning: “501.0” gives 501 mL of liquor to a gram of needles, where 3 to 500 is usual; "
                        + "check the water and the weight",
                "2026-05-09-c.md:3:1: warning: “201 L” of water is more than 200 L; check the figure and its unit",
                "2026-05-09-c.md:4:1: warning: “190 °C” is hotter than an open pot gets, on the stove or in the oven: water "
                        + "boils at 100.0 °C at the sea (lower in the hills: say “height:” in notebook.yaml); write “to: "
                        + "boil” or a lower temperature, and check whether °F is meant",
                "2026-05-09-c.md:6:1: warning: a bath of pH “1.0” is outside 2 to 12, where dyebaths are; check the reading",
                "2026-05-09-d.md:2:1: warning: 5.1 kg of needles is more than 5 kg in one pot; check the figure and its unit",
                "2026-05-09-d.md:3:1: warning: “45.0” makes 229.5 L of liquor, more than 200 L; check it and the weight of "
                        + "the needles");
    }

    @Test
    void aSharedBinIsFilledOnce() {
        Workroom bins = new Workroom(Kitchen.METRIC)
                .thing(new Workroom.Label("spirit").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).pack("300 mL", 1));
        bins.entry("2026-05-09-a").inFile("pots.md").weighing("45 g").sharedPresoak("6 L", "spirit", "250 mL");
        bins.entry("2026-05-09-b").inFile("pots.md").weighing("45 g").sharedPresoak("6 L", "spirit", "250 mL");
        assertEquals(List.of(), bins.findings());
        bins.entry("2026-05-16-b").weighing("45 g").sharedPresoak("6 L", "spirit", "250 mL");
        assertEquals(List.of("spirit.md:1:1: warning: entries used 500 mL of “spirit”, but only 300 mL was bought; add the "
                + "purchase under “bought:”, or check the amounts"), bins.findings(), "the bin of another file is another");
    }

    private void assertFindings(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", room.findings()));
    }
}
