package fascicle.photo;

import java.io.ByteArrayOutputStream;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The segments of a JPEG file (ITU-T T.81, annex B): what they say, and the picture without those that are not picture.
 *
 * <p>Only the bare picture is decoded, so that no decoder turns its colours by a profile in a way of its own, stumbles
 * over damaged Exif, or takes half a picture for a whole one.
 */
final class JpegFile {

    private static final int START_OF_SCAN = 0xda;
    private static final int END_OF_IMAGE = 0xd9;
    private static final int QUANTISATION = 0xdb;

    /** APP0 of JFIF 1.1, without a thumbnail: three components are YCbCr. */
    private static final byte[] JFIF =
            {(byte) 0xff, (byte) 0xe0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0};

    /** APP14 that says that the components are RGB. */
    private static final byte[] NO_TRANSFORM =
            {(byte) 0xff, (byte) 0xee, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 0};

    /** Sum of the luminance table that T.81 prints in annex K.1: the common quality of 50. */
    private static final int COARSE = 3688;

    private final Bytes file;
    private final ByteArrayOutputStream tables = new ByteArrayOutputStream();
    private final Map<Integer, Bytes> profileParts = new TreeMap<>();
    private Orientation orientation = Orientation.UPRIGHT;
    private boolean oriented;
    private boolean jfif;
    private int transform = -1;
    private int quantisation;
    private Optional<Frame> frame = Optional.empty();

    JpegFile(byte[] content) {
        file = new Bytes(content);
    }

    /** What the header of a frame says. */
    private record Frame(int width, int height, String components) {

        boolean rgbByName() {
            return components.equals("RGB");
        }
    }

    Negative read() throws UnreadablePhotograph {
        try {
            int at = 2;
            while (true) {
                int marker = markerAt(at);
                if (marker == END_OF_IMAGE) {
                    break;
                }
                int end = at + 2 + lengthAt(at);
                heed(marker, at, end);
                if (marker == START_OF_SCAN) {
                    end = endOfScan(end);
                }
                if (isPicture(marker)) {
                    tables.write(file.content(), at, end - at);
                }
                at = nextMarker(end);
            }
            return negative(frame.orElseThrow(Negative::damaged));
        } catch (Bytes.CutOff beyond) {
            throw Negative.cutOff();
        }
    }

    private Negative negative(Frame found) {
        Profile profile = profileParts.isEmpty() ? Profile.SRGB : Profile.ofIcc(joined());
        return new Negative(FileKind.JPEG, found.width, found.height, found.components.length() == 3, orientation,
                profile, quantisation > COARSE, bare(found));
    }

    /** The rule by which common decoders tell RGB from YCbCr: JFIF, then the transform, then the components' names. */
    private byte[] bare(Frame found) {
        boolean rgb = !jfif && (transform == 0 || (transform < 0 && found.rgbByName()));
        ByteArrayOutputStream bare = new ByteArrayOutputStream(tables.size() + JFIF.length + 4);
        bare.write(0xff);
        bare.write(0xd8);
        bare.writeBytes(rgb && found.components.length() == 3 ? NO_TRANSFORM : JFIF);
        bare.writeBytes(tables.toByteArray());
        bare.write(0xff);
        bare.write(END_OF_IMAGE);
        return bare.toByteArray();
    }

    private void heed(int marker, int at, int end) throws Bytes.CutOff, UnreadablePhotograph {
        Bytes segment = file.part(at + 4, end - at - 4);
        switch (marker) {
            case 0xc0, 0xc1, 0xc2 -> frame = Optional.of(frame(segment));
            case 0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf, 0xf7 -> throw new UnreadablePhotograph(
                    "is a JPEG of a rare kind (lossless or with arithmetic coding); save it as an ordinary JPEG");
            case QUANTISATION -> quantisation = StrictMath.max(quantisation, sumOfFirst(segment));
            case 0xe0 -> jfif |= starts(segment, "JFIF\0");
            case 0xe1 -> heedExif(segment);
            case 0xe2 -> heedProfile(segment);
            case 0xee -> {
                if (starts(segment, "Adobe") && segment.length() >= 12) {
                    transform = segment.at(11);
                }
            }
            default -> { }
        }
    }

    private static Frame frame(Bytes segment) throws Bytes.CutOff, UnreadablePhotograph {
        int height = segment.shortAt(1);
        int width = segment.shortAt(3);
        Negative.checkSize(width, height);
        StringBuilder components = new StringBuilder();
        for (int i = 0; i < segment.at(5); i++) {
            components.append((char) segment.at(6 + 3 * i));
        }
        if (components.length() == 4) {
            throw new UnreadablePhotograph(
                    "is a JPEG in the four inks of a printing press (CMYK); save it as JPEG in RGB");
        }
        if (segment.at(0) != 8 || (components.length() != 3 && components.length() != 1)) {
            throw new UnreadablePhotograph("is a JPEG of a rare kind; save it as an ordinary JPEG with 8 bits in RGB");
        }
        return new Frame(width, height, components.toString());
    }

    /** Exif counts once, where it stands first. */
    private void heedExif(Bytes segment) throws Bytes.CutOff {
        if (!oriented && starts(segment, "Exif\0\0")) {
            oriented = true;
            orientation = ExifOrientation.in(segment.part(6, segment.length() - 6));
        }
    }

    /** A profile comes in numbered parts (ICC.1:2022, annex B.4). */
    private void heedProfile(Bytes segment) throws Bytes.CutOff {
        if (starts(segment, "ICC_PROFILE\0") && segment.length() > 14) {
            profileParts.put(segment.at(12), segment.part(14, segment.length() - 14));
        }
    }

    private byte[] joined() {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        profileParts.values().forEach(part -> whole.writeBytes(part.content()));
        return whole.toByteArray();
    }

    /** The sum of a segment's first table, if that is the first of the file, which serves the luminance. */
    private static int sumOfFirst(Bytes segment) throws Bytes.CutOff {
        int bytes = segment.at(0) >> 4 == 0 ? 1 : 2;
        if ((segment.at(0) & 15) != 0) {
            return 0;
        }
        int sum = 0;
        for (int i = 0; i < 64; i++) {
            sum += bytes == 1 ? segment.at(1 + i) : segment.shortAt(1 + 2 * i);
        }
        return sum;
    }

    private int markerAt(int at) throws Bytes.CutOff, UnreadablePhotograph {
        int marker = file.at(at + 1);
        if (file.at(at) != 0xff || marker == 0) {
            throw Negative.damaged();
        }
        return marker;
    }

    private int lengthAt(int at) throws Bytes.CutOff, UnreadablePhotograph {
        int length = file.shortAt(at + 2);
        if (length < 2) {
            throw Negative.damaged();
        }
        return length;
    }

    /** Any number of fill bytes may stand before a marker. */
    private int nextMarker(int at) throws Bytes.CutOff {
        int next = at;
        while (file.at(next) == 0xff && file.at(next + 1) == 0xff) {
            next++;
        }
        return next;
    }

    /** Coded data ends at the first marker that is neither a stuffed byte nor a restart. */
    private int endOfScan(int from) throws Bytes.CutOff {
        int at = from;
        while (true) {
            if (file.at(at) == 0xff) {
                int next = file.at(at + 1);
                if (next != 0 && next != 0xff && (next < 0xd0 || next > 0xd7)) {
                    return at;
                }
            }
            at++;
        }
    }

    /** Frames, scans, tables and restart intervals; neither applications' segments nor comments. */
    private static boolean isPicture(int marker) {
        return marker >= 0xc0 && marker <= 0xdf;
    }

    private static boolean starts(Bytes segment, String signature) throws Bytes.CutOff {
        return segment.length() >= signature.length()
                && segment.textAt(0, signature.length()).equals(signature);
    }
}
