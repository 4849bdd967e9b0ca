package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * A call of the program that has ended, as its caller saw it. Whatever was asked, no call may show its insides.
 *
 * @param status the exit status
 * @param out the data
 * @param err the words for people
 */
record Call(int status, String out, String err) {

    /** Runs a call where nobody watches. */
    static Call of(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), false);
        int status = Fascicle.run(terminal, Stream.of(arguments).map(Object::toString).toArray(String[]::new));
        terminal.flush();
        Call call = new Call(status, out.toString(), err.toString());
        for (String inside : List.of("\tat ", "Exception", "java.", "picocli", "fascicle.cli", "STUDIO", "\u001B")) {
            assertFalse(call.said().contains(inside), () -> "“" + inside + "” in: " + call);
        }
        return call;
    }

    /** A terminal that nobody watches and nobody reads. */
    static Terminal silent() {
        return new Terminal(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), false);
    }

    /** Everything it said. */
    String said() {
        return out + err;
    }

    /** The lines for people. */
    List<String> words() {
        return err.lines().toList();
    }

    /** Checks the status. */
    Call ends(int expected) {
        assertEquals(expected, status, toString());
        return this;
    }

    /** Checks that all of this was said to people. */
    Call says(String... words) {
        for (String word : words) {
            assertTrue(err.contains(word), () -> "no “" + word + "” in: " + this);
        }
        return this;
    }

    /** Checks that all of this stands in the data. */
    Call prints(String... words) {
        for (String word : words) {
            assertTrue(out.contains(word), () -> "no “" + word + "” in: " + this);
        }
        return this;
    }

    /** Everything below a folder, each file with its bytes as text: to see that nothing changed. */
    static SortedMap<String, String> tree(Path folder) {
        SortedMap<String, String> tree = new TreeMap<>();
        if (!Files.exists(folder)) {
            return tree;
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.toList()) {
                tree.put(folder.relativize(path).toString().replace('\\', '/'), Files.isRegularFile(path)
                        ? new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1) : "");
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return tree;
    }

    /** Copies the notebook that comes with the program. */
    static Path sample(Path to) throws IOException {
        Path from = Path.of("..", "content");
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
        return to;
    }
}
