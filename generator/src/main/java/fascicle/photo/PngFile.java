package fascicle.photo;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The chunks of a PNG file (W3C, Portable Network Graphics, third edition): what they say, and the picture without
 * those that are not picture.
 */
final class PngFile {

    private static final int SIGNATURE = 8;

    /** Length, type and check of a chunk. */
    private static final int FRAME = 12;

    /** The largest profile that is unpacked; those of cameras and screens are a thousandth of it. */
    private static final int LARGEST_PROFILE = 4_000_000;

    private static final int PALETTE = 3;

    private final Bytes file;
    private final ByteArrayOutputStream bare = new ByteArrayOutputStream();
    private Orientation orientation = Orientation.UPRIGHT;
    private Profile profile = Profile.SRGB;
    private boolean profileKnown;
    private boolean codeKnown;
    private int width;
    private int height;
    private int colourType = -1;
    private boolean pixelsSeen;

    PngFile(byte[] content) {
        file = new Bytes(content);
    }

    Negative read() throws UnreadablePhotograph {
        try {
            bare.write(file.content(), 0, SIGNATURE);
            int at = SIGNATURE;
            String type;
            do {
                int length = file.intAt(at);
                type = file.textAt(at + 4, 4);
                Bytes chunk = file.part(at + 8, length);
                int check = file.intAt(at + 8 + length);
                heed(type, chunk);
                if (isPicture(type)) {
                    check(at + 4, length + 4, check);
                    bare.write(file.content(), at, length + FRAME);
                }
                at += length + FRAME;
            } while (!type.equals("IEND"));
        } catch (Bytes.CutOff beyond) {
            throw Negative.cutOff();
        }
        if (!pixelsSeen) {
            throw Negative.damaged();
        }
        boolean coloured = (colourType & 2) != 0;
        return new Negative(FileKind.PNG, width, height, coloured, orientation, profile, false, bare.toByteArray());
    }

    private void heed(String type, Bytes chunk) throws Bytes.CutOff, UnreadablePhotograph {
        if (colourType < 0 && !type.equals("IHDR")) {
            throw Negative.damaged();
        }
        switch (type) {
            case "IHDR" -> {
                width = chunk.intAt(0);
                height = chunk.intAt(4);
                colourType = chunk.at(9);
                Negative.checkSize(width, height);
            }
            case "IDAT" -> pixelsSeen = true;
            case "eXIf" -> orientation = ExifOrientation.in(chunk);
            case "iCCP" -> {
                if (!codeKnown) {
                    profile = unpacked(chunk);
                    profileKnown = true;
                }
            }
            case "cICP" -> {
                // It outranks every other word on colour; of its many codes those of sRGB alone are read.
                profile = chunk.at(0) == 1 && chunk.at(1) == 13 ? Profile.SRGB : Profile.NOT_UNDERSTOOD;
                profileKnown = true;
                codeKnown = true;
            }
            case "sRGB" -> {
                if (!profileKnown) {
                    profile = Profile.SRGB;
                    profileKnown = true;
                }
            }
            case "gAMA" -> {
                if (!profileKnown) {
                    profile = Profile.ofGamma(chunk.intAt(0));
                }
            }
            default -> { }
        }
    }

    /** A name, a zero, a zero for the only way of packing, and the packed profile. */
    private static Profile unpacked(Bytes chunk) {
        byte[] content = chunk.content();
        int name = 0;
        while (name < content.length && content[name] != 0) {
            name++;
        }
        if (name + 2 >= content.length) {
            return Profile.ofIcc(new byte[0]);
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(content, name + 2, content.length - name - 2);
            byte[] room = new byte[LARGEST_PROFILE];
            return Profile.ofIcc(Arrays.copyOf(room, inflater.inflate(room)));
        } catch (DataFormatException damaged) {
            return Profile.ofIcc(new byte[0]);
        } finally {
            inflater.end();
        }
    }

    private void check(int from, int length, int expected) throws UnreadablePhotograph {
        CRC32 sum = new CRC32();
        sum.update(file.content(), from, length);
        if ((int) sum.getValue() != expected) {
            throw Negative.damaged();
        }
    }

    private boolean isPicture(String type) {
        byte[] letters = type.getBytes(StandardCharsets.ISO_8859_1);
        // Critical chunks begin with a capital; transparency is part of the picture too. A palette that only suggests
        // colours is none.
        return type.equals("PLTE") ? colourType == PALETTE
                : type.equals("tRNS") || (letters[0] >= 'A' && letters[0] <= 'Z');
    }
}
