package fascicle.photo;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** What a phone writes beside a picture (Exif 2.3, CIPA DC-008): which way it was held, and far too much besides. */
final class Exif {

    /** A camera that does not exist. */
    static final String MODEL = "drawn";

    private Exif() {}

    /** Only how the pixels lie, from 1 to 8. */
    static byte[] orientation(int orientation) {
        ByteBuffer tiff = ByteBuffer.allocate(26);
        tiff.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 1);
        shortTag(tiff, 0x0112, orientation);
        tiff.putInt(0);
        return tiff.array();
    }

    /** How the pixels lie, {@link #MODEL} and a place in the open sea: 48° 30′ south, 123° 24′ west. */
    static byte[] withPlace(int orientation) {
        int gps = 8 + 2 + 3 * 12 + 4;
        int figures = gps + 2 + 4 * 12 + 4;
        ByteBuffer tiff = ByteBuffer.allocate(figures + 48 + 6);
        tiff.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 3);
        tag(tiff, 0x0110, 2, MODEL.length() + 1, figures + 48);
        shortTag(tiff, 0x0112, orientation);
        tag(tiff, 0x8825, 4, 1, gps);
        tiff.putInt(0).putShort((short) 4);
        tag(tiff, 1, 2, 2, 'S' << 24);
        tag(tiff, 2, 5, 3, figures);
        tag(tiff, 3, 2, 2, 'W' << 24);
        tag(tiff, 4, 5, 3, figures + 24);
        tiff.putInt(0);
        for (int figure : new int[] {48, 30, 0, 123, 24, 0}) {
            tiff.putInt(figure).putInt(1);
        }
        tiff.put((MODEL + "\0").getBytes(StandardCharsets.US_ASCII));
        return tiff.array();
    }

    private static void shortTag(ByteBuffer tiff, int name, int value) {
        tag(tiff, name, 3, 1, value << 16);
    }

    private static void tag(ByteBuffer tiff, int name, int type, int count, int value) {
        tiff.putShort((short) name).putShort((short) type).putInt(count).putInt(value);
    }
}
