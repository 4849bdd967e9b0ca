package fascicle.photo;

/**
 * A picture as it is stored, known from its header, not yet decoded.
 *
 * @param kind JPEG or PNG
 * @param width of the stored rows, in pixels
 * @param height of the stored columns, in pixels
 * @param coloured whether it has colours, or greys alone
 * @param orientation how it is turned upright
 * @param profile what its numbers mean
 * @param coarse whether it was stored with so much loss that colours suffer
 * @param bare the same picture without anything that is not picture: no profile, no Exif, no words
 */
record Negative(FileKind kind, int width, int height, boolean coloured, Orientation orientation, Profile profile,
        boolean coarse, byte[] bare) {

    /** A longer side belongs to a strip, and its copies would be as tall as they are useless. */
    private static final int LONGEST_SIDE = 20_000;

    /** The most pixels of a picture, so that one fits in memory; the largest phones take 108 million. */
    static final long MOST_PIXELS = 120_000_000L;

    /**
     * Reads what stands in a file before and beside its pixels.
     *
     * @throws UnreadablePhotograph if the file is no whole picture of a kind that is read
     */
    static Negative of(byte[] content) throws UnreadablePhotograph {
        return switch (FileKind.of(content)) {
            case JPEG -> new JpegFile(content).read();
            case PNG -> new PngFile(content).read();
        };
    }

    int uprightWidth() {
        return orientation.swapped() ? height : width;
    }

    int uprightHeight() {
        return orientation.swapped() ? width : height;
    }

    long pixels() {
        return (long) width * height;
    }

    static UnreadablePhotograph cutOff() {
        return new UnreadablePhotograph("is cut off before its end; " + FileKind.COPY_AGAIN);
    }

    static UnreadablePhotograph damaged() {
        return new UnreadablePhotograph("is damaged; " + FileKind.COPY_AGAIN);
    }

    /** Refuses a size before any memory is asked for. */
    static void checkSize(long width, long height) throws UnreadablePhotograph {
        if (width <= 0 || height <= 0) {
            throw damaged();
        }
        if (StrictMath.max(width, height) > LONGEST_SIDE && width * height <= MOST_PIXELS) {
            throw new UnreadablePhotograph("is " + width + " by " + height + " pixels, longer than any photograph; cut "
                    + "it, or save it smaller");
        }
        if (width * height > MOST_PIXELS) {
            throw new UnreadablePhotograph("is " + width + " by " + height + " pixels, more than the "
                    + MOST_PIXELS / 1_000_000 + " million that are read; save it smaller");
        }
    }
}
