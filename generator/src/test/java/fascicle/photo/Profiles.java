package fascicle.photo;

import static fascicle.photo.Pictures.joined;
import static fascicle.photo.Pictures.number;
import static fascicle.photo.Pictures.text;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/** ICC profiles made from published primaries, by the layout of ICC.1:2022. */
final class Profiles {

    /** Columns of Display P3 under D50 as phones write them (common practice, no source): 0.5151 0.2920 0.1571 … */
    private static final double[][] P3 = {
        {0.51512, 0.24120, -0.00105}, {0.29198, 0.69225, 0.04189}, {0.15710, 0.06657, 0.78407}
    };

    /** Columns of Adobe RGB (1998) under D50, its section 4.3.5.3, from memory. */
    private static final double[][] ADOBE = {
        {0.60974, 0.31111, 0.01947}, {0.20528, 0.62567, 0.06087}, {0.14919, 0.06322, 0.74457}
    };

    /** IEC 61966-2-1 as parameters of function type 3. */
    private static final double[] SRGB_CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

    private Profiles() {}

    /** Version 4, parametric curves. */
    static byte[] displayP3() {
        return profile(4, P3, parametric(3, SRGB_CURVE));
    }

    /** Version 2, an exponent with 8 binary places. */
    static byte[] adobeRgb() {
        return profile(2, ADOBE, joined(text("curv"), number(0), number(1), new byte[] {2, 0x33}));
    }

    /** Display P3 by a table of so many values, as version 2 writes curves. */
    static byte[] displayP3ByTable(int values) {
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        for (int i = 0; i < values; i++) {
            double x = (double) i / (values - 1);
            long y = Math.round(65535 * (x <= 0.04045 ? x / 12.92 : StrictMath.pow((x + 0.055) / 1.055, 2.4)));
            table.write((int) (y >> 8));
            table.write((int) y);
        }
        return profile(2, P3, joined(text("curv"), number(0), number(values), table.toByteArray()));
    }

    static byte[] parametric(int type, double... parameters) {
        byte[] curve = joined(text("para"), number(0), number(type << 16));
        for (double parameter : parameters) {
            curve = joined(curve, fixed(parameter));
        }
        return curve;
    }

    static byte[] withCurve(byte[] curve) {
        return profile(4, P3, curve);
    }

    private static byte[] profile(int version, double[][] colorants, byte[] curve) {
        List<String> names = List.of("rXYZ", "gXYZ", "bXYZ", "wtpt", "rTRC", "gTRC", "bTRC");
        List<byte[]> contents = new ArrayList<>();
        for (double[] colorant : colorants) {
            contents.add(xyz(colorant));
        }
        contents.add(xyz(new double[] {0.9642, 1, 0.8249}));
        contents.addAll(List.of(curve, curve, curve));
        byte[] tags = number(names.size());
        byte[] data = new byte[0];
        for (int i = 0; i < names.size(); i++) {
            int at = 128 + 4 + 12 * names.size() + data.length;
            tags = joined(tags, text(names.get(i)), number(at), number(contents.get(i).length));
            data = joined(data, contents.get(i), new byte[(4 - contents.get(i).length % 4) % 4]);
        }
        byte[] header = joined(number(128 + tags.length + data.length), new byte[4], new byte[] {(byte) version, 0, 0, 0}, text("mntrRGB XYZ "), new byte[12],
                text("acsp"), new byte[88]);
        return joined(header, tags, data);
    }

    private static byte[] xyz(double[] value) {
        return joined(text("XYZ "), number(0), fixed(value[0]), fixed(value[1]), fixed(value[2]));
    }

    private static byte[] fixed(double value) {
        return number((int) Math.round(65536 * value));
    }
}
