package fascicle.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Pictures made for a test: what a file holds is written down byte by byte where a test rests on it. */
final class Pictures {

    private Pictures() {}

    /** The colour of each pixel, as 0xRRGGBB. */
    @FunctionalInterface
    interface Painter {
        int at(int x, int y);
    }

    static BufferedImage painted(int width, int height, Painter painter) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, painter.at(x, y));
            }
        }
        return image;
    }

    /** With hardly any loss. */
    static byte[] jpeg(BufferedImage image) {
        return jpeg(image, 1);
    }

    static byte[] jpeg(BufferedImage image, float quality) {
        return jpeg(image, quality, ImageWriteParam.MODE_DISABLED);
    }

    static byte[] progressiveJpeg(BufferedImage image) {
        return jpeg(image, 1, ImageWriteParam.MODE_DEFAULT);
    }

    private static byte[] jpeg(BufferedImage image, float quality, int progressive) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(stream);
            ImageWriteParam settings = writer.getDefaultWriteParam();
            settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            settings.setCompressionQuality(quality);
            settings.setProgressiveMode(progressive);
            writer.write(null, new IIOImage(image, null, null), settings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** The same JPEG with a segment after its first two bytes. */
    static byte[] withSegment(byte[] jpeg, int marker, byte[] content) {
        return joined(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) marker},
                new byte[] {(byte) (content.length + 2 >> 8), (byte) (content.length + 2)}, content,
                Arrays.copyOfRange(jpeg, 2, jpeg.length));
    }

    /** The same JPEG without its JFIF segment, its three components under other names, in frame and scan. */
    static byte[] renamed(byte[] jpeg, char... names) {
        byte[] bare = joined(Arrays.copyOf(jpeg, 2), Arrays.copyOfRange(jpeg, 20, jpeg.length));
        int at = 2;
        while ((bare[at + 1] & 0xff) != 0xda) {
            for (int i = 0; (bare[at + 1] & 0xff) == 0xc0 && i < 3; i++) {
                bare[at + 10 + 3 * i] = (byte) names[i];
            }
            at += 2 + ((bare[at + 2] & 0xff) << 8 | bare[at + 3] & 0xff);
        }
        for (int i = 0; i < 3; i++) {
            bare[at + 5 + 2 * i] = (byte) names[i];
        }
        return bare;
    }

    static byte[] withOrientation(byte[] jpeg, int orientation) {
        return withSegment(jpeg, 0xe1, joined(text("Exif\0\0"), exif(orientation)));
    }

    static byte[] withProfile(byte[] jpeg, byte[] profile) {
        return withSegment(jpeg, 0xe2, joined(text("ICC_PROFILE\0"), new byte[] {1, 1}, profile));
    }

    /** A little-endian TIFF directory whose second entry is the orientation. */
    static byte[] exif(int orientation) {
        return ByteBuffer.allocate(64).order(ByteOrder.LITTLE_ENDIAN)
                .put(text("II*\0")).putInt(8).putShort((short) 2)
                .putShort((short) 0x0100).putShort((short) 3).putInt(1).putInt(7)
                .putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation)
                .putShort((short) 0).putInt(0).array();
    }

    /** Samples in rows, {@code channels} to a pixel, as a PNG of 8 or 16 bits with more chunks before its pixels. */
    static byte[] png(int width, int height, int depth, int colourType, int[] samples, byte[]... chunks) {
        int perRow = samples.length / height;
        ByteBuffer rows = ByteBuffer.allocate(height + samples.length * depth / 8);
        for (int y = 0; y < height; y++) {
            rows.put((byte) 0);
            for (int i = 0; i < perRow; i++) {
                int sample = samples[y * perRow + i];
                if (depth == 16) {
                    rows.putShort((short) sample);
                } else {
                    rows.put((byte) sample);
                }
            }
        }
        byte[] header = ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) depth).put((byte) colourType)
                .put(new byte[3]).array();
        return joined(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'}, chunk("IHDR", header),
                joined(chunks), chunk("IDAT", deflated(rows.array())), chunk("IEND", new byte[0]));
    }

    /** Every pixel alike. */
    static byte[] flatPng(int width, int height, int depth, int colourType, int[] pixel, byte[]... chunks) {
        int[] samples = new int[width * height * pixel.length];
        Arrays.setAll(samples, i -> pixel[i % pixel.length]);
        return png(width, height, depth, colourType, samples, chunks);
    }

    static byte[] pngOf(BufferedImage image, byte[]... chunks) {
        int[] samples = new int[3 * image.getWidth() * image.getHeight()];
        for (int i = 0; i < samples.length / 3; i++) {
            int rgb = image.getRGB(i % image.getWidth(), i / image.getWidth());
            samples[3 * i] = rgb >> 16 & 255;
            samples[3 * i + 1] = rgb >> 8 & 255;
            samples[3 * i + 2] = rgb & 255;
        }
        return png(image.getWidth(), image.getHeight(), 8, 2, samples, chunks);
    }

    static byte[] chunk(String type, byte[] content) {
        byte[] named = joined(text(type), content);
        CRC32 sum = new CRC32();
        sum.update(named);
        return joined(number(content.length), named, number((int) sum.getValue()));
    }

    static byte[] profileChunk(byte[] profile) {
        return chunk("iCCP", joined(text("made\0\0"), deflated(profile)));
    }

    static byte[] number(int value) {
        return ByteBuffer.allocate(4).putInt(value).array();
    }

    static byte[] text(String letters) {
        return letters.getBytes(StandardCharsets.ISO_8859_1);
    }

    static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            whole.writeBytes(part);
        }
        return whole.toByteArray();
    }

    static Path write(Path folder, String name, byte[] content) {
        try {
            return Files.write(folder.resolve(name), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] deflated(byte[] content) {
        Deflater deflater = new Deflater();
        deflater.setInput(content);
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] buffer = new byte[65_536];
        while (!deflater.finished()) {
            packed.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return packed.toByteArray();
    }
}
