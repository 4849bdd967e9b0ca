package fascicle.cli;

import java.nio.file.Path;

/** Writes a path so that it can be copied into a call. */
final class CommandLinePath {

    private CommandLinePath() {}

    /** The path, in quotes where a shell would take it apart. */
    static String of(Path path) {
        String text = path.toString();
        if (text.startsWith("-")) {
            text = "./" + text;
        }
        if (text.matches("[\\p{L}\\p{N}._/\\\\:+@%,-]+")) {
            return text;
        }
        return text.matches("[^\"$`!]*") ? "\"" + text + "\"" : "'" + text.replace("'", "'\\''") + "'";
    }
}
