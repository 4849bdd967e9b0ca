package fascicle.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RgbTest {

    private static final Rgb BRICK = new Rgb(0x7f, 0x46, 0x32);

    @Test
    void aColourIsReadWithOrWithoutItsHashAndInAnyCase() {
        for (String written : List.of("#7f4632", "7f4632", "#7F4632", "7F4632")) {
            assertEquals(Optional.of(BRICK), Rgb.read(written), written);
        }
        assertEquals("#7f4632", BRICK.hex());
    }

    /** CSS Color 4, section 5.2: each of three digits stands twice. */
    @Test
    void threeDigitsStandForSix() {
        assertEquals(Optional.of(new Rgb(0xaa, 0xbb, 0xcc)), Rgb.read("#abc"));
        assertEquals(Optional.of(new Rgb(0xff, 0x00, 0x99)), Rgb.read("F09"));
    }

    @Test
    void whatIsNoColourIsNotRead() {
        for (String written : List.of(
                "", "#", "brick", "#12", "#1234", "#12345", "#1234567", "#12345678", "##123456", " #123456", "#12345g",
                "-12345", "+12345", "0x1234", "#１２３")) {
            assertEquals(Optional.empty(), Rgb.read(written), written);
        }
    }

    @Test
    void hexKeepsItsZeros() {
        assertEquals("#000a00", new Rgb(0, 10, 0).hex());
        assertEquals("#ffffff", new Rgb(255, 255, 255).hex());
    }

    @Test
    void everyStepOfAChannelSurvivesTheWayThroughLab() {
        for (int step = 0; step < 256; step++) {
            Rgb red = new Rgb(step, 70, 50);
            Rgb green = new Rgb(255, step, 0);
            Rgb blue = new Rgb(0, 128, step);
            assertEquals(red, red.toLab().toRgb());
            assertEquals(green, green.toLab().toRgb());
            assertEquals(blue, blue.toLab().toRgb());
        }
    }

    @Test
    void aChannelBeyondEightBitsIsTheCallersMistake() {
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class, () -> new Rgb(0, 256, 0));
        assertTrue(thrown.getMessage().contains("256"));
        assertThrows(IllegalArgumentException.class, () -> new Rgb(-1, 0, 0));
    }
}
