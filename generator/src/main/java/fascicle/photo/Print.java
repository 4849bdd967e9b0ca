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

    private final Negative negative;
    private final int width;
    private final int height;
    private final int storedWidth;
    private final int storedHeight;
    private final Reduction reduction;

    private Print(Negative negative, Pixels pixels, int widest) {
        this.negative = negative;
        width = StrictMath.min(widest, negative.uprightWidth());
        height = heightFor(width, negative);
        boolean swapped = negative.orientation().swapped();
        storedWidth = swapped ? height : width;
        storedHeight = swapped ? width : height;
        reduction = new Reduction(pixels, negative.profile(), storedWidth, storedHeight);
    }

    /** Copies of at most these widths, for which the picture is decoded and gone through once. */
    static List<byte[]> of(Negative negative, List<Integer> widths) throws UnreadablePhotograph, IOException {
        Pixels pixels = Decoder.decode(negative);
        LightRows light = new LightRows(pixels, negative.profile());
        List<Print> prints = widths.stream().map(widest -> new Print(negative, pixels, widest)).toList();
        for (int y = 0; y < pixels.height(); y++) {
            float[] row = light.row(y);
            prints.forEach(print -> print.reduction.take(row));
        }
        List<byte[]> files = new ArrayList<>();
        for (Print print : prints) {
            files.add(encoded(print.upright()));
        }
        return files;
    }

    private BufferedImage upright() {
        byte[] reduced = reduction.result();
        BufferedImage upright = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int first = place(0, 0);
        int across = width > 1 ? place(1, 0) - first : 0;
        int down = height > 1 ? place(0, 1) - first : 0;
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            int at = first + y * down;
            for (int x = 0; x < width; x++) {
                row[x] = (reduced[at] & 0xff) << 16 | (reduced[at + 1] & 0xff) << 8 | reduced[at + 2] & 0xff;
                at += across;
            }
            upright.getRaster().setDataElements(0, y, width, 1, row);
        }
        return upright;
    }

    /** Where the colour of an upright pixel begins among the stored ones. */
    private int place(int x, int y) {
        Region stored = negative.orientation().stored(new Region(x, y, 1, 1), storedWidth, storedHeight);
        return 3 * (stored.y() * storedWidth + stored.x());
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
