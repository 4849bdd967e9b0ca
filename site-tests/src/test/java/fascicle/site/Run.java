package fascicle.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A finished run of a program.
 *
 * @param status its exit status
 * @param output what it wrote to standard output, read as UTF-8
 * @param words what it wrote to standard error, read as UTF-8
 */
record Run(int status, String output, String words) {

    /** Runs a command in a folder and waits for its end, for at most five minutes. */
    static Run of(Path folder, List<String> command) {
        return of(folder, Map.of(), command);
    }

    /** The same with changed environment variables; one set to an empty text is taken away. */
    static Run of(Path folder, Map<String, String> environment, List<String> command) {
        return start(folder, environment, command).await();
    }

    /** Starts a command and does not wait for it. */
    static Started start(Path folder, Map<String, String> environment, List<String> command) {
        try {
            Path output = Files.createTempFile("output", ".txt");
            Path words = Files.createTempFile("words", ".txt");
            ProcessBuilder builder = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectOutput(output.toFile())
                    .redirectError(words.toFile());
            environment.forEach((name, value) -> {
                if (value.isEmpty()) {
                    builder.environment().remove(name);
                } else {
                    builder.environment().put(name, value);
                }
            });
            return new Started(builder.start(), output, words);
        } catch (IOException problem) {
            throw new UncheckedIOException("Cannot start " + command, problem);
        }
    }

    /** A program under way, and the files that take what it writes. */
    record Started(Process process, Path output, Path words) {

        Run await() {
            try {
                process.getOutputStream().close();
                if (!process.waitFor(5, TimeUnit.MINUTES)) {
                    process.destroyForcibly();
                    throw new IllegalStateException("Not done after five minutes: " + process.info());
                }
                Run run = new Run(process.exitValue(), text(output), text(words));
                Files.delete(output);
                Files.delete(words);
                return run;
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            } catch (InterruptedException stop) {
                process.destroyForcibly();
                throw new IllegalStateException("Interrupted", stop);
            }
        }

        private static String text(Path file) throws IOException {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        }
    }
}
