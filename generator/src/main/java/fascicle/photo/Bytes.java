package fascicle.photo;

import java.io.Serial;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Bytes of a file that may be cut off or damaged: what lies beyond the end is told by an exception of its own. */
record Bytes(byte[] content) {

    /** Something was asked for that lies beyond the end. */
    static final class CutOff extends Exception {

        @Serial
        private static final long serialVersionUID = 1L;

        CutOff() {
            super(null, null, false, false);
        }
    }

    int length() {
        return content.length;
    }

    int at(int index) throws CutOff {
        return content[within(index, 1)] & 0xff;
    }

    /** Two bytes, the higher first. */
    int shortAt(int index) throws CutOff {
        return ByteBuffer.wrap(content).getShort(within(index, 2)) & 0xffff;
    }

    /** Four bytes, the highest first. */
    int intAt(int index) throws CutOff {
        return ByteBuffer.wrap(content).getInt(within(index, 4));
    }

    /** Four bytes as a signed number with sixteen binary places (ICC.1:2022, s15Fixed16Number). */
    double fixedAt(int index) throws CutOff {
        return intAt(index) / 65536.0;
    }

    String textAt(int index, int length) throws CutOff {
        return new String(content, within(index, length), length, StandardCharsets.ISO_8859_1);
    }

    Bytes part(int index, int length) throws CutOff {
        return new Bytes(Arrays.copyOfRange(content, within(index, length), index + length));
    }

    private int within(int index, int length) throws CutOff {
        if (index < 0 || length < 0 || index > content.length - length) {
            throw new CutOff();
        }
        return index;
    }
}
