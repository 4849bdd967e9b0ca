package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However a picture is stored, its colour is the same. */
class SameColourTest {

    @TempDir
    private Path folder;

    private static Canvas needles(String name) {
        return Scene.before(Camera.in(Illuminant.D50), 11).needles(Spectrum.of(name)).card(18).taken();
    }

    /** Promised: the same Lab within 0.5. */
    @Test
    void inSrgbAndInDisplayP3() {
        for (String name : List.of("b7410e", "6b7c3b", "3a3a6d", "efe6d0")) {
            Exposure plain = Exposure.of(needles(name));
            Exposure wide = plain.in(RgbSpace.DISPLAY_P3, ColourProfile.withFormula(RgbSpace.DISPLAY_P3));
            Exposure old = plain.in(RgbSpace.DISPLAY_P3, ColourProfile.withTable(RgbSpace.DISPLAY_P3));
            Exposure tagged = plain.in(RgbSpace.SRGB, ColourProfile.withFormula(RgbSpace.SRGB));
            Lab lab = read(plain.jpeg());
            assertSame(lab, read(wide.jpeg()), 0.5, name);
            assertSame(lab, read(old.jpeg()), 0.5, name);
            assertSame(lab, read(tagged.jpeg()), 0.05, name);
            Lab lossless = read(plain.png());
            assertSame(lossless, read(wide.png()), 0.2, name);
            assertSame(lossless, read(tagged.png()), 0.05, name);
            assertSame(lossless, lab, 1, name);
        }
    }

    /** A profile that is passed over would be seen: the same signals mean another colour. */
    @Test
    void andNotTheSameIfTheProfileWereForgotten() {
        Exposure forgotten = Exposure.of(needles("b7410e")).in(RgbSpace.DISPLAY_P3, new byte[0]);
        Lab lab = read(Exposure.of(needles("b7410e")).jpeg());
        assertTrue(ColourDifference.cielab(lab, read(forgotten.jpeg())) > 3);
    }

    @Test
    void heldInAllEightWays() {
        Exposure upright = Exposure.of(needles("b08d57"));
        Lab lab = read(upright.jpeg());
        for (int orientation = 1; orientation <= 8; orientation++) {
            // Compressed along the other side, a JPEG is not quite the same.
            assertSame(lab, read(upright.lying(orientation).jpeg()), 0.1, "orientation " + orientation);
        }
    }

    @Test
    void uprightItHasTheSameSizeInAllEightWays() throws Exception {
        for (int orientation = 1; orientation <= 8; orientation++) {
            Path file = new Album(folder).keep("held.jpg",
                    Exposure.of(needles("b08d57")).lying(orientation).jpeg());
            Picture picture = Darkroom.withoutCache().picture(file);
            assertEquals(Scene.WIDTH, picture.width(), "orientation " + orientation);
            assertEquals(Scene.HEIGHT, picture.height(), "orientation " + orientation);
        }
    }

    @Test
    void inOnePassAndInSeveral() {
        Exposure plain = Exposure.of(needles("7b4f2c"));
        assertSame(read(plain.jpeg()), read(plain.inPasses().jpeg()), 1e-9, "the same coefficients in another order");
    }

    /** Metadata say nothing about colour. */
    @Test
    void withAndWithoutAPlace() {
        Exposure plain = Exposure.of(needles("7b4f2c"));
        assertSame(read(plain.jpeg()), read(plain.tellingItsPlace().jpeg()), 1e-9, "the same pixels");
    }

    @Test
    void aKeptReadingIsTheReading() throws IOException, UnreadablePhotograph {
        Album album = new Album(folder);
        Path file = album.keep("kept.jpg", Exposure.of(needles("9e2b25")).jpeg());
        List<Patch> card = List.of(Patch.grey(Scene.within(Scene.CARD), 18));
        Darkroom keeping = Darkroom.keeping(folder.resolve("kept"));
        Sample first = keeping.sample(file, Scene.INSIDE, card);
        assertEquals(first, keeping.sample(file, Scene.INSIDE, card));
        assertEquals(first, Darkroom.keeping(folder.resolve("kept")).sample(file, Scene.INSIDE, card));
        album.keep("kept.jpg", Exposure.of(needles("6b7c3b")).jpeg());
        Sample other = Darkroom.keeping(folder.resolve("kept")).sample(file, Scene.INSIDE, card);
        assertTrue(ColourDifference.ciede2000(first.lab(), other.lab()) > 20, "another picture of the same name");
    }

    @Test
    void aPictureIsKnownByItsContent() throws Exception {
        Album album = new Album(folder);
        byte[] jpeg = Exposure.of(needles("9e2b25")).jpeg();
        Picture one = Darkroom.withoutCache().picture(album.keep("one.jpg", jpeg));
        assertTrue(one.hash().matches("[0-9a-f]{16,}"), one.hash());
        assertEquals(one, Darkroom.withoutCache().picture(album.keep("copy.jpg", jpeg)));
        byte[] other = Exposure.of(needles("9e2b25")).quality(0.84).jpeg();
        assertNotEquals(one.hash(), Darkroom.withoutCache().picture(album.keep("other.jpg", other)).hash());
    }

    @Test
    void readByManyAtOnce() throws Exception {
        Path file = new Album(folder).keep("shared.jpg", Exposure.of(needles("6f3a5f")).jpeg());
        List<Patch> card = List.of(Patch.grey(Scene.within(Scene.CARD), 18));
        Darkroom keeping = Darkroom.keeping(folder.resolve("many"));
        ExecutorService many = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Sample>> readings = Collections.nCopies(12, () -> keeping.sample(file, Scene.INSIDE, card));
            Sample alone = Darkroom.withoutCache().sample(file, Scene.INSIDE, card);
            for (Future<Sample> reading : many.invokeAll(readings)) {
                assertEquals(alone, reading.get());
            }
        } finally {
            many.shutdownNow();
        }
    }

    private Lab read(byte[] picture) {
        return new Album(folder).againstGrey(picture).lab();
    }

    private static void assertSame(Lab expected, Lab actual, double within, String what) {
        assertEquals(0, ColourDifference.cielab(expected, actual), within, () -> what + " " + expected + " " + actual);
    }
}
