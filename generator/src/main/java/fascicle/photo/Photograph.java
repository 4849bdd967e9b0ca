package fascicle.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A photograph's file, read whole.
 *
 * @param hash SHA-256 of its content, as hexadecimal digits
 * @param negative the picture in it
 */
record Photograph(String hash, Negative negative) {

    /** The most bytes of a file that is read: a few times what the largest camera pictures have. */
    private static final long MOST_BYTES = 150_000_000;

    static Photograph read(Path file) throws UnreadablePhotograph, IOException {
        if (Files.isDirectory(file)) {
            throw new UnreadablePhotograph("is a folder; name a picture in it");
        }
        long size = Files.size(file);
        if (size > MOST_BYTES) {
            throw new UnreadablePhotograph("has " + size / 1_000_000 + " megabytes, more than the "
                    + MOST_BYTES / 1_000_000 + " that are read; " + FileKind.SAVE_AS_JPEG);
        }
        byte[] content = Files.readAllBytes(file);
        return new Photograph(hash(content), Negative.of(content));
    }

    Picture picture() {
        return new Picture(hash, negative.uprightWidth(), negative.uprightHeight());
    }

    static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
