package fascicle.bench;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** What decoding photographs and making three smaller copies of each costs by the JDK's own means, on all cores. */
public final class PicturesAlone {

    private static final List<Integer> WIDTHS = List.of(1600, 960, 480);

    private PicturesAlone() {}

    /**
     * Makes the copies.
     *
     * @param args the folder of the photographs, and a folder for the copies
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path target = Files.createDirectories(Path.of(args[1]));
        try (Stream<Path> files = Files.walk(Path.of(args[0]))) {
            files.filter(file -> file.toString().endsWith(".jpg")).toList().parallelStream()
                    .forEach(file -> copies(file, target));
        }
    }

    private static void copies(Path file, Path target) {
        try {
            BufferedImage image = ImageIO.read(file.toFile());
            for (int width : WIDTHS) {
                image = smaller(image, width);
                String name = file.getParent().getFileName() + "-" + file.getFileName();
                ImageIO.write(image, "jpeg", target.resolve(name.replace(".jpg", "-" + width + ".jpg")).toFile());
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Halved until one more halving would be too much, then the rest of the way, as pictures keep their grain. */
    private static BufferedImage smaller(BufferedImage image, int width) {
        BufferedImage smaller = image;
        while (smaller.getWidth() > width) {
            int next = Math.max(width, smaller.getWidth() / 2);
            smaller = drawn(smaller, next, Math.round((float) smaller.getHeight() * next / smaller.getWidth()));
        }
        return smaller;
    }

    private static BufferedImage drawn(BufferedImage image, int width, int height) {
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = drawn.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.drawImage(image, 0, 0, width, height, null);
        brush.dispose();
        return drawn;
    }
}
