package fascicle.book.theme;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files that a style names by {@code url("…")}: faces and pictures that lie beside it and are published with it.
 */
final class StyleFiles {

    private static final Pattern NAMED = Pattern.compile("url\\(([^)]*)\\)|@import");
    private static final Pattern BESIDE = Pattern.compile("\"([A-Za-z0-9_-]+\\.(?:woff2|svg|png))\"");

    private static final Pattern NOT_NEEDED = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^[ \\t]+|(?<=\n)\n+");

    /** What is quoted stays; space about signs that part rules, and after a colon, goes. */
    private static final Pattern SPACE = Pattern.compile("(\"[^\"]*\"|'[^']*')|\\s*([{};,>])\\s*|(?<=[\\w-])(:)\\s+");

    private StyleFiles() {}

    /** A style as the book publishes it: without comments and needless space, since every page carries it. */
    static byte[] lean(byte[] style) {
        String text = NOT_NEEDED.matcher(new String(style, StandardCharsets.UTF_8)).replaceAll("");
        return SPACE.matcher(text.strip()).replaceAll("$1$2$3").replace(";}", "}").concat("\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * A file that a style names.
     *
     * @param file its name
     * @param line the line that names it, from 1
     * @param column the column, from 1
     */
    record Named(String file, int line, int column) {

        /** The fault of a style that names a file which is not there. */
        ThemeBroken.Fault missing(String style) {
            return new ThemeBroken.Fault(style, line, column, "found url(\"" + file
                    + "\"), expected a file of this name in the theme");
        }
    }

    /**
     * The files that a style needs. A style that names anything but a file beside it is at fault: a book carries all
     * that it shows.
     *
     * @param file the style's own name
     * @param style its bytes
     * @param faults takes what is wrong
     * @return what it names, in order
     */
    static List<Named> of(String file, byte[] style, List<ThemeBroken.Fault> faults) {
        String text = new String(style, StandardCharsets.UTF_8);
        List<Named> files = new ArrayList<>();
        Matcher named = NAMED.matcher(text);
        while (named.find()) {
            int line = 1 + (int) text.substring(0, named.start()).chars().filter(letter -> letter == '\n').count();
            int column = named.start() - text.lastIndexOf('\n', named.start() - 1);
            Matcher beside = BESIDE.matcher(named.group(1) == null ? "" : named.group(1));
            if (beside.matches()) {
                files.add(new Named(beside.group(1), line, column));
            } else {
                faults.add(new ThemeBroken.Fault(file, line, column, "found “" + named.group() + "”, expected "
                        + "url(\"NAME\") with the name of a .woff2, .svg or .png file that lies beside the style"));
            }
        }
        return files;
    }
}
