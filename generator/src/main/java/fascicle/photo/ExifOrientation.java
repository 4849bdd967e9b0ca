package fascicle.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Finds the orientation among the tags of Exif, which are laid out like a TIFF (TIFF 6.0, section 2). */
final class ExifOrientation {

    private static final int TAG = 0x0112;

    /** Bytes of a directory's entry: tag, type, count, value. */
    private static final int ENTRY = 12;

    private ExifOrientation() {}

    /**
     * The orientation; upright where the tags are damaged or say nothing.
     *
     * @param tiff from the byte order on
     */
    static Orientation in(Bytes tiff) {
        try {
            boolean little = tiff.textAt(0, 2).equals("II");
            ByteBuffer tags = ByteBuffer.wrap(tiff.content())
                    .order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            int directory = tags.getInt(4);
            int entries = tags.getShort(directory) & 0xffff;
            for (int i = 0; i < entries; i++) {
                int entry = directory + 2 + ENTRY * i;
                if ((tags.getShort(entry) & 0xffff) == TAG) {
                    return Orientation.ofTag(tags.getShort(entry + 8));
                }
            }
            return Orientation.UPRIGHT;
        } catch (Bytes.CutOff | IndexOutOfBoundsException damaged) {
            return Orientation.UPRIGHT;
        }
    }
}
