package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;

/** The drawn files are what they claim to be, as another reader sees them. */
class PhotographFilesTest {

    /** A picture with a red pixel area to the left and a blue one to the right. */
    private static Canvas redAndBlue() {
        Canvas canvas = new Canvas(64, 32);
        for (int y = 0; y < 32; y++) {
            for (int x = 0; x < 64; x++) {
                canvas.cover(x, y, x < 32 ? new double[] {1, 0, 0} : new double[] {0, 0, 1}, 1);
            }
        }
        return canvas;
    }

    @Test
    void coloursOfAJpegAreStoredAtHalfTheSize() {
        byte[] jpeg = Exposure.of(redAndBlue()).jpeg();
        int frame = indexOf(jpeg, new byte[] {(byte) 0xff, (byte) 0xc0});
        assertEquals(3, jpeg[frame + 9]);
        assertEquals(0x22, jpeg[frame + 11], "the sampling of Y beside that of Cb and Cr");
        assertEquals(0x11, jpeg[frame + 14]);
    }

    @Test
    void aJpegInPassesIsOne() {
        assertTrue(indexOf(Exposure.of(redAndBlue()).inPasses().jpeg(), new byte[] {(byte) 0xff, (byte) 0xc2}) > 0);
    }

    /** Held with its right side down, a phone stores the picture's left side as the first line (Exif 2.3, 4.6.4). */
    @Test
    void pixelsLieAsTheOrientationSays() throws IOException {
        assertEquals(64, read(Exposure.of(redAndBlue()).lying(3).jpeg()).getWidth());
        var onItsSide = read(Exposure.of(redAndBlue()).lying(8).jpeg());
        assertEquals(32, onItsSide.getWidth());
        assertTrue((onItsSide.getRGB(16, 4) >> 16 & 255) > 240, "the first line is the left side, which is red");
        assertTrue((read(Exposure.of(redAndBlue()).lying(6).jpeg()).getRGB(16, 4) & 255) > 240);
        assertTrue((read(Exposure.of(redAndBlue()).lying(2).jpeg()).getRGB(4, 16) & 255) > 240);
    }

    @Test
    void anotherReaderFindsTheProfile() throws IOException {
        byte[] profile = ColourProfile.withFormula(RgbSpace.DISPLAY_P3);
        byte[] jpeg = Exposure.of(redAndBlue()).in(RgbSpace.DISPLAY_P3, profile).jpeg();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(jpeg))) {
            var reader = ImageIO.getImageReaders(in).next();
            reader.setInput(in);
            int red = ICC_Profile.icSigRedColorantTag;
            List<byte[]> reds = new ArrayList<>();
            reader.getImageTypes(0).forEachRemaining(type -> {
                if (type.getColorModel().getColorSpace() instanceof ICC_ColorSpace space) {
                    reds.add(space.getProfile().getData(red));
                }
            });
            byte[] expected = ICC_Profile.getInstance(profile).getData(red);
            assertTrue(reds.stream().anyMatch(found -> Arrays.equals(expected, found)));
        }
        byte[] png = Exposure.of(redAndBlue()).in(RgbSpace.DISPLAY_P3, profile).png();
        assertTrue(indexOf(png, "iCCP".getBytes(StandardCharsets.US_ASCII)) > 0);
        assertEquals(64, read(png).getWidth());
    }

    private static BufferedImage read(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file));
    }

    static int indexOf(byte[] whole, byte[] part) {
        return new String(whole, StandardCharsets.ISO_8859_1).indexOf(new String(part, StandardCharsets.ISO_8859_1));
    }
}
