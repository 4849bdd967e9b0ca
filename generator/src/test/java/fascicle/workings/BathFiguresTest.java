package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Basin;
import fascicle.bath.Basis;
import fascicle.measure.Kitchen;
import fascicle.notebook.Dye;
import fascicle.notebook.Needles;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What one bath comes to. Worked by hand but for what names a source. */
class BathFiguresTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private final Workroom room = Workroom.usual().thing("glaubers-salt", Dye.Kind.SALT, Dye.Form.CRYSTALS)
            .thing("wetting", Dye.Kind.WETTING, Dye.Form.POWDER);

    @Test
    void theLiquorIsTheWaterAndTheLiquidParts() {
        room.entry("2026-05-09-brick").weighing("45 g").water("3.2 L").dye("brick", "1.5 % owf").with("salt", "40 g")
                .with("white-vinegar", "60 mL");
        BathFigures bath = room.worked("2026-05-09-brick").bath();
        assertEquals(3200, known(bath.waterMl()));
        assertEquals(3260, known(bath.liquorMl()));
        assertEquals(3260 / 45.0, known(bath.ratio()), 1e-12);
        PartFigures brick = bath.dye().get(0);
        assertEquals(0.675, known(brick.grams()), 1e-12);
        assertEquals(1.5, known(brick.owfPercent()));
        assertEquals(0.675 / 3.26, known(brick.gramsPerLitre()), 1e-12);
        assertEquals(Basis.NEEDLES, brick.by());
        PartFigures salt = bath.assistants().get(0);
        assertEquals(40 / 45.0 * 100, known(salt.owfPercent()), 1e-12);
        assertEquals(40 / 3.26, known(salt.gramsPerLitre()), 1e-12);
        assertEquals(UNKNOWN, salt.ml(), "nobody pours salt");
        assertEquals(Basis.BATH, salt.by());
        PartFigures vinegar = bath.assistants().get(1);
        assertEquals(60, known(vinegar.ml()));
        assertEquals(UNKNOWN, vinegar.grams(), "its density is not known");
        assertFalse(bath.about());
    }

    /**
     * 5.0 g at 1:10, dye 7.5 mL of 1 % stock, wetting 2.5, sequestering 10, anti-pilling 5 mL, Glauber's salt 10, soda
     * 2.5 mL of 20 %: "Dyeing calculation in lab dip" (Textile Calculation, 2015-01), water to add 12.5 mL.
     */
    @Test
    void aLabDipOfStockSolutions() {
        room.entry("2026-05-09-dip").weighing("5 g").ratio(10).dye("brick", "7.5 mL of 1 % stock")
                .with("wetting", "2.5 mL of 1 % stock").with("wetting", "10 mL of 1 % stock")
                .with("wetting", "5 mL of 1 % stock").with("glaubers-salt", "10 mL of 20 % stock")
                .with("salt", "2.5 mL of 20 % stock");
        BathFigures bath = room.worked("2026-05-09-dip").bath();
        assertEquals(50, known(bath.liquorMl()));
        assertEquals(12.5, known(bath.waterMl()));
        assertEquals(1.5, known(bath.dye().get(0).owfPercent()), 1e-12);
        assertEquals(1, known(bath.dye().get(0).stockPercent()));
        assertEquals(40, known(bath.assistants().get(3).gramsPerLitre()), 1e-12);
        assertEquals(10, known(bath.assistants().get(4).gramsPerLitre()), 1e-12);
    }

    /** 40 g at 2 % owf from 1 % stock at 1:30: dye 0.8 g, water 1120 mL, 0.667 g/L. */
    @Test
    void fortyGramsAtTwoPerCentFromStock() {
        room.entry("2026-05-09-dip").weighing("40 g").ratio(30).dye("brick", "80 mL of 1 % stock");
        BathFigures bath = room.worked("2026-05-09-dip").bath();
        assertEquals(1120, known(bath.waterMl()), 1e-9);
        assertEquals(0.8, known(bath.dye().get(0).grams()), 1e-12);
        assertEquals(2, known(bath.dye().get(0).owfPercent()), 1e-12);
        assertEquals(0.8 / 1.2, known(bath.dye().get(0).gramsPerLitre()), 1e-12);
    }

    /** 8 oz are 226.796185 g (NIST Handbook 44, Appendix C); 2 % of them 4.5359 g. */
    @Test
    void eightOuncesAtTwoPerCent() {
        room.entry("2026-05-09-dip").weighing("8 oz").dye("brick", "2 % owf");
        assertEquals(4.5359237, known(room.worked("2026-05-09-dip").bath().dye().get(0).grams()), 1e-9);
    }

    @Test
    void theDepthInAVesselFixesTheLiquor() {
        room.vessel("tray", new Basin.Rectangular(30, 20));
        room.entry("2026-05-09-deep").weighing("45 g").in("TRAY").depth("7 cm").with("white-vinegar", "60 mL");
        room.entry("2026-05-09-lost").weighing("45 g").in("bucket").depth("7 cm").with("white-vinegar", "60 mL");
        assertEquals(4200, known(room.worked("2026-05-09-deep").bath().liquorMl()), 1e-9);
        assertEquals(4140, known(room.worked("2026-05-09-deep").bath().waterMl()), 1e-9);
        assertEquals(UNKNOWN, room.worked("2026-05-09-lost").bath().liquorMl(), "nobody knows that bucket");
        assertEquals(60, known(room.worked("2026-05-09-lost").bath().assistants().get(0).ml()));
    }

    @Test
    void aLiquidInGramsPerLitreTakesRoomInTheLiquorItFollows() {
        room.thing(new Workroom.Label("amber").kind(Dye.Kind.DYE).form(Dye.Form.LIQUID).density(1.25));
        room.entry("2026-05-09-amber").weighing("45 g").water("900 mL").dye("amber", "125 g/L");
        BathFigures bath = room.worked("2026-05-09-amber").bath();
        // 125 g are 100 mL in each litre: 900 / (1 − 0.1).
        assertEquals(1000, known(bath.liquorMl()), 1e-9);
        assertEquals(100, known(bath.dye().get(0).ml()), 1e-9);
        assertEquals(Basis.BATH, bath.dye().get(0).by(), "g/L follows the bath, whatever the thing is");
    }

    @Test
    void owfNeedsADryWeight() {
        room.entry("2026-05-09-damp").weighing("60 g").weighed(Needles.Weighed.DAMP).water("3 L")
                .dye("brick", "1.5 % owf").with("salt", "12 g/L");
        EntryWorking damp = room.worked("2026-05-09-damp");
        assertEquals(60, known(damp.needles().grams()));
        assertEquals(UNKNOWN, damp.needles().dryGrams());
        assertEquals(UNKNOWN, damp.bath().ratio());
        assertEquals(UNKNOWN, damp.bath().dye().get(0).grams());
        assertEquals(1.5, known(damp.bath().dye().get(0).owfPercent()), "it is written so");
        assertEquals(36, known(damp.bath().assistants().get(0).grams()), 1e-12);
        assertEquals(UNKNOWN, damp.bath().assistants().get(0).owfPercent());
    }

    @Test
    void whatRestsOnARoughWeightIsRough() {
        room.entry("2026-05-09-about").weighing("about 45 g").water("3 L").dye("brick", "1.5 % owf").with("salt", "40 g");
        EntryWorking working = room.worked("2026-05-09-about");
        assertTrue(working.needles().about());
        assertFalse(working.bath().about(), "the water was measured");
        PartFigures dye = working.bath().dye().get(0);
        PartFigures salt = working.bath().assistants().get(0);
        assertTrue(dye.about() && dye.gramsAbout());
        assertTrue(salt.about(), "its owf rests on the weight");
        assertFalse(salt.gramsAbout(), "40 g are 40 g");
    }

    @Test
    void aSplashMakesTheLiquorRough() {
        room.entry("2026-05-09-splash").weighing("45 g").water("3 L").with("white-vinegar", "a splash");
        BathFigures bath = room.worked("2026-05-09-splash").bath();
        assertEquals(3000, known(bath.liquorMl()));
        assertTrue(bath.about());
        assertEquals("a splash", bath.assistants().get(0).asWritten().orElseThrow());
        assertEquals(UNKNOWN, bath.assistants().get(0).ml());
    }

    @Test
    void aReusedBathIsWhatWasLeftAndWhatWasAdded() {
        room.entry("2026-05-02-strong").weighing("45 g").water("3 L").left("2.4 L");
        room.entry("2026-05-02-spilt").weighing("45 g").water("3 L");
        room.entry("2026-05-09-weak").weighing("45 g").reuses("2026-05-02-strong").water("500 mL")
                .with("white-vinegar", "60 mL");
        room.entry("2026-05-09-as-it-was").weighing("45 g").reuses("2026-05-02-strong").with("white-vinegar", "60 mL");
        room.entry("2026-05-09-topped-up").weighing("45 g").reuses("2026-05-02-strong").ratio(60);
        room.entry("2026-05-09-unknown").weighing("45 g").reuses("2026-05-02-spilt").water("500 mL");
        assertEquals(2960, known(room.worked("2026-05-09-weak").bath().liquorMl()));
        assertEquals(500, known(room.worked("2026-05-09-weak").bath().waterMl()));
        assertEquals(2460, known(room.worked("2026-05-09-as-it-was").bath().liquorMl()));
        assertEquals(UNKNOWN, room.worked("2026-05-09-as-it-was").bath().waterMl(), "nobody said");
        assertEquals(300, known(room.worked("2026-05-09-topped-up").bath().waterMl()), 1e-9);
        assertEquals(UNKNOWN, room.worked("2026-05-09-unknown").bath().liquorMl());
    }

    @Test
    void whatFollowsTheBathInAFinishFollowsTheDyebath() {
        room.thing("glycerin", Dye.Kind.OTHER, Dye.Form.LIQUID);
        room.entry("2026-05-09-soft").weighing("45 g").water("3 L").finish("glycerin", "100 mL");
        PartFigures glycerin = room.worked("2026-05-09-soft").finish().get(0);
        assertEquals(100, known(glycerin.ml()));
        assertEquals(3000, known(room.worked("2026-05-09-soft").bath().liquorMl()), "it is no part of the dyebath");
        assertEquals(200, known(room.workings().scale("2026-05-09-soft", 90).orElseThrow().finish().get(0).ml()), 1e-9);
    }

    @Test
    void anUnknownWeightLeavesTheWrittenRatio() {
        Workroom bare = new Workroom(Kitchen.US);
        bare.entry("2026-05-09-unweighed").ratio(60);
        assertEquals(60, known(bare.worked("2026-05-09-unweighed").bath().ratio()));
        assertEquals(UNKNOWN, bare.worked("2026-05-09-unweighed").bath().liquorMl());
    }
}
