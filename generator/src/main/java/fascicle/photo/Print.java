package fascicle.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Copies of a picture that are fit to be published: upright, in sRGB, as JPEG, and with nothing beside the picture. */
final class Print {

    /** Of the JDK's writer, whose colours have half the resolution then (4:2:0): needles stay crisp. */
    private static final float QUALITY = 0.82f;

    private Print() {}

    /** Copies of at most these widths, decoded once. */
    static List<byte[]> of(Negative negative, List<Integer> widths) throws UnreadablePhotograph, IOException {
        Pixels pixels = Decoder.decode(negative);
        List<byte[]> prints = new ArrayList<>();
        for (int width : widths) {
            prints.add(of(negative, pixels, width));
        }
        return prints;
    }

    private static byte[] of(Negative negative, Pixels pixels, int widest) throws IOException {
        int width = StrictMath.min(widest, negative.uprightWidth());
        int height = heightFor(width, negative);
        boolean swapped = negative.orientation().swapped();
        int storedWidth = swapped ? height : width;
        int storedHeight = swapped ? width : height;
        byte[] reduced = Reduction.of(pixels, negative.profile(), storedWidth, storedHeight);
        BufferedImage upright = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                Region at = negative.orientation().stored(new Region(x, y, 1, 1), storedWidth, storedHeight);
                int first = 3 * (at.y() * storedWidth + at.x());
                upright.setRGB(x, y, (reduced[first] & 0xff) << 16 | (reduced[first + 1] & 0xff) << 8
                        | reduced[first + 2] & 0xff);
            }
        }
        return encoded(upright);
    }

    /** To the nearest pixel, and at least one. */
    private static int heightFor(int width, Negative negative) {
        return (int) StrictMath.max(1,
                StrictMath.round((double) width * negative.uprightHeight() / negative.uprightWidth()));
    }

    private static byte[] encoded(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(stream);
            ImageWriteParam settings = writer.getDefaultWriteParam();
            settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            settings.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), settings);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
