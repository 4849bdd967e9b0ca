package fascicle.workings;

import static fascicle.workings.Draft.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.Lab;
import fascicle.colour.Tone;
import fascicle.photo.Sample;
import fascicle.measure.Kitchen;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ColoursTest {

    private final Workroom room = new Workroom(Kitchen.METRIC);

    /**
     * Five readings, their mean, and MCDM 0.3413 by CIEDE2000: the term of ASTM E2214, the numbers computed apart from
     * this program.
     */
    @Test
    void fiveReadingsHaveAMeanAndAnUnlevelness() {
        room.entry("2026-05-09-five").lab(45.12, 22.30, 30.18).lab(44.80, 22.71, 29.60).lab(45.55, 21.95, 30.72)
                .lab(45.02, 22.48, 30.05).lab(45.31, 22.06, 30.35);
        ColourFigures colour = colour("2026-05-09-five");
        assertEquals(45.16, colour.lab().lightness(), 1e-9);
        assertEquals(22.30, colour.lab().a(), 1e-9);
        assertEquals(30.18, colour.lab().b(), 1e-9);
        assertEquals(0.3413, known(colour.unlevelness()), 5e-5);
        assertEquals("lab", colour.by());
        assertEquals(5, colour.readings().size());
    }

    @Test
    void twoReadingsTellNoUnlevelness() {
        room.entry("2026-05-09-two").lab(45, 22, 30).lab(46, 22, 30);
        assertEquals(OptionalDouble.empty(), colour("2026-05-09-two").unlevelness());
    }

    @Test
    void wetNeedlesAreNeverCompared() {
        room.entry("2026-05-09-drying").lab(45, 22, 30).wetLab(30, 25, 25);
        room.entry("2026-05-09-wet").wetLab(30, 25, 25);
        assertEquals(new Lab(45, 22, 30), colour("2026-05-09-drying").lab());
        assertTrue(room.worked("2026-05-09-wet").colour().isEmpty());
    }

    @Test
    void howItWasReadIsSaid() {
        room.entry("2026-05-09-screen").hex("#7f4632");
        room.entry("2026-05-09-both").hex("#7f4632").lab(36, 23, 23);
        assertEquals("hex", colour("2026-05-09-screen").by());
        assertEquals("mixed", colour("2026-05-09-both").by());
    }

    /** Pair 25 of Sharma, Wu and Dalal (2005): CIEDE2000 1.2644. */
    @Test
    void theShiftIsFromTheMeanOfTheLotsBareNeedles() {
        room.lot("green", "fresh-green", "", "",
                List.of(new Lab(59.2574, -33.0099, 35.2677), new Lab(61.2574, -35.0099, 37.2677)));
        room.entry("2026-05-02-first").lot("green").lab(60.4626, -34.1751, 39.4387);
        room.entry("2026-05-09-again").from("2026-05-02-first").lab(60.4626, -34.1751, 39.4387);
        assertEquals(1.2644, known(Difference.figure(colour("2026-05-02-first").shift())), 5e-5);
        assertEquals(1.2644, known(Difference.figure(colour("2026-05-09-again").shift())), 5e-5);
        assertEquals(60.2574, lotColour().lab().lightness(), 1e-9);
        assertEquals(Optional.empty(), lotColour().shift());
    }

    /** Pair 27 of the same: 1.8731. */
    @Test
    void theTargetMayBeMissed() {
        room.entry("2026-05-09-aimed").lab(61.2901, 3.7196, -5.3901).target(61.4292, 2.2480, -4.9620);
        assertEquals(1.8731, known(Difference.figure(colour("2026-05-09-aimed").target())), 5e-5);
        assertEquals(Optional.empty(), colour("2026-05-09-aimed").shift());
    }

    @Test
    void aMeanIsNoSurerThanItsLeastSureReading() {
        room.entry("2026-05-09-meter").lab(36, 23, 23).lab(37, 23, 23);
        room.entry("2026-05-09-both").lab(36, 23, 23).hex("#7f4632");
        room.entry("2026-05-09-photo").photographed(36, 23, 23, Sample.Against.GREY_CARD);
        assertEquals(1, colour("2026-05-09-meter").uncertainty());
        assertEquals(6, colour("2026-05-09-both").uncertainty());
        assertEquals(6, colour("2026-05-09-photo").uncertainty());
        assertEquals("photo", colour("2026-05-09-photo").by());
    }

    /** Two readings by meter: the root of 1² + 1². JCGM 100:2008, 5.1.2. */
    @Test
    void whatTwoReadingsCannotTellApartHasHardlyChanged() {
        room.lot("tan", "shade-dried", "", "", List.of(new Lab(62, 3, 26)));
        room.entry("2026-05-09-pale").lot("tan").lab(61, 3, 26);
        room.entry("2026-05-09-brick").lot("tan").lab(37, 24, 21);
        room.entry("2026-05-09-screen").lot("tan").photographed(58, 6, 26, Sample.Against.GREY_CARD);
        Difference pale = colour("2026-05-09-pale").shift().orElseThrow();
        assertEquals(StrictMath.sqrt(2), pale.uncertainty(), 1e-12);
        assertFalse(pale.tells());
        assertEquals(Optional.of(Tone.HARDLY_CHANGED), colour("2026-05-09-pale").tone());
        assertTrue(colour("2026-05-09-brick").shift().orElseThrow().tells());
        assertEquals(Optional.of(Tone.WARMER), colour("2026-05-09-brick").tone());
        assertEquals(Optional.of(Tone.HARDLY_CHANGED), colour("2026-05-09-screen").tone(), "a phone cannot tell");
    }

    @Test
    void aTargetThatWasWrittenDownIsExact() {
        room.entry("2026-05-09-aimed").lab(61.2901, 3.7196, -5.3901).target(61.4292, 2.2480, -4.9620);
        assertEquals(1, colour("2026-05-09-aimed").target().orElseThrow().uncertainty());
    }

    @Test
    void aColourTakenByEyeIsComparedWithNothing() {
        room.entry("2026-05-09-eye").photographed(36, 23, 23, Sample.Against.NOTHING);
        assertTrue(room.workings().entry("2026-05-09-eye").orElseThrow().colour().isEmpty());
    }

    /** The five readings of the worked example stand beside two photographs, which change nothing in it. */
    @Test
    void photographsStandApartFromMetersInUnlevelness() {
        room.entry("2026-05-09-five").lab(45.12, 22.30, 30.18).lab(44.80, 22.71, 29.60).lab(45.55, 21.95, 30.72)
                .lab(45.02, 22.48, 30.05).lab(45.31, 22.06, 30.35).photographed(30, 0, 0, Sample.Against.GREY_CARD)
                .photographed(60, 0, 0, Sample.Against.CHART);
        room.entry("2026-05-09-two").lab(45, 22, 30).lab(44, 22, 30).photographed(45, 22, 30, Sample.Against.GREY_CARD);
        assertEquals(0.3413, known(colour("2026-05-09-five").unlevelness()), 5e-5);
        assertEquals(OptionalDouble.empty(), colour("2026-05-09-two").unlevelness());
    }

    private ColourFigures lotColour() {
        return room.workings().lots().get(0).colour().orElseThrow();
    }

    private ColourFigures colour(String id) {
        return room.worked(id).colour().orElseThrow();
    }
}
