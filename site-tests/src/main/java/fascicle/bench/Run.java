package fascicle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One whole process, from its start to its end.
 *
 * @param seconds on the clock on the wall
 * @param peakKb  the most memory it held, in KiB; 0 where this machine does not tell
 */
record Run(double seconds, long peakKb) {

    private static final Path TIME = Path.of("/usr/bin/time");

    /**
     * Runs a command and waits for it.
     *
     * @param command the command
     * @param scratch a folder for what it says
     * @throws Failed if it ends with anything but 0
     */
    static Run of(List<String> command, Path scratch) throws IOException, InterruptedException, Failed {
        Path said = scratch.resolve("said.txt");
        Path peak = scratch.resolve("peak.txt");
        Files.deleteIfExists(peak);
        List<String> timed = new ArrayList<>();
        if (System.getProperty("os.name").equals("Linux") && Files.isExecutable(TIME)) {
            timed.addAll(List.of(TIME.toString(), "-f", "%M", "-o", peak.toString()));
        }
        timed.addAll(command);
        ProcessBuilder builder = new ProcessBuilder(timed).redirectErrorStream(true).redirectOutput(said.toFile());
        long before = System.nanoTime();
        int status = builder.start().waitFor();
        double seconds = (System.nanoTime() - before) / 1e9;
        if (status != 0) {
            List<String> lines = Files.readAllLines(said);
            throw new Failed("ended with " + status + ": " + String.join(" | ", lines.subList(0, Math.min(3, lines.size()))));
        }
        return new Run(seconds, peak(peak));
    }

    private static long peak(Path file) throws IOException {
        String text = Files.exists(file) ? Files.readString(file).strip() : "";
        return text.matches("[0-9]+") ? Long.parseLong(text) : 0;
    }

    /** A command that did not do its work. */
    static final class Failed extends Exception {
        Failed(String message) {
            super(message);
        }
    }
}
