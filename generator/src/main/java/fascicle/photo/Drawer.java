package fascicle.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;

/**
 * A folder of small files, each kept under the hash of what it answers. Several programs may share it: a file appears
 * whole or not at all, and one that is damaged or not ours counts as absent. What cannot be kept is not kept, and
 * nothing fails for it.
 */
final class Drawer {

    private static final byte[] OURS = "fascicle photo 1\n".getBytes(StandardCharsets.US_ASCII);
    private static final int HASH_DIGITS = 64;

    private final Path folder;

    Drawer(Path folder) {
        this.folder = folder;
    }

    /** What was kept for a question. */
    Optional<byte[]> find(String question) {
        try {
            byte[] kept = Files.readAllBytes(fileFor(question));
            int head = StrictMath.min(kept.length, OURS.length + HASH_DIGITS);
            byte[] answer = Arrays.copyOfRange(kept, head, kept.length);
            return Arrays.equals(kept, sealed(question, answer)) ? Optional.of(answer) : Optional.empty();
        } catch (IOException | RuntimeException absent) {
            return Optional.empty();
        }
    }

    /** Keeps an answer, if the folder lets it. */
    void keep(String question, byte[] answer) {
        try {
            Files.createDirectories(folder);
            Path unfinished = Files.createTempFile(folder, "unfinished", null);
            try {
                Files.write(unfinished, sealed(question, answer));
                Files.move(unfinished, fileFor(question), StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(unfinished);
            }
        } catch (IOException | RuntimeException notKept) {
            // The next reading takes as long as this one; that is all.
        }
    }

    /** Our mark, a hash of question and answer, and the answer. */
    private static byte[] sealed(String question, byte[] answer) {
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        both.writeBytes(question.getBytes(StandardCharsets.UTF_8));
        both.write('\n');
        both.writeBytes(answer);
        ByteArrayOutputStream sealed = new ByteArrayOutputStream();
        sealed.writeBytes(OURS);
        sealed.writeBytes(Photograph.hash(both.toByteArray()).getBytes(StandardCharsets.US_ASCII));
        sealed.writeBytes(answer);
        return sealed.toByteArray();
    }

    private Path fileFor(String question) {
        return folder.resolve(Photograph.hash(question.getBytes(StandardCharsets.UTF_8)));
    }
}
