package fascicle.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;

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

    /** Reads rows one after the other into its own arrays. */
    final class Reader {

        private final int[] numbers = new int[3 * width()];
        private final int[] opacity = new int[width()];
        private final int[] packed = new int[bands == 0 ? width() : 0];
        private final byte[] bytes = new byte[deep ? 0 : bands * width()];
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
            } else {
                raster.getDataElements(0, y, width(), 1, bytes);
                spread();
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

        private void spread() {
            int green = bands > 2 ? 1 : 0;
            int blue = bands > 2 ? 2 : 0;
            int width = width();
            if (deep) {
                for (int x = 0; x < width; x++) {
                    numbers[3 * x] = shorts[bands * x] & 0xffff;
                    numbers[3 * x + 1] = shorts[bands * x + green] & 0xffff;
                    numbers[3 * x + 2] = shorts[bands * x + blue] & 0xffff;
                }
            } else {
                for (int x = 0; x < width; x++) {
                    numbers[3 * x] = bytes[bands * x] & 0xff;
                    numbers[3 * x + 1] = bytes[bands * x + green] & 0xff;
                    numbers[3 * x + 2] = bytes[bands * x + blue] & 0xff;
                }
            }
            if (bands == 2 || bands == 4) {
                for (int x = 0; x < width; x++) {
                    int at = bands * x + bands - 1;
                    opacity[x] = deep ? shorts[at] & 0xffff : bytes[at] & 0xff;
                    seeThrough |= opacity[x] < highest();
                }
            }
        }
    }
}
