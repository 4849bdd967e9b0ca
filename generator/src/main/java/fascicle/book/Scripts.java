package fascicle.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The pages' scripts, which come with the program and are published as they are. */
final class Scripts {

    private Scripts() {}

    /**
     * A script.
     *
     * @param name its file name, such as {@code look-up.js}
     * @return its bytes
     * @throws IllegalArgumentException if no such script comes with the program
     */
    static byte[] bytes(String name) {
        try (InputStream file = Scripts.class.getResourceAsStream("/fascicle/book/scripts/" + name)) {
            if (file == null) {
                throw new IllegalArgumentException("no such script comes with the program: " + name);
            }
            return file.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException("a script cannot be read: " + name, failed);
        }
    }
}
