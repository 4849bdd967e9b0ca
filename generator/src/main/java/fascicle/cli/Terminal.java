package fascicle.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Where a command's data and words go.
 *
 * @param out for data
 * @param err for words to people
 * @param watched whether a person watches, so that progress may be shown
 */
public record Terminal(PrintWriter out, PrintWriter err, boolean watched) {

    /**
     * The process's own streams: in the terminal's encoding where a person watches, else in UTF-8.
     *
     * @return the terminal
     */
    static Terminal ofTheProcess() {
        Console console = System.console();
        Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
        return new Terminal(writer(FileDescriptor.out, charset), writer(FileDescriptor.err, charset),
                console != null);
    }

    private static PrintWriter writer(FileDescriptor descriptor, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), charset), true);
    }

    /** Whether a person watches in colour: not where the terminal is dumb, nor where colour is declined. */
    boolean coloured() {
        String declined = System.getenv("NO_COLOR");
        return watched && (declined == null || declined.isEmpty()) && !"dumb".equals(System.getenv("TERM"));
    }

    /** Prints a line of data. */
    void print(String line) {
        out.print(line + "\n");
    }

    /** Says a line to a person. */
    void say(String line) {
        flush();
        err.print(line + "\n");
        err.flush();
    }

    /** Shows how far a long task is, over the same line each time; silent where nobody watches. */
    void progress(String words) {
        if (watched) {
            err.print("\r\u001B[K" + words);
            err.flush();
        }
    }

    /** Takes the progress line away. */
    void progressDone() {
        progress("");
    }

    /** Sends on what is held back. */
    void flush() {
        out.flush();
        err.flush();
    }
}
