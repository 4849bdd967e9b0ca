package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Basin;
import fascicle.bath.Basis;
import fascicle.notebook.Dye;
import java.time.Duration;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Amounts taken from a method are for that method's weight and liquor, and grow from there. */
class InheritanceTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    /** For 50 g: 2.94 L of water and 60 mL of vinegar make 3 L, 60 mL to the gram. */
    private static final Consumer<Draft> SIMMER = draft -> draft.water("2.94 L").dye("brick", "1 g")
            .with("salt", "30 g").with("white-vinegar", "60 mL").with("salt", "5 g", Basis.BATCH)
            .presoak("5 L", "white-vinegar", "100 mL").mordant("2 L", "alum", "5 g").finish("glycerin", "30 mL");

    private final Workroom room = Workroom.usual().thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS)
            .thing("glycerin", Dye.Kind.OTHER, Dye.Form.LIQUID);

    @Test
    void aMethodIsWorkedOutForItsOwnWeight() {
        room.method("simmer").forNeedles("50 g").written(SIMMER);
        MethodWorking simmer = room.workings().method("Simmer").orElseThrow();
        assertEquals(50, known(simmer.grams()));
        assertEquals(3000, known(simmer.bath().liquorMl()));
        assertEquals(2, known(simmer.bath().dye().get(0).owfPercent()), 1e-12);
        assertEquals(10, known(simmer.bath().assistants().get(0).gramsPerLitre()), 1e-12);
    }

    @Test
    void itsWaterKeepsItsRatioAndItsPartsTheirBasis() {
        room.method("simmer").forNeedles("50 g").written(SIMMER);
        room.entry("2026-05-09-pot").weighing("20 g").follows("simmer").takenFrom("simmer", SIMMER);
        EntryWorking pot = room.worked("2026-05-09-pot");
        assertEquals(1200, known(pot.bath().liquorMl()), 1e-9);
        assertEquals(1176, known(pot.bath().waterMl()), 1e-9);
        assertEquals(0.4, known(pot.bath().dye().get(0).grams()), 1e-12);
        assertEquals(12, known(pot.bath().assistants().get(0).grams()), 1e-9);
        assertEquals(24, known(pot.bath().assistants().get(1).ml()), 1e-9);
        assertEquals(5, known(pot.bath().assistants().get(2).grams()), 1e-12);
        assertEquals(2000, known(pot.presoak().orElseThrow().waterMl()), 1e-9);
        assertEquals(40, known(pot.presoak().orElseThrow().with().get(0).ml()), 1e-9);
        assertEquals(800, known(pot.before().get(0).waterMl()), 1e-9);
        assertEquals(2, known(pot.before().get(0).with().get(0).grams()), 1e-12);
        assertEquals(12, known(pot.finish().get(0).ml()), 1e-9, "by the dyebath, 1200 of 3000 mL");
        assertEquals("60 mL", pot.bath().assistants().get(1).asWritten().orElseThrow());
    }

    @Test
    void ownWaterChangesWhatFollowsTheBathOnly() {
        room.method("simmer").forNeedles("50 g").written(SIMMER);
        room.entry("2026-05-09-pot").weighing("50 g").follows("simmer").takenFrom("simmer", SIMMER).water("5.88 L");
        BathFigures bath = room.worked("2026-05-09-pot").bath();
        // V = 5880 + 60 · V / 3000.
        assertEquals(6000, known(bath.liquorMl()), 1e-9);
        assertEquals(120, known(bath.assistants().get(1).ml()), 1e-9);
        assertEquals(60, known(bath.assistants().get(0).grams()), 1e-9);
        assertEquals(1, known(bath.dye().get(0).grams()), 1e-12);
    }

    @Test
    void ownPartsAreAsWritten() {
        room.method("simmer").forNeedles("50 g").written(SIMMER);
        room.entry("2026-05-09-pot").weighing("20 g").follows("simmer").takenFrom("simmer", SIMMER)
                .withInstead("white-vinegar", "100 mL");
        BathFigures bath = room.worked("2026-05-09-pot").bath();
        assertEquals(100, known(bath.assistants().get(0).ml()));
        assertEquals(1200, known(bath.liquorMl()), 1e-9, "the method's ratio stays");
        assertEquals(1100, known(bath.waterMl()), 1e-9);
    }

    @Test
    void aRatioStaysARatioAndADepthIsOneInTheEntrysVessel() {
        room.vessel("tray", new Basin.Rectangular(30, 20)).vessel("pot", new Basin.Rectangular(10, 10));
        Consumer<Draft> deep = draft -> draft.depth("5 cm").with("salt", "30 g");
        room.method("deep").forNeedles("50 g").written(deep).in("tray");
        room.entry("2026-05-09-small").weighing("10 g").takenFrom("deep", deep).in("pot");
        Consumer<Draft> wide = draft -> draft.ratio(60);
        room.method("wide").written(wide);
        room.entry("2026-05-09-wide").weighing("10 g").takenFrom("wide", wide);
        assertEquals(500, known(room.worked("2026-05-09-small").bath().liquorMl()), 1e-9);
        assertEquals(5, known(room.worked("2026-05-09-small").bath().assistants().get(0).grams()), 1e-9);
        assertEquals(600, known(room.worked("2026-05-09-wide").bath().liquorMl()), 1e-9);
    }

    @Test
    void aValueFromFurtherUpIsForTheMethodThatWroteIt() {
        Consumer<Draft> base = draft -> draft.water("3 L").with("salt", "30 g");
        Consumer<Draft> upper = draft -> draft.dye("brick", "4 g");
        room.method("base").forNeedles("50 g").written(base);
        room.method("upper").forNeedles("200 g").follows("base").takenFrom("base", base).written(upper);
        room.entry("2026-05-09-pot").weighing("100 g").follows("upper").takenFrom("base", base).takenFrom("upper", upper);
        MethodWorking worked = room.workings().method("upper").orElseThrow();
        assertEquals(12000, known(worked.bath().liquorMl()), 1e-9);
        assertEquals(120, known(worked.bath().assistants().get(0).grams()), 1e-9);
        BathFigures pot = room.worked("2026-05-09-pot").bath();
        assertEquals(6000, known(pot.liquorMl()), 1e-9);
        assertEquals(60, known(pot.assistants().get(0).grams()), 1e-9);
        assertEquals(2, known(pot.dye().get(0).grams()), 1e-12);
    }

    @Test
    void withoutAWeightAMethodsBareAmountsSayNothing() {
        room.method("simmer").written(SIMMER);
        room.entry("2026-05-09-pot").weighing("20 g").takenFrom("simmer", SIMMER);
        BathFigures bath = room.worked("2026-05-09-pot").bath();
        assertEquals(UNKNOWN, bath.liquorMl());
        assertEquals(UNKNOWN, bath.dye().get(0).grams());
        assertEquals("1 g", bath.dye().get(0).asWritten().orElseThrow());
    }

    @Test
    void whatGrowsWithARoughWeightIsRough() {
        room.method("simmer").forNeedles("50 g").written(SIMMER);
        room.entry("2026-05-09-pot").weighing("about 20 g").takenFrom("simmer", SIMMER);
        BathFigures bath = room.worked("2026-05-09-pot").bath();
        assertTrue(bath.about());
        assertTrue(bath.assistants().get(0).gramsAbout(), "its liquor rests on the weight");
    }

    @Test
    void aReusedBathIsNotPouredAsTheMethodSays() {
        room.method("simmer").forNeedles("50 g").written(SIMMER);
        room.entry("2026-05-02-first").weighing("50 g").takenFrom("simmer", SIMMER).left("2.5 L");
        room.entry("2026-05-09-second").weighing("50 g").takenFrom("simmer", SIMMER).reuses("2026-05-02-first")
                .withInstead("white-vinegar", "20 mL");
        assertEquals(2520, known(room.worked("2026-05-09-second").bath().liquorMl()));
    }

    @Test
    void methodsThatFollowOneAnotherInACircleAreWorkedOutAllTheSame() {
        room.method("hen").forNeedles("50 g").takenFrom("egg", draft -> draft.water("3 L")).dye("brick", "1 g");
        room.method("egg").forNeedles("50 g").takenFrom("hen", draft -> draft.dye("brick", "1 g").water("3 L"));
        assertTimeoutPreemptively(Duration.ofSeconds(10), () ->
                assertEquals(UNKNOWN, room.workings().method("hen").orElseThrow().bath().liquorMl()));
    }
}
