package fascicle.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A picture of flat colours, so that what is read off it is what was painted. */
final class FlatPicture {

    /** sRGB of a reflectance of 18 per cent: 255 · encode(0.18) = 117.97. */
    static final int GREY_18 = 0x767676;

    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;

    private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);

    private FlatPicture() {}

    /** A table top. */
    static FlatPicture table() {
        return new FlatPicture().with(0, 0, 100, 100, 0xb9a98c);
    }

    /** The same with something on it, in per cent of width and height. */
    FlatPicture with(double x, double y, double width, double height, int rgb) {
        Graphics2D brush = image.createGraphics();
        brush.setColor(new Color(rgb));
        brush.fillRect((int) (x * WIDTH / 100), (int) (y * HEIGHT / 100), (int) (width * WIDTH / 100),
                (int) (height * HEIGHT / 100));
        brush.dispose();
        return this;
    }

    /** Its file. */
    byte[] png() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return bytes.toByteArray();
    }
}
