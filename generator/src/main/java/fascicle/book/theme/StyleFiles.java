package fascicle.book.theme;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files that a style names by {@code url("…")}: faces and pictures that lie beside it and are published with it. */
final class StyleFiles {

    private static final Pattern NAMED = Pattern.compile("url\\(([^)]*)\\)|@import");
    private static final Pattern BESIDE = Pattern.compile("\"([A-Za-z0-9_-]+\\.(?:woff2|svg|png))\"");

    private StyleFiles() {}

    /**
     * The names of the files that a style needs.
     *
     * @param file the style's own name
     * @param style its bytes
     * @return names, each with the line that names it first, in order
     * @throws ThemeBroken if it names anything but a file beside it: a book carries all that it shows
     */
    static Map<String, Integer> of(String file, byte[] style) throws ThemeBroken {
        String text = new String(style, StandardCharsets.UTF_8);
        Map<String, Integer> names = new TreeMap<>();
        Matcher named = NAMED.matcher(text);
        while (named.find()) {
            String written = named.group(1) == null ? "" : named.group(1);
            Matcher beside = BESIDE.matcher(written);
            int line = 1 + (int) text.substring(0, named.start()).chars().filter(letter -> letter == '\n').count();
            if (!beside.matches()) {
                throw new ThemeBroken(file, line, "found “" + named.group() + "”, expected url(\"NAME\") with the name "
                        + "of a .woff2, .svg or .png file that lies beside the style");
            }
            names.putIfAbsent(beside.group(1), line);
        }
        return names;
    }
}
