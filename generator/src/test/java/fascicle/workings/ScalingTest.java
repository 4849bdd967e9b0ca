package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Basis;
import fascicle.bath.Magnitude;
import fascicle.notebook.Dye;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A recipe worked out for another weight of needles. */
class ScalingTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private final Workroom room = Workroom.usual().thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS);

    @Test
    void fortyFiveGramsBecomeAHundredAndTwenty() {
        room.entry("2026-05-09-brick").weighing("45 g").in("wide-pan").water("3.2 L").dye("brick", "1.5 % owf")
                .with("salt", "40 g").with("white-vinegar", "60 mL");
        Scaled scaled = scale("2026-05-09-BRICK", 120);
        assertEquals("2026-05-09-brick", scaled.of());
        assertEquals(3260.0 * 120 / 45, known(scaled.liquorMl()), 1e-9);
        assertEquals(8693.3333 - 160, known(scaled.waterMl()), 1e-4);
        assertEquals(1.8, known(scaled.parts().get(0).grams()), 1e-12);
        assertEquals(106.6667, known(scaled.parts().get(1).grams()), 1e-4);
        assertEquals(160, known(scaled.parts().get(2).ml()), 1e-9);
        assertEquals(40 / 3.26, known(scaled.parts().get(1).gramsPerLitre()), 1e-9, "the same bath, only more of it");
        assertEquals(Optional.of("wide-pan"), scaled.vesselId());
    }

    @Test
    void eachBasisGrowsInItsOwnWay() {
        room.entry("2026-05-09-three").weighing("50 g").water("3 L").with("salt", "10 g", Basis.NEEDLES)
                .with("salt", "10 g", Basis.BATH).with("salt", "10 g", Basis.BATCH).with("salt", "10 g/L")
                .with("salt", "10 % owf").with("white-vinegar", "300 mL", Basis.BATCH);
        Scaled scaled = scale("2026-05-09-three", 100);
        assertEquals(20, known(scaled.parts().get(0).grams()), 1e-12);
        assertEquals(20, known(scaled.parts().get(1).grams()), 1e-12);
        assertEquals(10, known(scaled.parts().get(2).grams()), 1e-12);
        assertEquals(66, known(scaled.parts().get(3).grams()), 1e-12);
        assertEquals(10, known(scaled.parts().get(4).grams()), 1e-12);
        assertEquals(6600, known(scaled.liquorMl()), 1e-9);
        assertEquals(6300, known(scaled.waterMl()), 1e-9, "water fills what a batch of vinegar leaves");
        assertEquals(10, known(scaled.parts().get(2).owfPercent()), 1e-12);
    }

    @Test
    void toItsOwnWeightARecipeIsItself() {
        room.entry("2026-05-09-same").weighing("45 g").water("3.2 L").dye("brick", "2 g").with("white-vinegar", "60 mL")
                .presoak("6 L", "white-vinegar", "250 mL").mordant("2 L", "alum", "5 g");
        Scaled scaled = scale("2026-05-09-same", 45);
        assertEquals(3200, known(scaled.waterMl()), 1e-9);
        assertEquals(2, known(scaled.parts().get(0).grams()), 1e-12);
        assertEquals(6000, known(scaled.presoak().orElseThrow().waterMl()), 1e-9);
        assertEquals(5, known(scaled.before().get(0).with().get(0).grams()), 1e-12);
    }

    @Test
    void soaksKeepTheirRatioToTheNeedles() {
        room.entry("2026-05-09-soaked").weighing("50 g").water("3 L").presoak("6 L", "white-vinegar", "250 mL")
                .mordant("2 L", "alum", "10 % owf");
        Scaled scaled = scale("2026-05-09-soaked", 100);
        assertEquals(12500, known(scaled.presoak().orElseThrow().liquorMl()), 1e-9);
        assertEquals(500, known(scaled.presoak().orElseThrow().with().get(0).ml()), 1e-9);
        assertEquals(4000, known(scaled.before().get(0).waterMl()), 1e-9);
        assertEquals(10, known(scaled.before().get(0).with().get(0).grams()), 1e-12);
    }

    @Test
    void ofASharedBinNothingCanBeSaid() {
        room.entry("2026-05-09-pot").weighing("50 g").water("3 L").sharedPresoak("6 L", "white-vinegar", "250 mL");
        SoakFigures whole = room.worked("2026-05-09-pot").presoak().orElseThrow();
        assertTrue(whole.shared());
        assertEquals(6250, known(whole.liquorMl()), "the whole bin");
        assertEquals(UNKNOWN, whole.with().get(0).owfPercent(), "it holds other pots' needles too");
        SoakFigures scaled = scale("2026-05-09-pot", 100).presoak().orElseThrow();
        assertEquals(UNKNOWN, scaled.liquorMl());
        assertEquals(UNKNOWN, scaled.with().get(0).ml());
    }

    @Test
    void aReusedBathIsTakenInTheSameShare() {
        room.entry("2026-05-02-strong").weighing("45 g").water("3 L").left("2 L");
        room.entry("2026-05-09-weak").weighing("50 g").reuses("2026-05-02-strong").water("500 mL");
        Scaled scaled = scale("2026-05-09-weak", 25);
        assertEquals(1250, known(scaled.liquorMl()), 1e-9);
        assertEquals(250, known(scaled.waterMl()), 1e-9);
    }

    /** 0 L was never measured, so that nobody knows what stands in the pot; but something does. */
    @Test
    void aBathOfWhichNothingWasLeftIsStillAReusedOne() {
        room.entry("2026-05-02-strong").weighing("45 g").water("3 L").left("0 mL");
        room.entry("2026-05-09-weak").weighing("50 g").reuses("2026-05-02-strong").water("500 mL");
        Scaled scaled = scale("2026-05-09-weak", 25);
        assertTrue(scaled.reused());
        assertEquals(UNKNOWN, scaled.liquorMl());
        assertEquals(List.of(new BatchRemark.Reused(Magnitude.UNKNOWN)), scaled.remarks());
    }

    /** 2 L were left and 50 g dyed in them: 100 g would want 4 L. */
    @Test
    void moreThanWasLeftOfABathCannotBeTaken() {
        room.entry("2026-05-02-strong").weighing("45 g").water("3 L").left("2 L");
        room.entry("2026-05-09-weak").weighing("50 g").reuses("2026-05-02-strong").water("500 mL");
        assertEquals(List.of(new BatchRemark.LeftTooLittle(Magnitude.of(4000), Magnitude.of(2000), Magnitude.of(50))),
                scale("2026-05-09-weak", 100).remarks());
    }

    /** About 2 L for 50 g are about 1 L for 25 g. */
    @Test
    void whatRoughlyStoodInAPotStaysRough() {
        room.entry("2026-05-02-strong").weighing("45 g").water("3 L").left("about 2 L");
        room.entry("2026-05-09-weak").weighing("50 g").reuses("2026-05-02-strong").water("500 mL");
        Scaled scaled = scale("2026-05-09-weak", 25);
        assertEquals(Magnitude.of(1000, true), scaled.standingMl());
        assertEquals(List.of(new BatchRemark.Reused(Magnitude.of(2000, true))), scaled.remarks());
    }

    @Test
    void aMethodScalesFromTheWeightItIsFor() {
        room.method("simmer").forNeedles("50 g").ratio(60).dye("brick", "1 g").with("salt", "30 g");
        Scaled scaled = scale("simmer", 20);
        assertEquals(1200, known(scaled.liquorMl()), 1e-9);
        assertEquals(0.4, known(scaled.parts().get(0).grams()), 1e-12);
        assertEquals(12, known(scaled.parts().get(1).grams()), 1e-12);
    }

    @Test
    void whatFollowsFromNoWeightIsUnknownAndTheRestIsNot() {
        room.method("simmer").ratio(60).dye("brick", "1 % owf").with("salt", "30 g").with("salt", "10 g/L");
        Scaled scaled = scale("simmer", 20);
        assertEquals(1200, known(scaled.liquorMl()), 1e-9);
        assertEquals(0.2, known(scaled.parts().get(0).grams()), 1e-12);
        assertEquals(UNKNOWN, scaled.parts().get(1).grams());
        assertEquals(12, known(scaled.parts().get(2).grams()), 1e-12);
    }

    @Test
    void aMethodThatIsNotShownLendsItsAmountsAndIsNotWorkedOutItself() {
        Consumer<Draft> recipe = draft -> draft.ratio(60).with("salt", "30 g");
        room.unshownMethod("secret").forNeedles("50 g").written(recipe);
        room.entry("2026-05-09-open").weighing("10 g").follows("secret").takenFrom("secret", recipe);
        assertEquals(Optional.empty(), room.workings().scale("secret", 20));
        assertEquals(12, known(scale("2026-05-09-open", 20).parts().get(0).grams()), 1e-9);
        assertEquals(Optional.empty(), room.workings().scale("nobody's", 20));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -5, Double.NaN, Double.POSITIVE_INFINITY})
    void noRecipeIsForNothing(double grams) {
        assertThrows(IllegalArgumentException.class, () -> room.workings().scale("anything", grams));
    }

    private Scaled scale(String id, double grams) {
        return room.workings().scale(id, grams).orElseThrow();
    }
}
