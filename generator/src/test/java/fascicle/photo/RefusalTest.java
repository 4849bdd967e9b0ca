package fascicle.photo;

import static fascicle.photo.Pictures.chunk;
import static fascicle.photo.Pictures.jpeg;
import static fascicle.photo.Pictures.joined;
import static fascicle.photo.Pictures.number;
import static fascicle.photo.Pictures.painted;
import static fascicle.photo.Pictures.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each word completes a sentence that begins: the picture “brick.jpg”. */
class RefusalTest {

    private static final Area ALL = new Area(0, 0, 100, 100);
    private static final String SAVE =
            "save it as JPEG: set the camera of the phone to save JPEG, or export the picture as JPEG";
    private static final String COPY = "copy it from the phone or camera again";

    @TempDir
    Path folder;

    /** Signatures by the formats' own specifications. */
    @Test
    void otherKindsOfFilesAreNamed() {
        assertRefused("is an empty file; " + COPY, new byte[0]);
        assertRefused("is a HEIC picture, which cannot be read here; " + SAVE, text("\0\0\0\u0018ftypheic\0\0\0\0"));
        assertRefused("is a HEIC picture, which cannot be read here; " + SAVE, text("\0\0\0\u0018ftypmif1\0\0\0\0"));
        assertRefused("is an AVIF picture, which cannot be read here; " + SAVE, text("\0\0\0\u0018ftypavif\0\0\0\0"));
        assertRefused("is a camera's raw picture, which cannot be read here; " + SAVE, text("\0\0\0\u0018ftypcrx \0"));
        assertRefused("is a film and no picture; take a photograph", text("\0\0\0\u0018ftypisom\0\0\0\0"));
        assertRefused("is a WebP picture, which cannot be read here; " + SAVE, text("RIFF\1\2\3\4WEBPVP8 "));
        assertRefused("is a GIF, which holds too few colours; take the photograph it was made from, and " + SAVE,
                text("GIF89a"));
        assertRefused("is a TIFF or a camera's raw picture, which cannot be read here; " + SAVE, text("II*\0\b\0\0\0"));
        assertRefused("is a TIFF or a camera's raw picture, which cannot be read here; " + SAVE, text("MM\0*\0\0\0\b"));
        assertRefused("is a BMP picture, which cannot be read here; " + SAVE, text("BM\1\2\0\0\0\0"));
        assertRefused("is a PDF and no picture; save the photograph in it as JPEG", text("%PDF-1.7\n"));
        assertRefused("is a text and no picture; name the photograph's own file here, a JPEG or PNG",
                text("<!DOCTYPE html>\n<p>Sign in"));
        assertRefused("is a text and no picture; name the photograph's own file here, a JPEG or PNG",
                text("title: Brick\n"));
        assertRefused("is no JPEG and no PNG, or a damaged one; " + COPY + ", or " + SAVE, new byte[4000]);
    }

    @Test
    void aPictureIsReadWholeOrNotAtAll() {
        byte[] jpeg = jpeg(painted(300, 200, (x, y) -> 0x800000 + 0x010203 * (x * y % 61)));
        byte[] png = Pictures.pngOf(painted(300, 200, (x, y) -> 0x800000 + 0x010203 * (x * y % 61)));
        for (byte[] whole : List.of(jpeg, png)) {
            for (int length = 20; length < whole.length; length += 1 + whole.length / 97) {
                assertRefused("is cut off before its end; " + COPY, Arrays.copyOf(whole, length));
                // A copy that was given its length before its content.
                byte[] hollow = Arrays.copyOf(Arrays.copyOf(whole, length), whole.length + 5);
                String words = refusal(hollow);
                assertTrue(words.contains(COPY), words);
            }
        }
    }

    @Test
    void lostBytesAndFlippedOnesAreDamage() {
        byte[] jpeg = jpeg(painted(300, 200, (x, y) -> 0x800000 + 0x010203 * (x * y % 61)));
        byte[] shorter = joined(Arrays.copyOf(jpeg, jpeg.length / 2),
                Arrays.copyOfRange(jpeg, jpeg.length - 2, jpeg.length));
        assertRefused("is damaged; " + COPY, shorter);
        byte[] png = Pictures.pngOf(painted(300, 200, (x, y) -> 0x800000 + 0x010203 * (x * y % 61)));
        png[png.length / 2] ^= 4;
        assertRefused("is damaged; " + COPY, png);
    }

    @Test
    void kindsOfJpegThatArePrintersOrRareAreNamed() {
        byte[] jpeg = jpeg(painted(30, 20, (x, y) -> 0x808080));
        for (int marker : new int[] {0xc3, 0xc9}) {
            assertRefused("is a JPEG of a rare kind (lossless or with arithmetic coding); save it as an ordinary JPEG",
                    withFrame(jpeg, marker, 8, 3));
        }
        assertRefused("is a JPEG in the four inks of a printing press (CMYK); save it as JPEG in RGB",
                withFrame(jpeg, 0xc0, 8, 4));
        assertRefused("is a JPEG of a rare kind; save it as an ordinary JPEG with 8 bits in RGB",
                withFrame(jpeg, 0xc1, 12, 3));
    }

    @Test
    void hugePicturesAreRefusedByTheirHeader() {
        byte[] bomb = joined(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'},
                chunk("IHDR", joined(number(20_000), number(10_000), new byte[] {8, 2, 0, 0, 0})),
                chunk("IDAT", new byte[10]), chunk("IEND", new byte[0]));
        assertRefused("is 20000 by 10000 pixels, more than the 120 million that are read; save it smaller", bomb);
        byte[] jpeg = jpeg(painted(30, 20, (x, y) -> 0x808080));
        byte[] huge = withFrame(jpeg, 0xc0, 8, 3);
        assertRefused("is 65535 by 65535 pixels, more than the 120 million that are read; save it smaller",
                patched(huge, 0xc0, 5, new byte[] {-1, -1, -1, -1}));
    }

    @Test
    void whatLacksColourIsPrintedAndNotSampled() throws Exception {
        BufferedImage grey = new BufferedImage(300, 200, BufferedImage.TYPE_BYTE_GRAY);
        String words = "is in black and white, so there is no colour to read; use the one in colour";
        for (byte[] content : List.of(jpeg(grey), Pictures.flatPng(30, 20, 8, 0, new int[] {90}),
                Pictures.flatPng(30, 20, 16, 4, new int[] {90, 65535}))) {
            assertRefused(words, content);
            assertTrue(Darkroom.withoutCache().print(Pictures.write(folder, "grey", content), 10).length > 0);
        }
    }

    @Test
    void whatCanBeSeenThroughIsNotSampled() throws Exception {
        assertRefused("can be seen through, so that its colours depend on what lies behind; " + SAVE,
                Pictures.flatPng(30, 20, 8, 6, new int[] {200, 100, 50, 254}));
        Path opaque = Pictures.write(folder, "opaque.png",
                Pictures.flatPng(30, 20, 8, 6, new int[] {200, 100, 50, 255}));
        assertEquals(200, Darkroom.withoutCache().sample(opaque, ALL, List.of()).lab().toRgb().red());
    }

    @Test
    void damagedExifIsPassedOver() throws Exception {
        byte[] jpeg = jpeg(painted(30, 20, (x, y) -> 0x808080));
        for (byte[] exif : List.of(text("Exif\0\0"), text("Exif\0\0II*\0\u00ff\u00ff\u00ff\u007f"),
                text("Exif\0\0MM\0*\u00ff\u00ff\u00ff\u00ff"), text("Exif\0\0II*\0\b\0\0\0\u00ff\u00ff"))) {
            Picture picture = Darkroom.withoutCache().picture(
                    Pictures.write(folder, "made", Pictures.withSegment(jpeg, 0xe1, exif)));
            assertEquals(30, picture.width());
        }
    }

    @Test
    void bytesAfterThePictureAreNoPartOfIt() throws Exception {
        byte[] jpeg = jpeg(painted(30, 20, (x, y) -> 0x808080));
        Path file = Pictures.write(folder, "made", joined(jpeg, text("a film of three seconds")));
        assertEquals(30, Darkroom.withoutCache().picture(file).width());
        assertEquals(600 - 120, Darkroom.withoutCache().sample(file, ALL, List.of()).pixels());
    }

    @Test
    void aFileThatIsNotThereIsTheDisksMatter() {
        assertThrows(NoSuchFileException.class, () -> Darkroom.withoutCache().picture(folder.resolve("absent.jpg")));
    }

    /** The frame's header with another marker, precision and count of components, which repeat. */
    private static byte[] withFrame(byte[] jpeg, int marker, int precision, int components) {
        int at = frame(jpeg, 0xc0);
        byte[] header = new byte[8 + 3 * components];
        System.arraycopy(jpeg, at + 2, header, 0, 8);
        header[1] = (byte) header.length;
        header[2] = (byte) precision;
        header[7] = (byte) components;
        for (int i = 0; i < components; i++) {
            System.arraycopy(jpeg, at + 10, header, 8 + 3 * i, 3);
        }
        return joined(Arrays.copyOf(jpeg, at), new byte[] {(byte) 0xff, (byte) marker}, header,
                Arrays.copyOfRange(jpeg, at + 19, jpeg.length));
    }

    private static byte[] patched(byte[] jpeg, int marker, int offset, byte[] bytes) {
        byte[] patched = jpeg.clone();
        System.arraycopy(bytes, 0, patched, frame(jpeg, marker) + offset, bytes.length);
        return patched;
    }

    private static int frame(byte[] jpeg, int marker) {
        int at = 2;
        while ((jpeg[at + 1] & 0xff) != marker) {
            at += 2 + ((jpeg[at + 2] & 0xff) << 8 | jpeg[at + 3] & 0xff);
        }
        return at;
    }

    private void assertRefused(String words, byte[] content) {
        assertEquals(words, refusal(content));
    }

    private String refusal(byte[] content) {
        Path file = Pictures.write(folder, "brick.jpg", content);
        return assertThrows(UnreadablePhotograph.class,
                () -> Darkroom.withoutCache().sample(file, ALL, List.of())).words();
    }
}
