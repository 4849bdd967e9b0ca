package fascicle.colour;

import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An 8-bit sRGB colour (IEC 61966-2-1:1999), as screens and style sheets write it.
 *
 * @param red from 0 to 255
 * @param green from 0 to 255
 * @param blue from 0 to 255
 */
public record Rgb(int red, int green, int blue) {

    private static final Pattern WRITTEN = Pattern.compile("#?([0-9a-fA-F]{3}|[0-9a-fA-F]{6})");

    /**
     * An 8-bit sRGB colour.
     *
     * @throws IllegalArgumentException if a channel lies outside 0 to 255
     */
    public Rgb {
        if (!isChannel(red) || !isChannel(green) || !isChannel(blue)) {
            throw new IllegalArgumentException("not 8-bit sRGB: " + red + ", " + green + ", " + blue);
        }
    }

    /**
     * Reads {@code #7f4632}, {@code 7f4632} or the short {@code #abc} (for {@code #aabbcc}), in any case.
     *
     * @return the colour, or empty where the text is not one
     */
    public static Optional<Rgb> read(String text) {
        if (!WRITTEN.matcher(text).matches()) {
            return Optional.empty();
        }
        int digits = HexFormat.fromHexDigits(text.startsWith("#") ? text.substring(1) : text);
        return Optional.of(
                text.length() <= 4
                        ? new Rgb(17 * (digits >> 8), 17 * (digits >> 4 & 15), 17 * (digits & 15))
                        : new Rgb(digits >> 16, digits >> 8 & 255, digits & 255));
    }

    /** The six digits in lower case after a hash: {@code #7f4632}. */
    public String hex() {
        return "#" + HexFormat.of().formatHex(new byte[] {(byte) red, (byte) green, (byte) blue});
    }

    /** The colour in Lab under D50. */
    public Lab toLab() {
        return LinearRgb.of(this).toLab();
    }

    private static boolean isChannel(int value) {
        return value >= 0 && value <= 255;
    }
}
