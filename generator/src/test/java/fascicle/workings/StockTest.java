package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Magnitude;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.notebook.Dye;
import fascicle.notebook.Needles;
import fascicle.workings.Workroom.Label;
import fascicle.workings.stock.Basket;
import fascicle.workings.stock.DyedBundle;
import fascicle.workings.stock.Gap;
import fascicle.workings.stock.Stocktaking;
import fascicle.workings.stock.Supply;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is left, on small notebooks; the figures were worked by hand and stand beside each test. */
class StockTest {

    private final Workroom room = new Workroom(Kitchen.METRIC);

    private Stocktaking stock() {
        return Stocktaking.of(room.workings());
    }

    private Supply lot(String id) {
        return stock().lot(id).orElseThrow();
    }

    private Supply dye(String id) {
        return stock().dye(id).orElseThrow();
    }

    private static void assertIs(double expected, Magnitude actual) {
        assertEquals(expected, actual.orThrow(), 1e-9);
    }

    private static List<String> lines(List<Gap> gaps) {
        return gaps.stream().map(gap -> gap.place().file() + ":" + gap.place().line() + " " + gap.kind().word()).toList();
    }

    /** 300 − 45 − 30 = 225 g; the over-dye's 20 g were taken with the 45. */
    @Test
    void aLotIsLessWhatEntriesTookAndAnOverDyeTakesNothing() {
        room.lot("fallen", "fallen", "300 g", "", List.of());
        room.entry("2026-05-09-a").lot("fallen").weighing("45 g");
        room.entry("2026-05-09-b").lot("fallen").weighing("30 g");
        room.entry("2026-05-10-again").from("2026-05-09-a").weighing("20 g");
        assertIs(225, lot("FALLEN").remainder().left());
        assertEquals(List.of(), lot("fallen").remainder().gaps());
        assertFalse(lot("fallen").remainder().left().about());
    }

    /** 60 g of household vinegar are about 59.64 mL (238 g to a US cup of 236.588 mL): about 940.36 of a litre are left. */
    @Test
    void aBottleOfVinegarThatWasWeighedOut() {
        room.thing(new Label("vinegar").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).acidity(5).pack("1000 mL", 1));
        room.entry("2026-05-09-a").weighing("45 g").water("1 L").with("vinegar", "60 g");
        assertEquals(940.356, dye("vinegar").remainder().left().orThrow(), 1e-3);
        assertTrue(dye("vinegar").remainder().left().about());
    }

    /** 300 − 45 = 255 g at most; what the damp 40 g were when dry nobody knows. */
    @Test
    void needlesWeighedDampLeaveALotUnknownAndSayWhere() {
        room.lot("green", "fresh-green", "300 g", "", List.of());
        room.entry("2026-05-09-a").lot("green").weighing("45 g");
        room.entry("2026-05-09-b").lot("green").weighing("40 g").weighed(Needles.Weighed.DAMP);
        room.entry("2026-05-09-c").lot("green");
        assertFalse(lot("green").remainder().left().known());
        assertIs(255, lot("green").remainder().atMost());
        assertEquals(List.of("2026-05-09-b.md:4 needles-dry", "2026-05-09-c.md:2 needles"),
                lines(lot("green").remainder().gaps()));
    }

    /** Ten bundles of 150 g: three are about 45 g, 255 g are about what is left. */
    @Test
    void countedBundlesAreRoughAndUnknownWhereNobodyWeighedTen() {
        room.lot("weighed", "fallen", "300 g", "150 g", List.of()).lot("unweighed", "fallen", "300 g", "", List.of());
        room.entry("2026-05-09-a").lot("weighed").bundles(3);
        room.entry("2026-05-09-b").lot("unweighed").bundles(3);
        assertIs(255, lot("weighed").remainder().left());
        assertTrue(lot("weighed").remainder().left().about());
        assertEquals(List.of("unweighed.md:1 lot-bundle"), lines(lot("unweighed").remainder().gaps()));
    }

    @Test
    void aLotWithoutAWeightIsUnknownAndOneOfWhichNothingWasTakenIsWhole() {
        room.lot("unweighed", "fallen").lot("whole", "fallen", "300 g", "", List.of());
        room.entry("2026-05-09-a").lot("unweighed").weighing("45 g");
        assertFalse(lot("unweighed").remainder().left().known());
        assertFalse(lot("unweighed").remainder().atMost().known());
        assertEquals(List.of("unweighed.md:1 lot-weight"), lines(lot("unweighed").remainder().gaps()));
        assertIs(300, lot("whole").remainder().left());
        assertTrue(stock().lot("nowhere").isEmpty());
    }

    /** 100 g bought. 2 g, 3 % of 50 g = 1.5 g, 40 mL of 1 % stock = 0.4 g: 96.1 g are left. */
    @Test
    void aDyeIsLessWhatWasWeighedReckonedOnNeedlesAndDissolvedInStock() {
        room.thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("50 g", 2));
        room.entry("2026-05-09-a").weighing("50 g").water("3 L").dye("brick", "2 g").dye("brick", "3 % owf")
                .dye("brick", "40 mL of 1 % stock");
        assertIs(96.1, dye("brick").remainder().left());
        assertEquals(Dimension.MASS, dye("brick").measured());
    }

    /** 2 L of a liquid of 1.25 g/mL: 250 mL and 100 g = 80 mL and 50 mL of 10 % stock = 5 g = 4 mL leave 1666 mL. */
    @Test
    void aLiquidIsMeasuredAsItsPackIsThroughItsDensity() {
        room.thing(new Label("syrup").form(Dye.Form.LIQUID).density(1.25).pack("2000 mL", 1));
        room.entry("2026-05-09-a").weighing("50 g").water("3 L").with("syrup", "250 mL").with("syrup", "100 g")
                .finish("syrup", "50 mL of 10 % stock");
        assertIs(1666, dye("syrup").remainder().left());
        assertEquals(Dimension.VOLUME, dye("syrup").measured());
    }

    @Test
    void whatCannotBeTurnedIntoThePacksUnitAsksForADensity() {
        room.thing(new Label("syrup").form(Dye.Form.LIQUID).pack("2000 mL", 1));
        room.entry("2026-05-09-a").weighing("50 g").water("3 L").with("syrup", "100 g");
        assertEquals(List.of("syrup.md:1 density"), lines(dye("syrup").remainder().gaps()));
        assertIs(2000, dye("syrup").remainder().atMost());
    }

    /** 500 − 250 = 250 mL: two pots, one bin. */
    @Test
    void aSharedBinIsFilledOnce() {
        room.thing(new Label("vinegar").kind(Dye.Kind.ACID).form(Dye.Form.LIQUID).pack("500 mL", 1));
        room.entry("2026-05-09-a").inFile("pots.md").weighing("45 g").sharedPresoak("6 L", "vinegar", "250 mL");
        room.entry("2026-05-09-b").inFile("pots.md").weighing("45 g").sharedPresoak("6 L", "vinegar", "250 mL");
        assertIs(250, dye("vinegar").remainder().left());
    }

    @Test
    void aSplashLeavesTheBottleUnknownAndSaysWhere() {
        room.thing(new Label("vinegar").form(Dye.Form.LIQUID).pack("500 mL", 1));
        room.entry("2026-05-09-a").weighing("45 g").with("vinegar", "a splash").with("vinegar", "")
                .with("vinegar", "60 mL");
        assertFalse(dye("vinegar").remainder().left().known());
        assertIs(440, dye("vinegar").remainder().atMost());
        assertEquals(List.of("2026-05-09-a.md:4 size", "2026-05-09-a.md:5 amount"),
                lines(dye("vinegar").remainder().gaps()));
    }

    @Test
    void withoutAPackOrAPurchaseNothingIsKnownAndWithoutUseAllIsLeft() {
        room.thing("found", Dye.Kind.DYE, Dye.Form.PLANT).thing(new Label("unbought").pack("50 g", 0))
                .thing(new Label("unused").pack("50 g", 2)).thing("white-vinegar", Dye.Kind.ACID, Dye.Form.LIQUID);
        room.entry("2026-05-09-a").weighing("45 g").dye("found", "200 g").with("unbought", "1 g")
                .with("white-vinegar", "60 mL");
        assertEquals(List.of("found.md:1 pack", "found.md:1 bought"), lines(dye("found").remainder().gaps()));
        assertEquals(List.of("white-vinegar.md:1 pack-liquid", "white-vinegar.md:1 bought"),
                lines(dye("white-vinegar").remainder().gaps()), "a liquid is sold by volume");
        assertEquals(List.of("unbought.md:1 bought"), lines(dye("unbought").remainder().gaps()));
        assertIs(100, dye("unused").remainder().left());
        assertFalse(dye("unused").lasts().known(), "what is not used has no pace");
    }

    /** 50 g, 4 g in two years, 1 g of that within 365 days: 46 g last 46 years of 365 days. */
    @Test
    void thePaceIsThatOfTheLastYear() {
        room.thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("50 g", 1).on("2025-01-02"));
        room.entry("2025-01-03-a").weighing("45 g").dye("brick", "3 g");
        room.entry("2026-06-01-b").weighing("45 g").dye("brick", "1 g");
        room.entry("2026-07-01-c").weighing("45 g");
        assertEquals(Optional.of(LocalDate.parse("2026-07-01")), stock().today());
        assertIs(46 * 365.0, dye("brick").lasts());
        assertFalse(dye("brick").isRunningOut());
    }

    /** 10 g used in the year to 1 July 2026, on its first day too; 2 g last 73 days. A day earlier is another year. */
    @Test
    void whatLastsLessThanAQuarterIsRunningOut() {
        room.thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("13 g", 1));
        room.entry("2025-07-01-before").weighing("45 g").dye("brick", "1 g");
        room.entry("2025-07-02-first").weighing("45 g").dye("brick", "4 g");
        room.entry("2026-07-01-last").weighing("45 g").dye("brick", "6 g");
        assertIs(2, dye("brick").remainder().left());
        assertIs(73, dye("brick").lasts());
        assertTrue(dye("brick").isRunningOut());
    }

    /** 101 days, 10 g used: 5 g last 50.5 days; of 31 days no pace is told. */
    @Test
    void aYoungNotebookHasThePaceOfItsOwnDaysOrNone() {
        room.thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("15 g", 1));
        room.entry("2026-03-01-a").weighing("45 g").dye("brick", "10 g");
        room.entry("2026-03-31-b").weighing("45 g");
        assertFalse(dye("brick").lasts().known());
        room.entry("2026-06-09-c").weighing("45 g");
        assertIs(50.5, dye("brick").lasts());
    }

    /** The same 101 days; a year written wrong on either side leaves their pace as it is: 16 − 12 = 4 g last 40.4 days. */
    @Test
    void aYearWrittenWrongDoesNotSpoilThePace() {
        room.thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("16 g", 1));
        room.entry("2026-03-01-a").weighing("45 g").dye("brick", "10 g");
        room.entry("2026-06-09-c").weighing("45 g");
        room.entry("2062-06-09-d").weighing("45 g").dye("brick", "1 g");
        room.entry("1926-06-09-e").weighing("45 g").dye("brick", "1 g");
        assertIs(40.4, dye("brick").lasts());
    }

    /** 43 − 20 − 8 = 15 g; another 8 g leave 7 g, less than 8 g, though at 16 g a year they last 159 days. */
    @Test
    void lessThanTheSmallestBatchTookIsRunningOut() {
        room.thing(new Label("brick").kind(Dye.Kind.DYE).form(Dye.Form.POWDER).pack("43 g", 1));
        room.entry("2020-03-01-a").weighing("45 g").dye("brick", "20 g");
        room.entry("2026-03-01-b").weighing("45 g").dye("brick", "8 g");
        assertIs(15, dye("brick").remainder().left());
        assertFalse(dye("brick").isRunningOut());
        room.entry("2026-03-02-c").weighing("45 g").dye("brick", "8 g");
        assertIs(7, dye("brick").remainder().left());
        assertTrue(dye("brick").isTooLittle());
        assertTrue(dye("brick").isRunningOut());
        room.entry("2026-03-03-d").weighing("45 g").dye("brick", "0.5 g");
        assertFalse(dye("brick").isTooLittle());
    }

    @Test
    void nothingLeftIsRunningOutThoughNobodyUsedItLately() {
        room.thing(new Label("brick").pack("10 g", 1));
        room.entry("2020-03-01-a").weighing("45 g").dye("brick", "10 g");
        room.entry("2026-03-01-b").weighing("45 g");
        assertIs(0, dye("brick").remainder().left());
        assertTrue(dye("brick").isRunningOut());
        assertFalse(dye("brick").remainder().isOverdrawn());
        room.entry("2020-03-02-c").weighing("45 g").dye("brick", "2 g");
        assertIs(-2, dye("brick").remainder().left());
        assertTrue(dye("brick").remainder().isOverdrawn());
    }

    /** 41 − 10 − 5 − 8 = 18 g. */
    @Test
    void aDyedBundleIsLessBasketsAndLaterDyeings() {
        room.entry("2026-05-02-gold").weighing("45 g").kept("41 g", "dry", "").used("10 g", "Lake  basket")
                .used("5 g", "tray");
        room.entry("2026-05-09-rust").from("2026-05-02-GOLD").weighing("8 g").kept("7 g", "dry", "")
                .used("7 g", "lake basket");
        DyedBundle gold = stock().bundle("2026-05-02-gold").orElseThrow();
        assertIs(18, gold.remainder().left());
        assertEquals(Optional.empty(), gold.useBy());
        assertEquals(List.of(), gold.undated());
        List<Basket> baskets = stock().baskets();
        assertEquals(List.of("Lake  basket", "tray"), baskets.stream().map(Basket::name).toList());
        assertEquals(List.of("2026-05-02-gold", "2026-05-09-rust"),
                baskets.get(0).taken().stream().map(taken -> taken.entry().id()).toList());
        assertIs(17, baskets.get(0).weight(false).orElseThrow().whole());
        assertEquals(Optional.empty(), baskets.get(0).weight(true));
    }

    /** 41 − 10 = 31 g at most: what the over-dye's 8 g weighed damp nobody knows; weighed damp as well they leave 23 g. */
    @Test
    void dryGramsAreNeverTakenOffDampOnes() {
        room.dampKeeps("3 days").entry("2026-05-02-gold").weighing("45 g").kept("41 g", "damp", "2026-05-02")
                .used("10 g", "tray");
        Draft rust = room.entry("2026-05-03-rust").from("2026-05-02-gold").weighing("8 g");
        DyedBundle gold = stock().bundle("2026-05-02-gold").orElseThrow();
        assertFalse(gold.remainder().left().known());
        assertIs(31, gold.remainder().atMost());
        assertEquals(List.of("2026-05-02-gold.md:3 overdyed-damp"), lines(gold.remainder().gaps()));
        rust.weighed(Needles.Weighed.DAMP);
        assertIs(23, stock().bundle("2026-05-02-gold").orElseThrow().remainder().left());
    }

    @Test
    void dampAndDryNeedlesMakeNoSum() {
        room.entry("2026-05-02-gold").weighing("45 g").kept("41 g", "damp", "").used("10 g", "tray");
        room.entry("2026-05-03-rust").weighing("45 g").kept("41 g", "dry", "").used("7 g", "tray");
        Basket tray = stock().baskets().get(0);
        assertIs(7, tray.weight(false).orElseThrow().whole());
        assertIs(10, tray.weight(true).orElseThrow().whole());
    }

    @Test
    void moreTakenByBasketsAndOverDyesThanWasKeptIsSaid() {
        room.entry("2026-05-02-gold").weighing("45 g").kept("20 g", "dry", "").used("10 g", "tray");
        room.entry("2026-05-09-rust").from("2026-05-02-gold").weighing("12 g");
        assertIs(-2, stock().bundle("2026-05-02-gold").orElseThrow().remainder().left());
        assertEquals(List.of("2026-05-02-gold.md:3:1: warning: baskets and over-dyes took 22 g of what was kept, which "
                + "weighs “20 g”; check the weights"),
                room.findings().stream().filter(finding -> finding.contains("took")).toList());
    }

    /** Kept on 11 May, damp needles that keep for 3 days are to be used by 14 May. */
    @Test
    void aDampBundleHasAUseBy() {
        room.dampKeeps("3 days").entry("2026-05-09-a").weighing("45 g").kept("41 g", "damp", "2026-05-11");
        room.entry("2026-05-09-b").weighing("45 g").kept("41 g", "damp", "");
        DyedBundle damp = stock().bundle("2026-05-09-a").orElseThrow();
        assertEquals(Optional.of(LocalDate.parse("2026-05-14")), damp.useBy());
        assertFalse(damp.isLate(LocalDate.parse("2026-05-14")));
        assertTrue(damp.isLate(LocalDate.parse("2026-05-15")));
        DyedBundle undated = stock().bundle("2026-05-09-b").orElseThrow();
        assertEquals(Optional.empty(), undated.useBy());
        assertEquals(List.of("2026-05-09-b.md:4 since"), lines(undated.undated()));
    }

    @Test
    void aRoughTimeMakesTheUseByRough() {
        room.dampKeeps("about 3 days").entry("2026-05-09-a").weighing("45 g").kept("41 g", "damp", "2026-05-11");
        room.entry("2026-05-09-b").weighing("45 g").kept("41 g", "dry", "2026-05-11");
        assertTrue(stock().bundle("2026-05-09-a").orElseThrow().useByAbout());
        assertFalse(stock().bundle("2026-05-09-b").orElseThrow().useByAbout());
        room.dampKeeps("3 days");
        assertFalse(stock().bundle("2026-05-09-a").orElseThrow().useByAbout());
    }

    @Test
    void withoutAWordHowLongDampNeedlesKeepThereIsNoUseBy() {
        room.entry("2026-05-09-a").weighing("45 g").kept("", "damp", "2026-05-11").used("", "tray");
        DyedBundle damp = stock().bundle("2026-05-09-a").orElseThrow();
        assertEquals(List.of("notebook.yaml:1 damp-keeps"), lines(damp.undated()));
        assertEquals(List.of("kept-weight", "used-weight"),
                damp.remainder().gaps().stream().map(gap -> gap.kind().word()).toList());
        assertFalse(damp.remainder().left().known());
    }

    @Test
    void aNotebookWithoutADateHasNoToday() {
        assertEquals(Optional.empty(), stock().today());
    }
}
