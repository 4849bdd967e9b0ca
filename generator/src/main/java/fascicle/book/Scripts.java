package fascicle.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The book's own scripts, as they come with the program. */
final class Scripts {

    private Scripts() {}

    /** A script's bytes; its name is that of a resource. */
    static byte[] bytes(String name) {
        try (InputStream file = Scripts.class.getResourceAsStream("scripts/" + name)) {
            if (file == null) {
                throw new IllegalStateException("the program came without its script: " + name);
            }
            return file.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException("the script cannot be read: " + name, failed);
        }
    }
}
