package fascicle.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** The book's own scripts, as they come with the program. */
final class Scripts {

    /** Space before the lines of a script, which no line needs: a phone by the stove loads them. */
    private static final Pattern LEADING = Pattern.compile("(?m)^[ \\t]+");

    private Scripts() {}

    /** A script's bytes; its name is that of a resource. */
    static byte[] bytes(String name) {
        try (InputStream file = Scripts.class.getResourceAsStream("scripts/" + name)) {
            if (file == null) {
                throw new IllegalStateException("the program came without its script: " + name);
            }
            return LEADING.matcher(new String(file.readAllBytes(), StandardCharsets.UTF_8)).replaceAll("")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException("the script cannot be read: " + name, failed);
        }
    }
}
