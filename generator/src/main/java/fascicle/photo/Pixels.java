package fascicle.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Decoded pixels, as they are stored: three numbers each, row by row. Greys are given as three equal numbers. What may
 * be seen through is told of each row.
 */
final class Pixels {

    private final BufferedImage image;
    private final WritableRaster raster;
    private final int bands;
    private final boolean deep;

    Pixels(BufferedImage decoded) {
        boolean direct = !(decoded.getColorModel() instanceof IndexColorModel)
                && (decoded.getRaster().getTransferType() == DataBuffer.TYPE_BYTE
                        || decoded.getRaster().getTransferType() == DataBuffer.TYPE_USHORT)
                && decoded.getRaster().getSampleModel().getSampleSize(0) >= 8;
        image = decoded;
        raster = decoded.getRaster();
        bands = direct ? raster.getNumBands() : 0;
        deep = direct && raster.getTransferType() == DataBuffer.TYPE_USHORT;
    }

    int width() {
        return raster.getWidth();
    }

    int height() {
        return raster.getHeight();
    }

    /** The highest number of a channel, which means all its light. */
    int highest() {
        return deep ? 65_535 : 255;
    }

    /**
     * Numbers of 8 bits as the decoder left them, so that they need not be copied row by row.
     *
     * @param first where a row begins
     * @param line from the beginning of a row to that of the next
     * @param step from a pixel to the next
     * @param offsets of each band in a pixel
     */
    private record Interleaved(byte[] data, int first, int line, int step, int[] offsets) {

        static Optional<Interleaved> of(Raster raster) {
            return raster.getSampleModel() instanceof PixelInterleavedSampleModel model
                    && raster.getDataBuffer() instanceof DataBufferByte bytes && bytes.getNumBanks() == 1
                    ? Optional.of(new Interleaved(bytes.getData(), bytes.getOffset() - model.getScanlineStride()
                            * raster.getSampleModelTranslateY() - model.getPixelStride()
                            * raster.getSampleModelTranslateX(), model.getScanlineStride(), model.getPixelStride(),
                            model.getBandOffsets()))
                    : Optional.empty();
        }

        Interleaved at(int y) {
            return new Interleaved(data, first + y * line, line, step, offsets);
        }
    }

    /** Reads rows one after the other into its own arrays. */
    final class Reader {

        private final int[] numbers = new int[3 * width()];
        private final int[] opacity = new int[width()];
        private final int[] packed = new int[bands == 0 ? width() : 0];
        private final Optional<Interleaved> bytes = deep ? Optional.empty() : Interleaved.of(raster);
        private final byte[] copied = new byte[deep || bytes.isPresent() ? 0 : bands * width()];
        private final short[] shorts = new short[deep ? bands * width() : 0];
        private boolean seeThrough;

        /** The numbers of a row: red, green and blue of each pixel in turn. The next row overwrites them. */
        int[] row(int y) {
            seeThrough = false;
            if (bands == 0) {
                unpack(image.getRGB(0, y, width(), 1, packed, 0, width()));
            } else if (deep) {
                raster.getDataElements(0, y, width(), 1, shorts);
                spread();
            } else if (bytes.isPresent()) {
                spread(bytes.get().at(y));
            } else {
                raster.getDataElements(0, y, width(), 1, copied);
                spread(new Interleaved(copied, 0, 0, bands, inOrder()));
            }
            return numbers;
        }

        /** Whether any pixel of the last row lets something through. */
        boolean seeThrough() {
            return seeThrough;
        }

        /** Of the last row, from 0 to the highest number; asked for only where something is seen through. */
        int[] opacity() {
            return opacity;
        }

        private void unpack(int[] colours) {
            for (int x = 0; x < colours.length; x++) {
                int colour = colours[x];
                numbers[3 * x] = colour >> 16 & 255;
                numbers[3 * x + 1] = colour >> 8 & 255;
                numbers[3 * x + 2] = colour & 255;
                opacity[x] = colour >>> 24;
                seeThrough |= opacity[x] < 255;
            }
        }

        private int[] inOrder() {
            return IntStream.range(0, bands).toArray();
        }

        private void spread() {
            int green = bands > 2 ? 1 : 0;
            int blue = bands > 2 ? 2 : 0;
            int width = width();
            for (int x = 0; x < width; x++) {
                numbers[3 * x] = shorts[bands * x] & 0xffff;
                numbers[3 * x + 1] = shorts[bands * x + green] & 0xffff;
                numbers[3 * x + 2] = shorts[bands * x + blue] & 0xffff;
            }
            if (bands == 2 || bands == 4) {
                for (int x = 0; x < width; x++) {
                    opacity[x] = shorts[bands * x + bands - 1] & 0xffff;
                    seeThrough |= opacity[x] < highest();
                }
            }
        }

        private void spread(Interleaved row) {
            byte[] from = row.data();
            int step = row.step();
            int red = row.first() + row.offsets()[0];
            int green = row.first() + row.offsets()[bands > 2 ? 1 : 0];
            int blue = row.first() + row.offsets()[bands > 2 ? 2 : 0];
            for (int to = 0; to < numbers.length; to += 3) {
                numbers[to] = from[red] & 0xff;
                numbers[to + 1] = from[green] & 0xff;
                numbers[to + 2] = from[blue] & 0xff;
                red += step;
                green += step;
                blue += step;
            }
            if (bands == 2 || bands == 4) {
                int at = row.first() + row.offsets()[bands - 1];
                for (int x = 0; x < opacity.length; x++) {
                    opacity[x] = from[at + step * x] & 0xff;
                    seeThrough |= opacity[x] < highest();
                }
            }
        }
    }
}
