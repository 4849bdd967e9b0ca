package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be used is refused in words that tell a maker what she has and what to do. */
class UnusablePhotographsTest {

    private static final byte[] JPEG = good().jpeg();
    private static final byte[] PNG = good().png();

    @TempDir
    private Path folder;

    private static Exposure good() {
        return Exposure.of(
                new Scene(400, 300, Camera.in(Illuminant.D65), 3).needles(Spectrum.of("b7410e")).card(18).taken());
    }

    @Test
    void picturesThatAreCutOff() {
        for (double share : new double[] {0.02, 0.3, 0.6, 0.97}) {
            assertRefused(cut(JPEG, share), "cut off", "copy it");
            assertRefused(cut(PNG, share), "cut off", "copy it");
        }
        assertRefused(Arrays.copyOf(JPEG, 4), "cut off");
    }

    /** As a copy ends that was broken off after its space had been set aside. */
    @Test
    void picturesWhoseEndIsEmpty() {
        byte[] half = JPEG.clone();
        Arrays.fill(half, half.length / 2, half.length, (byte) 0);
        assertRefused(half, "copy it");
        byte[] halfPng = PNG.clone();
        Arrays.fill(halfPng, halfPng.length / 2, halfPng.length, (byte) 0);
        assertRefused(halfPng, "copy it");
    }

    @Test
    void anEmptyFile() {
        assertRefused(new byte[0], "empty");
    }

    @Test
    void otherKindsOfPicture() {
        assertRefused(box("ftypheic\0\0\0\0mif1heic"), "HEIC", "JPEG");
        assertRefused(box("ftypheix\0\0\0\0mif1heix"), "HEIC", "JPEG");
        assertRefused(box("ftypmif1\0\0\0\0mif1heic"), "HEIC", "JPEG");
        assertRefused(box("ftypavif\0\0\0\0avifmif1"), "AVIF", "JPEG");
        assertRefused(text("RIFF\40\0\0\0WEBPVP8 \24\0\0\0"), "WebP", "JPEG");
        assertRefused(text("GIF89a\1\0\1\0\0\0\0;"), "GIF", "JPEG");
        assertRefused(text("II*\0\10\0\0\0\0\0\0\0\0\0"), "TIFF", "JPEG");
        assertRefused(text("MM\0*\0\0\0\10\0\0\0\0\0\0"), "TIFF", "JPEG");
        assertRefused(text("A list of things to buy, named like a photograph."), "JPEG");
    }

    /** What counts is what a file holds, not how it is called. */
    @Test
    void aPngNamedLikeAJpegIsRead() throws Exception {
        Album album = new Album(folder);
        List<Patch> card = List.of(Patch.grey(Scene.within(Scene.CARD), 18));
        Darkroom darkroom = Darkroom.withoutCache();
        assertEquals(darkroom.sample(album.keep("true.png", PNG), Scene.INSIDE, card),
                darkroom.sample(album.keep("named.jpg", PNG), Scene.INSIDE, card));
    }

    @Test
    void aPictureForThePrintersPress() throws IOException {
        assertRefused(fourInks(0), "CMYK", "RGB");
        assertRefused(fourInks(2), "CMYK", "RGB");
    }

    @Test
    void picturesWithoutColours() throws IOException {
        BufferedImage grey = new BufferedImage(400, 300, BufferedImage.TYPE_BYTE_GRAY);
        grey.getGraphics().drawImage(good().image(), 0, 0, null);
        assertRefused(encoded(grey, "jpeg"), "black and white");
        assertRefused(encoded(grey, "png"), "black and white");
    }

    @Test
    void picturesTooLargeToBeOfNeedles() {
        byte[] jpeg = JPEG.clone();
        int frame = PhotographFilesTest.indexOf(jpeg, new byte[] {(byte) 0xff, (byte) 0xc0});
        ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 10000).putShort(frame + 7, (short) 20000);
        assertRefused(jpeg, "20000 by 10000", "million");
        assertRefused(png(ByteBuffer.allocate(13).putInt(50000).putInt(50000).put((byte) 8).put((byte) 2).array(),
                packed(1 << 20)), "50000 by 50000", "million");
    }

    @Test
    void aStripIsNoPhotograph() {
        assertRefused(png(ByteBuffer.allocate(13).putInt(1600).putInt(70_000).put((byte) 8).put((byte) 2).array(),
                packed(1 << 20)), "longer than any photograph");
    }

    /** A profile that unpacks to a thousand times its size must not fill the memory. */
    @Test
    void aProfileThatSwells() {
        byte[] profile = packed(200 << 20);
        byte[] chunk = Exposure.chunk("iCCP",
                ByteBuffer.allocate(7 + profile.length).put(text("drawn\0\0")).put(profile).array());
        byte[] swollen = ByteBuffer.allocate(PNG.length + chunk.length)
                .put(PNG, 0, 33).put(chunk).put(PNG, 33, PNG.length - 33).array();
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertReadAsSrgb(swollen));
    }

    /** What has no sound profile is taken for sRGB, and that is told. */
    @Test
    void damagedProfiles() {
        byte[] profile = ColourProfile.withFormula(RgbSpace.DISPLAY_P3);
        byte[] beyond = profile.clone();
        ByteBuffer.wrap(beyond).putInt(128 + 4 + 4 + 12 * 6, 1 << 30);
        for (byte[] damaged : List.of(new byte[300], Arrays.copyOf(profile, 200), beyond, text("no profile at all"))) {
            assertReadAsSrgb(good().in(RgbSpace.SRGB, damaged).jpeg());
            assertReadAsSrgb(good().in(RgbSpace.SRGB, damaged).png());
        }
    }

    /** Without a sound word of how it lies, a picture lies as its pixels do; nothing else of Exif matters. */
    @Test
    void damagedExifIsPassedOver() throws Exception {
        byte[] sound = Exif.orientation(6);
        byte[] many = sound.clone();
        ByteBuffer.wrap(many).putShort(8, (short) -1);
        byte[] astray = sound.clone();
        ByteBuffer.wrap(astray).putInt(4, 0x7fffffff);
        byte[] before = sound.clone();
        ByteBuffer.wrap(before).putInt(4, -8);
        byte[] circle = sound.clone();
        ByteBuffer.wrap(circle).putInt(22, 8);
        byte[] ninth = Exif.orientation(9);
        byte[] zeroth = Exif.orientation(0);
        for (byte[] exif : List.of(astray, before, ninth, zeroth, new byte[0], text("MM"), text("XX\0*\0\0\0\10"),
                Arrays.copyOf(sound, 12))) {
            Picture picture = Darkroom.withoutCache().picture(new Album(folder).keep("exif.jpg", with(exif)));
            assertEquals(400, picture.width(), () -> Arrays.toString(exif));
        }
        for (byte[] exif : List.of(circle, many)) {
            Picture picture = Darkroom.withoutCache().picture(new Album(folder).keep("exif.jpg", with(exif)));
            assertEquals(300, picture.width(), "its first word is sound");
        }
    }

    /** A camera's 16 bits say the same as 8. */
    @Test
    void aPngOfSixteenBitsIsRead() throws Exception {
        BufferedImage image = good().image();
        var deep = new java.awt.image.ComponentColorModel(
                java.awt.color.ColorSpace.getInstance(java.awt.color.ColorSpace.CS_sRGB), false, false,
                java.awt.Transparency.OPAQUE, java.awt.image.DataBuffer.TYPE_USHORT);
        var raster = deep.createCompatibleWritableRaster(400, 300);
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 400; x++) {
                int pixel = image.getRGB(x, y);
                raster.setPixel(x, y, new int[] {
                    257 * (pixel >> 16 & 255), 257 * (pixel >> 8 & 255), 257 * (pixel & 255)
                });
            }
        }
        byte[] png = encoded(new BufferedImage(deep, raster, false, null), "png");
        assertEquals(16, png[24], "bits of a channel");
        Album album = new Album(folder);
        var eight = album.againstGrey(PNG).lab();
        var sixteen = album.againstGrey(png).lab();
        assertEquals(eight.lightness(), sixteen.lightness(), 0.02);
        assertEquals(eight.a(), sixteen.a(), 0.02);
        assertEquals(eight.b(), sixteen.b(), 0.02);
    }

    @Test
    void aFolder() throws IOException {
        assertRefused(Files.createDirectory(folder.resolve("folder.jpg")), "folder");
    }

    /** A file that is not there is no picture that cannot be read: whoever named it tells. */
    @Test
    void aMissingFile() {
        assertThrows(NoSuchFileException.class, () -> Darkroom.withoutCache().picture(folder.resolve("nowhere.jpg")));
    }

    private void assertReadAsSrgb(byte[] picture) {
        Album album = new Album(folder);
        Sample sample = album.againstGrey(picture);
        assertTrue(Album.kinds(sample).contains(Caution.Kind.PROFILE_UNREADABLE));
        assertEquals(album.againstGrey(picture[0] == (byte) 0x89 ? PNG : JPEG).lab(), sample.lab());
    }

    private void assertRefused(byte[] content, String... words) {
        assertRefused(new Album(folder).keep("picture.jpg", content), words);
    }

    private static void assertRefused(Path file, String... words) {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            UnreadablePhotograph refusal = assertThrows(UnreadablePhotograph.class, () -> Darkroom.withoutCache()
                    .sample(file, Scene.INSIDE, List.of(Patch.grey(Scene.within(Scene.CARD), 18))));
            for (String word : words) {
                assertTrue(refusal.words().toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT)),
                        () -> "“" + word + "” is not in “" + refusal.words() + "”");
            }
            assertFalse(refusal.words().endsWith("."), refusal.words());
            assertFalse(refusal.words().contains("Exception"), refusal.words());
        });
    }

    private static byte[] cut(byte[] whole, double share) {
        return Arrays.copyOf(whole, (int) (share * whole.length));
    }

    /** A box of the ISO base media file format (ISO/IEC 14496-12), and some bytes after it. */
    private static byte[] box(String content) {
        byte[] letters = text(content);
        return ByteBuffer.allocate(4 + letters.length + 64).putInt(4 + letters.length).put(letters).array();
    }

    private static byte[] text(String content) {
        return content.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] with(byte[] exif) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(JPEG, 0, 2);
        Exposure.segment(out, 0xe1, text("Exif\0\0"), exif);
        out.write(JPEG, 2, JPEG.length - 2);
        return out.toByteArray();
    }

    /** Four channels and the mark of the format that says which: 0 for CMYK as it is, 2 for YCCK. */
    private static byte[] fourInks(int transform) throws IOException {
        var raster = java.awt.image.Raster.createInterleavedRaster(
                java.awt.image.DataBuffer.TYPE_BYTE, 400, 300, 4, null);
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 400; x++) {
                raster.setPixel(x, y, new int[] {x & 255, y & 255, 128, 200});
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(raster, null, null), null);
        } finally {
            writer.dispose();
        }
        byte[] plain = bytes.toByteArray();
        ByteArrayOutputStream marked = new ByteArrayOutputStream();
        marked.write(plain, 0, 2);
        Exposure.segment(marked, 0xee, text("Adobe"), new byte[] {0, 100, 0, 0, 0, 0, (byte) transform});
        marked.write(plain, 2, plain.length - 2);
        return marked.toByteArray();
    }

    private static byte[] encoded(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, format, bytes));
        return bytes.toByteArray();
    }

    private static byte[] png(byte[] header, byte[] pixels) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(text("\u0089PNG\r\n\u001a\n"));
        out.writeBytes(Exposure.chunk("IHDR", header));
        out.writeBytes(Exposure.chunk("IDAT", pixels));
        out.writeBytes(Exposure.chunk("IEND", new byte[0]));
        return out.toByteArray();
    }

    /** So many zeros, packed. */
    private static byte[] packed(int zeros) {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        byte[] some = new byte[1 << 20];
        byte[] packed = new byte[zeros / 100 + 1000];
        int length = 0;
        for (int left = zeros; left > 0; left -= some.length) {
            deflater.setInput(some);
            while (!deflater.needsInput()) {
                length += deflater.deflate(packed, length, packed.length - length);
            }
        }
        deflater.finish();
        length += deflater.deflate(packed, length, packed.length - length);
        deflater.end();
        return Arrays.copyOf(packed, length);
    }
}
