package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.Dye;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Where a pot went another way than its method. */
class DeparturesTest {

    private static final Consumer<Draft> STEPS = draft -> draft.in("pan").ratio(60).dye("brick", "1.5 % owf")
            .with("salt", "30 g").with("white-vinegar", "60 mL").presoak("3 L", "white-vinegar", "30 mL")
            .heat("88 °C", "30 min", "2 h");

    private final Workroom room = Workroom.usual().thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS);

    @Test
    void aPotThatFollowsExactlyHasNone() {
        assertEquals(List.of(), departures(draft -> {}));
    }

    @Test
    void aPotThatFollowsNoMethodHasNothingToDepartFrom() {
        room.entry("2026-05-09-pot").dye("brick", "1 % owf");
        assertEquals(Optional.empty(), room.workings().departures(room.worked("2026-05-09-pot")));
    }

    @Test
    void aMethodThatIsNotShownTellsNothing() {
        room.unshownMethod("simmer").forNeedles("50 g").written(STEPS);
        room.entry("2026-05-09-pot").follows("simmer").weighing("25 g").takenFrom("simmer", STEPS).in("bucket");
        assertEquals(Optional.empty(), room.workings().departures(room.worked("2026-05-09-pot")));
    }

    @Test
    void anotherAmountOfADyeCountsByTheNeedles() {
        assertEquals(List.of("DYE brick 2.0 instead of 1.5"), onDyes(draft -> draft.dye("brick", "0.5 g")));
        assertEquals(List.of(), onDyes(draft -> draft.dye("brick", "0.38 g")), "1.52 % is 1.5 % to two figures");
    }

    @Test
    void anotherDyeIsOneAddedAndOneLeftOut() {
        assertEquals(List.of("DYE moss added", "DYE brick left out"), onDyes(draft -> draft.dye("moss", "1.5 % owf")));
    }

    @Test
    void aDyeThatTheMethodLeavesOpenIsTheDaysOwn() {
        room.method("plain").forNeedles("50 g").ratio(60);
        room.entry("2026-05-09-pot").follows("plain").weighing("25 g").takenFrom("plain", draft -> draft.ratio(60))
                .dye("brick", "1 % owf");
        assertEquals(List.of(), said());
    }

    @Test
    void assistantsCountByTheBath() {
        assertEquals(List.of("ASSISTANTS white-vinegar left out"),
                departures(draft -> draft.withInstead("salt", "15 g")), "half the needles, half the bath, half the salt");
        assertEquals(List.of("ASSISTANTS salt 20.0 instead of 10.0", "ASSISTANTS white-vinegar left out"),
                departures(draft -> draft.withInstead("salt", "30 g")));
        assertEquals(List.of("ASSISTANTS alum added", "ASSISTANTS salt left out", "ASSISTANTS white-vinegar left out"),
                departures(draft -> draft.withInstead("alum", "a pinch")));
    }

    @Test
    void waterCountsByItsRatioHoweverItWasMeasured() {
        assertEquals(List.of(), departures(draft -> draft.water("1470 mL")));
        assertEquals(List.of("liquor"), departures(draft -> draft.water("2940 mL")
                .withInstead("salt", "30 g").with("white-vinegar", "60 mL")));
    }

    @Test
    void anotherVesselIsNamedOnlyWhereTheMethodHasOne() {
        assertEquals(List.of("vessel"), departures(draft -> draft.in("bucket")));
        assertEquals(List.of(), departures(draft -> draft.in("PAN")));
    }

    @Test
    void heatCountsByWhatItReachesAndHolds() {
        assertEquals(List.of("heat"), heated(draft -> draft.heat("95 °C", "30 min", "2 h")));
        assertEquals(List.of("heat"), heated(draft -> draft.heat("88 °C", "30 min", "1 h")));
        assertEquals(List.of(), heated(draft -> draft.heat("88 °C", "1 h", "120 min")), "how fast it rose is no matter");
    }

    @Test
    void aMordantBathMoreOrLess() {
        assertEquals(List.of("BEFORE added"), departures(draft -> draft.mordant("1 L", "alum", "10 % owf")));
        room.method("mordanted").forNeedles("50 g").mordant("1 L", "alum", "10 % owf");
        room.entry("2026-05-10-pot").follows("mordanted").weighing("50 g").mordant("2 L", "alum", "5 % owf");
        assertEquals(List.of("BEFORE otherwise"), said("2026-05-10-pot"));
        room.entry("2026-05-11-pot").follows("mordanted").weighing("50 g").mordant("2 L", "alum", "5 g");
        assertEquals(List.of(), said("2026-05-11-pot"), "a tenth of the needles, however it was weighed");
        room.entry("2026-05-12-pot").follows("mordanted").weighing("50 g");
        assertEquals(List.of("BEFORE left out"), said("2026-05-12-pot"));
    }

    @Test
    void aPresoakMoreOrWithOtherThings() {
        assertEquals(List.of("PRESOAK white-vinegar 60.0 instead of 15.0"),
                departures(draft -> draft.presoak("1.5 L", "white-vinegar", "60 mL")));
        room.method("dry").forNeedles("50 g").ratio(60);
        room.entry("2026-05-10-pot").follows("dry").weighing("50 g").presoak("1 L", "salt", "10 g");
        assertEquals(List.of("presoaked"), said("2026-05-10-pot"));
    }

    @Test
    void whatWasNeverWeighedIsComparedAsItIsWritten() {
        room.method("loose").dye("brick", "a pinch").with("salt", "a handful");
        room.entry("2026-05-09-pot").follows("loose").dye("brick", "A pinch").with("salt", "two handfuls");
        assertEquals(List.of("ASSISTANTS salt as written"), said());
    }

    private List<String> onDyes(Consumer<Draft> own) {
        Consumer<Draft> lent = draft -> draft.in("pan").ratio(60).with("salt", "30 g").with("white-vinegar", "60 mL")
                .presoak("3 L", "white-vinegar", "30 mL").heat("88 °C", "30 min", "2 h");
        return departures(lent, own);
    }

    private List<String> heated(Consumer<Draft> own) {
        Consumer<Draft> lent = draft -> draft.in("pan").ratio(60).dye("brick", "1.5 % owf").with("salt", "30 g")
                .with("white-vinegar", "60 mL").presoak("3 L", "white-vinegar", "30 mL");
        return departures(lent, own);
    }

    private List<String> departures(Consumer<Draft> own) {
        return departures(STEPS, own);
    }

    /** Departures of 25 g of needles from a method for 50 g, of which a pot takes over a part. */
    private List<String> departures(Consumer<Draft> lent, Consumer<Draft> own) {
        Workroom again = Workroom.usual().thing("alum", Dye.Kind.MORDANT, Dye.Form.CRYSTALS);
        again.method("simmer").forNeedles("50 g").written(STEPS);
        again.entry("2026-05-09-pot").follows("simmer").weighing("25 g").takenFrom("simmer", lent).written(own);
        return said(again, "2026-05-09-pot");
    }

    private List<String> said() {
        return said("2026-05-09-pot");
    }

    private List<String> said(String id) {
        return said(room, id);
    }

    private static List<String> said(Workroom room, String id) {
        return room.workings().departures(room.worked(id)).orElseThrow().stream().map(DeparturesTest::said).toList();
    }

    private static String said(Departure departure) {
        if (departure instanceof Departure.InPart part) {
            PartFigures any = part.here().or(part::method).orElseThrow().part();
            String what = part.step() + " " + any.is() + " ";
            if (part.here().isEmpty() || part.method().isEmpty()) {
                return what + (part.method().isEmpty() ? "added" : "left out");
            }
            return figure(part.here().get().part()).isEmpty() ? what + "as written"
                    : what + figure(part.here().get().part()) + " instead of " + figure(part.method().get().part());
        } else if (departure instanceof Departure.InTreatment treatment) {
            return treatment.step() + (treatment.here().isEmpty() ? " left out"
                    : treatment.method().isEmpty() ? " added" : " otherwise");
        } else if (departure instanceof Departure.InVessel) {
            return "vessel";
        } else if (departure instanceof Departure.InLiquor) {
            return "liquor";
        } else if (departure instanceof Departure.InHeat) {
            return "heat";
        }
        return departure instanceof Departure.Presoaked ? "presoaked" : "other";
    }

    /** By the needles for a dye, else by the bath, else the volume. */
    private static String figure(PartFigures part) {
        if (part.by() == fascicle.bath.Basis.NEEDLES && part.owfPercent().isPresent()) {
            return String.valueOf(StrictMath.round(part.owfPercent().getAsDouble() * 10) / 10.0);
        }
        return part.gramsPerLitre().isPresent() ? String.valueOf(StrictMath.round(part.gramsPerLitre().getAsDouble()))
                + ".0" : part.ml().isPresent() ? String.valueOf(part.ml().getAsDouble()) : "";
    }
}
