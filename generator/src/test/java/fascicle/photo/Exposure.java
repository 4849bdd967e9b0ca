package fascicle.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/**
 * A picture developed into the bytes of a file.
 *
 * @param upright what is to be seen
 * @param space whose red, green and blue are written
 * @param profile to embed; nothing if it has no bytes
 * @param orientation how the pixels lie, from 1 to 8 (Exif)
 * @param place whether it tells where it was taken, and with which camera
 * @param quality of a JPEG, from 0 to 1; its colours are stored at half the size (4:2:0)
 * @param progressive whether a JPEG comes in passes
 */
record Exposure(Canvas upright, RgbSpace space, byte[] profile, int orientation, boolean place, float quality,
        boolean progressive) {

    private static final byte[] SIGNALS = signals();

    /** sRGB without a profile, upright, at quality 85. */
    static Exposure of(Canvas upright) {
        return new Exposure(upright, RgbSpace.SRGB, new byte[0], 1, false, 0.85f, false);
    }

    Exposure in(RgbSpace other, byte[] embedded) {
        return new Exposure(upright, other, embedded, orientation, place, quality, progressive);
    }

    Exposure lying(int exifOrientation) {
        return new Exposure(upright, space, profile, exifOrientation, place, quality, progressive);
    }

    Exposure tellingItsPlace() {
        return new Exposure(upright, space, profile, orientation, true, quality, progressive);
    }

    Exposure quality(double other) {
        return new Exposure(upright, space, profile, orientation, place, (float) other, progressive);
    }

    Exposure inPasses() {
        return new Exposure(upright, space, profile, orientation, place, quality, true);
    }

    /** A JPEG, with Exif if it does not lie upright or tells its place, and with the profile. */
    byte[] jpeg() {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(quality);
        how.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        byte[] plain = encoded(writer, how);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        if (orientation != 1 || place) {
            byte[] exif = place ? Exif.withPlace(orientation) : Exif.orientation(orientation);
            segment(out, 0xe1, "Exif\0\0".getBytes(StandardCharsets.US_ASCII), exif);
        }
        if (profile.length > 0) {
            segment(out, 0xe2, "ICC_PROFILE\0\1\1".getBytes(StandardCharsets.US_ASCII), profile);
        }
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }

    /** A PNG of 8 bits, with the profile; its pixels lie as the orientation says, of which it does not tell. */
    byte[] png() {
        byte[] plain = encoded(ImageIO.getImageWritersByFormatName("png").next(), null);
        int afterHeader = 8 + 25;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, afterHeader);
        if (profile.length > 0) {
            out.writeBytes(chunk("iCCP", packedProfile()));
        }
        out.write(plain, afterHeader, plain.length - afterHeader);
        return out.toByteArray();
    }

    /** The pixels as they lie in the file. */
    BufferedImage image() {
        boolean turned = orientation > 4;
        int width = turned ? upright.height() : upright.width();
        int height = turned ? upright.width() : upright.height();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        double[][] fromSrgb = space.fromSrgb();
        int[] line = new int[upright.width()];
        for (int y = 0; y < upright.height(); y++) {
            for (int x = 0; x < upright.width(); x++) {
                line[x] = pixel(fromSrgb, x, y);
            }
            for (int x = 0; x < upright.width(); x++) {
                image.setRGB(column(x, y), row(x, y), line[x]);
            }
        }
        return image;
    }

    /** Which column of the file holds a pixel: Exif 2.3, 4.6.4, names the edge that the first column shows. */
    private int column(int x, int y) {
        return switch (orientation) {
            case 1, 4 -> x;
            case 2, 3 -> upright.width() - 1 - x;
            case 5, 6 -> y;
            case 7, 8 -> upright.height() - 1 - y;
            default -> throw new IllegalArgumentException("no orientation: " + orientation);
        };
    }

    private int row(int x, int y) {
        return switch (orientation) {
            case 1, 2 -> y;
            case 3, 4 -> upright.height() - 1 - y;
            case 5, 8 -> x;
            case 6, 7 -> upright.width() - 1 - x;
            default -> throw new IllegalArgumentException("no orientation: " + orientation);
        };
    }

    private int pixel(double[][] fromSrgb, int x, int y) {
        int pixel = 0;
        for (int i = 0; i < 3; i++) {
            double light = space == RgbSpace.SRGB ? upright.at(x, y, i)
                    : fromSrgb[i][0] * upright.at(x, y, 0) + fromSrgb[i][1] * upright.at(x, y, 1)
                            + fromSrgb[i][2] * upright.at(x, y, 2);
            double held = StrictMath.max(0, StrictMath.min(1, light));
            pixel = pixel << 8 | SIGNALS[(int) (held * 0xffff + 0.5)] & 0xff;
        }
        return pixel;
    }

    private byte[] encoded(ImageWriter writer, @org.jspecify.annotations.Nullable ImageWriteParam how) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image(), null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    static void segment(ByteArrayOutputStream out, int marker, byte[] name, byte[] content) {
        int length = 2 + name.length + content.length;
        out.writeBytes(new byte[] {(byte) 0xff, (byte) marker, (byte) (length >> 8), (byte) length});
        out.writeBytes(name);
        out.writeBytes(content);
    }

    /** A piece of a PNG: length, name, content and their check. */
    static byte[] chunk(String name, byte[] content) {
        byte[] letters = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(letters);
        check.update(content);
        return ByteBuffer.allocate(12 + content.length).putInt(content.length).put(letters).put(content)
                .putInt((int) check.getValue()).array();
    }

    private byte[] packedProfile() {
        Deflater deflater = new Deflater();
        deflater.setInput(profile);
        deflater.finish();
        byte[] packed = new byte[profile.length + 100];
        int length = deflater.deflate(packed);
        deflater.end();
        return ByteBuffer.allocate(7 + length).put("drawn\0\0".getBytes(StandardCharsets.US_ASCII))
                .put(packed, 0, length).array();
    }

    private static byte[] signals() {
        byte[] signals = new byte[0x10000];
        for (int i = 0; i < signals.length; i++) {
            signals[i] = (byte) StrictMath.round(255 * RgbSpace.encode(i / 65535.0));
        }
        return signals;
    }
}
