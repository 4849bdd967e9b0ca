package fascicle.colour;

import static fascicle.colour.Tone.COOLER;
import static fascicle.colour.Tone.HARDLY_CHANGED;
import static fascicle.colour.Tone.ONLY_DARKER;
import static fascicle.colour.Tone.ONLY_LIGHTER;
import static fascicle.colour.Tone.WARMER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues.Row;
import org.junit.jupiter.api.Test;

/** Which words the trade would use: common practice, no source. */
class ToneTest {

    private static final Lab TAN = new Lab(62, 3, 26);
    private static final Lab GREEN = new Lab(42, -12, 24);
    private static final Lab BRICK = new Lab(37, 24, 21);
    private static final Lab INDIGO = new Lab(25, 3, -20);

    @Test
    void brickOnTanIsWarmer() {
        assertEquals(WARMER, Tone.of(TAN, BRICK));
    }

    @Test
    void mustardOnTanIsWarmer() {
        assertEquals(WARMER, Tone.of(TAN, new Lab(68, 8, 60)));
    }

    @Test
    void mossOnTanIsCooler() {
        assertEquals(COOLER, Tone.of(TAN, new Lab(35, -6, 20)));
    }

    @Test
    void indigoOnTanIsCooler() {
        assertEquals(COOLER, Tone.of(TAN, INDIGO));
    }

    @Test
    void blackBrownOnTanIsOnlyDarker() {
        assertEquals(ONLY_DARKER, Tone.of(TAN, new Lab(20, 4, 6)));
    }

    @Test
    void greenNeedlesThatDryToTanAreWarmer() {
        assertEquals(WARMER, Tone.of(GREEN, TAN));
    }

    @Test
    void brickThatBleachesWithItsHueIsOnlyLighter() {
        assertEquals(ONLY_LIGHTER, Tone.of(BRICK, new Lab(52, 18, 17)));
    }

    /** Its blue shrinks, and still it is no warmer: there is only less of it. */
    @Test
    void indigoThatFadesIsOnlyLighter() {
        assertEquals(ONLY_LIGHTER, Tone.of(INDIGO, new Lab(40, 1, -16)));
    }

    @Test
    void brickThatFadesToGreyIsCooler() {
        assertEquals(COOLER, Tone.of(BRICK, new Lab(50, 3, 3)));
    }

    @Test
    void plumOverIndigoIsWarmer() {
        assertEquals(WARMER, Tone.of(INDIGO, new Lab(35, 25, -10)));
    }

    @Test
    void theSameBundleReadTwiceHasHardlyChanged() {
        assertEquals(HARDLY_CHANGED, Tone.of(TAN, TAN));
        assertEquals(HARDLY_CHANGED, Tone.of(TAN, new Lab(61, 3.5, 26.4)));
    }

    /** A surface in less light: XYZ times one factor, which no eye calls another tone. */
    @Test
    void aColourInLessLightIsOnlyDarker() {
        int asked = 0;
        for (Row row : CheckValues.rows("lab-srgb.csv")) {
            Lab colour = row.lab("js_L50", "js_a50", "js_b50");
            Xyz light = Xyz.ofLab(colour.lightness(), colour.a(), colour.b(), Xyz.D50);
            Lab shaded = new Xyz(light.x() * 0.5, light.y() * 0.5, light.z() * 0.5).toLab(Xyz.D50);
            // Near black the cube root gives way to a straight line.
            if (StrictMath.min(shaded(light.x(), Xyz.D50.x()), shaded(light.z(), Xyz.D50.z())) > 0.01) {
                assertEquals(ONLY_DARKER, Tone.of(colour, shaded), row::toString);
                asked++;
            }
        }
        assertTrue(asked > 30, "only " + asked);
    }

    /** Neither green nor magenta is called warm, though both lie square to the warm direction. */
    @Test
    void whatGoesSquareToWarmIsCooler() {
        double away = StrictMath.toRadians(55 + 90);
        Lab grey = new Lab(50, 0, 0);
        assertEquals(COOLER, Tone.of(grey, new Lab(50, 12 * StrictMath.cos(away), 12 * StrictMath.sin(away))));
        assertEquals(COOLER, Tone.of(grey, new Lab(50, -12 * StrictMath.cos(away), -12 * StrictMath.sin(away))));
    }

    @Test
    void yellowOrangeRedAndPinkAreWarmAndGreenBlueAndVioletAreCool() {
        for (int hue = 0; hue < 360; hue += 5) {
            double angle = StrictMath.toRadians(hue);
            Lab tinged = new Lab(50, 15 * StrictMath.cos(angle), 15 * StrictMath.sin(angle));
            boolean warm = hue < 135 || hue > 335;
            if (hue != 135 && hue != 335) {
                assertEquals(warm ? WARMER : COOLER, Tone.of(new Lab(50, 0, 0), tinged), "hue " + hue);
            }
        }
    }

    /** A shift too small to see beside a change in lightness has no tone. */
    @Test
    void greysOnlyDarkenAndLighten() {
        assertEquals(ONLY_DARKER, Tone.of(new Lab(60, 0, 0), new Lab(55, 0.5, -0.5)));
        assertEquals(ONLY_LIGHTER, Tone.of(new Lab(40, 1, 1), new Lab(55, 0, 2)));
        assertEquals(ONLY_LIGHTER, Tone.of(new Lab(0, 0, 0), new Lab(100, 0, 0)));
        assertEquals(ONLY_DARKER, Tone.of(new Lab(104, 0, 0), new Lab(60, 0, 0)));
    }

    @Test
    void beyondBlackAndWhiteAShiftStillHasATone() {
        assertEquals(COOLER, Tone.of(new Lab(100, 30, 0), new Lab(104, 0, -30)));
        assertEquals(COOLER, Tone.of(new Lab(-16, 0, 30), new Lab(-20, 0, -30)));
        assertEquals(WARMER, Tone.of(new Lab(103, -5, -5), new Lab(101, 5, 5)));
    }

    @Test
    void theWordsAreThoseOfTheData() {
        assertEquals("hardly changed", HARDLY_CHANGED.word());
        assertEquals("only lighter", ONLY_LIGHTER.word());
        assertEquals("only darker", ONLY_DARKER.word());
        assertEquals("warmer", WARMER.word());
        assertEquals("cooler", COOLER.word());
    }

    private static double shaded(double light, double white) {
        return 0.5 * light / white;
    }
}
