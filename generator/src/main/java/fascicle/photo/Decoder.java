package fascicle.photo;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Turns the bare bytes of a picture into pixels, by the JDK's own readers. */
final class Decoder {

    /** What the JPEG library says of bytes too many between segments, which lose no pixel. */
    private static final String HARMLESS = "extraneous bytes";

    private Decoder() {}

    /** All pixels. */
    static Pixels decode(Negative negative) throws UnreadablePhotograph {
        return decode(negative, new Region(0, 0, negative.width(), negative.height()));
    }

    /**
     * The pixels of a part.
     *
     * @throws UnreadablePhotograph if the picture is damaged: a decoder's warnings count, since after most of them it
     *     fills the rest with grey
     */
    static Pixels decode(Negative negative, Region region) throws UnreadablePhotograph {
        ImageReader reader = ImageIO.getImageReadersByFormatName(negative.kind() == FileKind.JPEG ? "jpeg" : "png")
                .next();
        AtomicBoolean doubtful = new AtomicBoolean();
        try (MemoryCacheImageInputStream stream =
                new MemoryCacheImageInputStream(new ByteArrayInputStream(negative.bare()))) {
            reader.setInput(stream, true, true);
            reader.addIIOReadWarningListener((source, warning) -> {
                if (!warning.contains(HARMLESS)) {
                    doubtful.set(true);
                }
            });
            ImageReadParam part = reader.getDefaultReadParam();
            part.setSourceRegion(new Rectangle(region.x(), region.y(), region.width(), region.height()));
            BufferedImage image = reader.read(0, part);
            if (doubtful.get()) {
                throw Negative.damaged();
            }
            return new Pixels(image);
        } catch (IOException | RuntimeException unreadable) {
            throw Negative.damaged();
        } finally {
            reader.dispose();
        }
    }
}
