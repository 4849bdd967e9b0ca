package fascicle.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A book that the program published from a notebook, as files on the disk.
 *
 * @param folder the folder that holds {@code index.html}
 */
public record PublishedBook(Path folder) {

    private static final Map<Edition, PublishedBook> DEMO = new EnumMap<>(Edition.class);

    /** The demo notebook's book, in the maker's own edition; published once, when it is first asked for. */
    public static PublishedBook ofTheDemo() {
        return ofTheDemo(Edition.STUDIO);
    }

    /** The demo notebook's book in an edition; published once, when it is first asked for. */
    static PublishedBook ofTheDemo(Edition edition) {
        return DEMO.computeIfAbsent(edition, chosen -> publish(
                Checkout.root().resolve("content"),
                Checkout.target().resolve("book-" + chosen.word()),
                "--edition",
                chosen.word()));
    }

    /**
     * Publishes a notebook in a process of its own.
     *
     * @param notebook the notebook's folder
     * @param folder where the book goes; what stood there is removed before
     * @param options more of the command's own options, such as {@code --edition students}
     * @throws IllegalStateException if the program ends with another status than 0; with what it said
     */
    public static PublishedBook publish(Path notebook, Path folder, String... options) {
        return publishUnder(List.of(), notebook, folder, options);
    }

    /** The same in a Java that was started with more flags, such as {@code -Duser.language=tr}. */
    static PublishedBook publishUnder(List<String> flags, Path notebook, Path folder, String... options) {
        remove(folder);
        String[] arguments = Stream.concat(
                        Stream.of("publish", notebook.toString(), "--to", folder.toString()), Stream.of(options))
                .toArray(String[]::new);
        Run run = Program.runUnder(flags, arguments);
        if (run.status() != 0) {
            throw new IllegalStateException(
                    "publish " + notebook + " ended with " + run.status() + ":\n" + run.words() + run.output());
        }
        return new PublishedBook(folder);
    }

    /** The file at an address relative to the book's folder. */
    public Path file(String address) {
        return folder.resolve(address);
    }

    /** The addresses of all files, relative to the book's folder, with {@code /}, in order. */
    List<String> files() {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The addresses of all pages, in order. */
    public List<String> pages() {
        return files().stream().filter(address -> address.endsWith(".html")).toList();
    }

    /** A file as text. */
    String text(String address) {
        try {
            return Files.readString(file(address));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Every file and a digest of its bytes: two books are the same where these are. */
    Map<String, String> digests() {
        Map<String, String> digests = new TreeMap<>();
        for (String address : files()) {
            try {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file(address)));
                digests.put(address, HexFormat.of().formatHex(digest));
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            } catch (NoSuchAlgorithmException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        return digests;
    }

    /** A page as a reader without scripts has it. */
    public Document page(String address) {
        try {
            return Jsoup.parse(file(address), "UTF-8", file(address).toUri().toString());
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** What {@code data/book.json} holds. */
    public JsonNode data() {
        return JsonMapper.shared().readTree(file("data/book.json"));
    }

    /** The ids of all entries, in the order of the data. */
    public List<String> entries() {
        return data().required("entries").valueStream()
                .map(entry -> entry.required("id").asString())
                .toList();
    }

    /**
     * The address of an entry's own page: the one page that is named by the entry's id.
     *
     * @throws IllegalStateException if there is none, or more than one
     */
    public String addressOf(String entry) {
        List<String> named = pages().stream()
                .filter(address -> ("/" + address).endsWith("/" + entry + ".html")
                        || ("/" + address).endsWith("/" + entry + "/index.html"))
                .toList();
        if (named.size() != 1) {
            throw new IllegalStateException("Pages of the entry " + entry + ": " + named);
        }
        return named.get(0);
    }

    private static void remove(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
