package fascicle.photo;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Colour profiles of a display, written by ICC.1:2022: three primaries and one curve. */
final class ColourProfile {

    /** The white to which a profile's colours are adapted (ICC.1:2022, 7.2.16). */
    private static final double[] WHITE = {0.9642, 1, 0.8249};

    private ColourProfile() {}

    /** Version 4, the curve as a formula, as phones write it. */
    static byte[] withFormula(RgbSpace space) {
        return profile(4, space, curve -> {
            curve.writeBytes("para\0\0\0\0");
            curve.writeShort(3);
            curve.writeShort(0);
            for (double parameter : new double[] {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045}) {
                curve.writeInt(fixed(parameter));
            }
        });
    }

    /** Version 2, the curve as a table, as older programs write it. */
    static byte[] withTable(RgbSpace space) {
        return profile(2, space, curve -> {
            curve.writeBytes("curv\0\0\0\0");
            curve.writeInt(1024);
            for (int i = 0; i < 1024; i++) {
                curve.writeShort((int) StrictMath.round(65535 * RgbSpace.decode(i / 1023.0)));
            }
        });
    }

    private interface Writing {
        void on(DataOutputStream out) throws IOException;
    }

    private record Tag(String name, byte[] content) {}

    private static byte[] profile(int version, RgbSpace space, Writing curve) {
        double[][] colorants = Square.times(Square.adaptation(RgbSpace.white(), WHITE), space.toXyz());
        byte[] curveContent = written(curve);
        List<Tag> tags = new ArrayList<>();
        tags.add(new Tag("desc", version == 4 ? localised("Drawn " + space) : described("Drawn " + space)));
        tags.add(new Tag("cprt",
                version == 4 ? localised("None") : written(out -> out.writeBytes("text\0\0\0\0None\0"))));
        tags.add(new Tag("wtpt", xyz(WHITE)));
        tags.add(new Tag("rXYZ", xyz(column(colorants, 0))));
        tags.add(new Tag("gXYZ", xyz(column(colorants, 1))));
        tags.add(new Tag("bXYZ", xyz(column(colorants, 2))));
        tags.add(new Tag("rTRC", curveContent));
        tags.add(new Tag("gTRC", curveContent));
        tags.add(new Tag("bTRC", curveContent));
        return assembled(version, tags);
    }

    private static byte[] assembled(int version, List<Tag> tags) {
        int start = 128 + 4 + 12 * tags.size();
        byte[] directory = written(out -> {
            out.writeInt(tags.size());
            int at = start;
            for (Tag tag : tags) {
                out.writeBytes(tag.name());
                out.writeInt(at);
                out.writeInt(tag.content().length);
                at += tag.content().length + 3 & ~3;
            }
        });
        byte[] contents = written(out -> {
            for (Tag tag : tags) {
                out.write(tag.content());
                out.write(new byte[-tag.content().length & 3]);
            }
        });
        return written(out -> {
            out.write(header(version, 128 + directory.length + contents.length));
            out.write(directory);
            out.write(contents);
        });
    }

    private static byte[] header(int version, int size) {
        ByteBuffer header = ByteBuffer.allocate(128);
        header.putInt(0, size).put(8, (byte) version);
        header.position(12).put("mntrRGB XYZ ".getBytes(StandardCharsets.US_ASCII));
        header.putShort(24, (short) 2026).putShort(26, (short) 1).putShort(28, (short) 1);
        header.position(36).put("acsp".getBytes(StandardCharsets.US_ASCII));
        for (int i = 0; i < 3; i++) {
            header.putInt(68 + 4 * i, fixed(WHITE[i]));
        }
        return header.array();
    }

    private static byte[] xyz(double[] colour) {
        return written(out -> {
            out.writeBytes("XYZ \0\0\0\0");
            for (double value : colour) {
                out.writeInt(fixed(value));
            }
        });
    }

    private static byte[] localised(String words) {
        return written(out -> {
            out.writeBytes("mluc\0\0\0\0");
            out.writeInt(1);
            out.writeInt(12);
            out.writeBytes("enUS");
            out.writeInt(2 * words.length());
            out.writeInt(28);
            out.write(words.getBytes(StandardCharsets.UTF_16BE));
        });
    }

    private static byte[] described(String words) {
        return written(out -> {
            out.writeBytes("desc\0\0\0\0");
            out.writeInt(words.length() + 1);
            out.writeBytes(words + "\0");
            out.write(new byte[4 + 4 + 2 + 1 + 67]);
        });
    }

    private static double[] column(double[][] rows, int j) {
        return new double[] {rows[0][j], rows[1][j], rows[2][j]};
    }

    private static int fixed(double value) {
        return (int) StrictMath.round(65536 * value);
    }

    private static byte[] written(Writing writing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            writing.on(new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
