package fascicle.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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

    private Print(Negative negative, int oldWidth, int oldHeight, int widest) {
        this.negative = negative;
        width = StrictMath.min(widest, negative.uprightWidth());
        height = heightFor(width, negative);
        boolean swapped = negative.orientation().swapped();
        storedWidth = swapped ? height : width;
        storedHeight = swapped ? width : height;
        reduction = new Reduction(oldWidth, oldHeight, negative.profile(), storedWidth, storedHeight);
    }

    /**
     * Copies of at most these widths, in their order. The picture is decoded and gone through once, for the widest;
     * each other is made of the light of the next wider one, which costs little and is as good as the eye can tell.
     */
    static List<byte[]> of(Negative negative, List<Integer> widths) throws UnreadablePhotograph, IOException {
        Map<Integer, byte[]> files = new HashMap<>();
        Optional<Print> wider = Optional.empty();
        for (int width : widths.stream().sorted(Comparator.reverseOrder()).distinct().toList()) {
            Print print = wider.isPresent() ? smaller(negative, wider.get(), width) : first(negative, width);
            files.put(width, encoded(print.upright()));
            wider = Optional.of(print);
        }
        return widths.stream().map(width -> Objects.requireNonNull(files.get(width))).toList();
    }

    private static Print first(Negative negative, int width) throws UnreadablePhotograph {
        Pixels pixels = Decoder.decode(negative);
        LightRows light = new LightRows(pixels, negative.profile());
        Print print = new Print(negative, pixels.width(), pixels.height(), width);
        for (int y = 0; y < pixels.height(); y++) {
            print.reduction.take(light.row(y));
        }
        return print;
    }

    private static Print smaller(Negative negative, Print wider, int width) {
        Print print = new Print(negative, wider.storedWidth, wider.storedHeight, width);
        for (int y = 0; y < wider.storedHeight; y++) {
            print.reduction.take(wider.reduction.row(y));
        }
        return print;
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
