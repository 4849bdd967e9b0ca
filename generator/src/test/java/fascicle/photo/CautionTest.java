package fascicle.photo;

import static fascicle.photo.Pictures.painted;
import static fascicle.photo.Pictures.pngOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.photo.Caution.Kind;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is heeded about a picture; the thresholds are common practice, no source. */
class CautionTest {

    private static final Area NEEDLES = new Area(5, 5, 40, 90);
    private static final Area CARD = new Area(55, 5, 40, 40);
    private static final Area SECOND_CARD = new Area(55, 55, 40, 40);
    private static final int BRICK = 0x7f4632;
    private static final int GREY = 0x777777;

    @TempDir
    Path folder;

    @Test
    void aGoodPictureHasNone() throws Exception {
        assertCautions(List.of(), (x, y) -> x < 600 ? BRICK : GREY);
    }

    @Test
    void aCardIsCutOffFromOnePixelInAHundredOn() throws Exception {
        assertCautions(List.of(Kind.CARD_CLIPPED), (x, y) -> x < 600 ? BRICK : 0xfffdfc);
        assertCautions(List.of(Kind.CARD_CLIPPED), (x, y) -> x < 600 ? BRICK : x % 4 == 0 ? 0 : 0x101010);
        // A few hot pixels are among the brightest tenth.
        assertCautions(List.of(), (x, y) -> x < 600 ? BRICK : x % 25 == 0 ? 0xffffff : GREY);
    }

    @Test
    void glossOfAFewInAHundredIsNoMatterAndGlareIs() throws Exception {
        assertCautions(List.of(), (x, y) -> x >= 600 ? GREY : x % 20 == 0 ? 0xffffff : BRICK);
        assertCautions(List.of(Kind.NEEDLES_CLIPPED), (x, y) -> x >= 600 ? GREY : x % 4 == 0 ? 0xffffff : BRICK);
    }

    /** Greys in sRGB of a card of 18 % under lights (chromaticities of CIE 15:2004), and coloured sheets under D65. */
    @ParameterizedTest
    @CsvSource({
        "777777, none",           // balanced
        "837764, none",           // D50, not balanced
        "71777f, none",           // D75, not balanced
        "a37141, orange or brown", // illuminant A, not balanced
        "8c7355, orange or brown", // a sheet of brown paper
        "5d7f5d, green",          // a green sheet
    })
    void aCardMayHaveTheTintsOfDaylightAndNoOther(String card, String tint) throws Exception {
        int colour = Integer.parseInt(card, 16);
        Sample sample = sample((x, y) -> x < 600 ? BRICK : colour, Patch.grey(CARD, 18));
        if (tint.equals("none")) {
            assertEquals(List.of(), sample.cautions());
        } else {
            assertEquals(Kind.CARD_TINTED, sample.cautions().get(0).kind());
            assertTrue(sample.cautions().get(0).words().startsWith("the card looks " + tint + ": "));
        }
    }

    @Test
    void lightThatFallsOffByMoreThanATenthIsTold() throws Exception {
        // 0x77 to 0x76 is 2 % of light, to 0x73 7 %, which by its slope is far more where the needles lie, to 0x6e 15 %.
        assertCautions(List.of(), (x, y) -> x < 600 ? BRICK : x < 900 ? 0x777777 : 0x767676);
        assertCautions(List.of(Kind.UNEVEN_LIGHT), (x, y) -> x < 600 ? BRICK : x < 900 ? 0x777777 : 0x737373);
        assertCautions(List.of(Kind.UNEVEN_LIGHT), (x, y) -> x < 600 ? BRICK : x < 900 ? 0x777777 : 0x6e6e6e);
        Sample between = sample((x, y) -> x < 600 ? BRICK : y < 450 ? 0x777777 : 0x6e6e6e,
                Patch.grey(CARD, 18), Patch.grey(SECOND_CARD, 18));
        assertTrue(between.cautions().get(0).words().startsWith("the light differs by 15 % between the cards"));
        // A darker card that looks darker is no matter.
        assertEquals(List.of(), sample((x, y) -> x < 600 ? BRICK : y < 450 ? 0x777777 : 0x595959,
                Patch.grey(CARD, 18), Patch.grey(SECOND_CARD, 10)).cautions());
    }

    @Test
    void areasOfFewPixelsAreTold() throws Exception {
        Path file = Pictures.write(folder, "a.png", pngOf(painted(1200, 900, (x, y) -> GREY)));
        List<Patch> card = List.of(Patch.grey(CARD, 18));
        assertEquals(List.of(Kind.AREA_SMALL),
                kinds(Darkroom.withoutCache().sample(file, new Area(5, 5, 2.5, 3.5), card)));
        assertEquals(List.of(),
                kinds(Darkroom.withoutCache().sample(file, new Area(5, 5, 3, 3.5), card)));
        assertEquals(List.of(Kind.AREA_SMALL), kinds(Darkroom.withoutCache().sample(file, NEEDLES,
                List.of(Patch.grey(new Area(55, 5, 1.5, 2), 18)))));
        Sample speck = Darkroom.withoutCache().sample(file, new Area(5, 5, 0.01, 0.01), card);
        assertEquals(1, speck.pixels());
        assertEquals(0, speck.unlevelness());
    }

    @Test
    void aSmallPictureIsToldOnlyWhereItWasStoredWithLoss() throws Exception {
        Pictures.Painter scene = (x, y) -> x < 300 ? BRICK : GREY;
        List<Patch> card = List.of(Patch.grey(CARD, 18));
        Path lossless = Pictures.write(folder, "a.png", pngOf(painted(600, 450, scene)));
        Path small = Pictures.write(folder, "a.jpg", Pictures.jpeg(painted(600, 450, scene)));
        Path coarse = Pictures.write(folder, "b.jpg",
                Pictures.jpeg(painted(1200, 900, (x, y) -> scene.at(x / 2, y / 2)), 0.3f));
        assertEquals(List.of(), kinds(Darkroom.withoutCache().sample(lossless, NEEDLES, card)));
        assertEquals(List.of(Kind.PICTURE_SMALL), kinds(Darkroom.withoutCache().sample(small, NEEDLES, card)));
        assertEquals(List.of(Kind.PICTURE_SMALL), kinds(Darkroom.withoutCache().sample(coarse, NEEDLES, card)));
    }

    @Test
    void cautionsAreSentencesWithoutTheirFullStop() throws Exception {
        Sample sample = sample((x, y) -> x < 600 ? 0xff0000 : x < 900 ? 0x00ff00 : 0x009900, Patch.grey(CARD, 18));
        assertEquals(List.of(Kind.CARD_CLIPPED, Kind.NEEDLES_CLIPPED, Kind.CARD_TINTED, Kind.UNEVEN_LIGHT),
                kinds(sample));
        for (Caution caution : sample.cautions()) {
            assertFalse(caution.words().endsWith("."), caution.words());
            assertTrue(caution.words().contains(": "), caution.words());
        }
    }

    @Test
    void aBlackCardIsNoCard() {
        UnreadablePhotograph refused = assertThrows(UnreadablePhotograph.class,
                () -> sample((x, y) -> x < 600 ? BRICK : 0, Patch.grey(CARD, 18)));
        assertEquals("is black where the card should be; mark the card where it lies", refused.words());
    }

    private void assertCautions(List<Kind> expected, Pictures.Painter scene) throws Exception {
        assertEquals(expected, kinds(sample(scene, Patch.grey(CARD, 18))));
    }

    private Sample sample(Pictures.Painter scene, Patch... card) throws Exception {
        Path file = Pictures.write(folder, "scene.png", pngOf(painted(1200, 900, scene)));
        return Darkroom.withoutCache().sample(file, NEEDLES, List.of(card));
    }

    private static List<Kind> kinds(Sample sample) {
        return sample.cautions().stream().map(Caution::kind).toList();
    }
}
