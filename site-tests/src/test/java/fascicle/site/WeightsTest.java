package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The book is light enough for an old phone: bytes on the disk, nothing packed. */
class WeightsTest {

    private static final long FIRST_PAGE = 150_000;
    private static final long ENTRY = 60_000;
    private static final long SCRIPTS = 40_000;

    private final PublishedBook book = PublishedBook.ofTheDemo();

    @Test
    void the_first_page_and_all_that_it_loads() {
        long bytes = loaded("index.html", "link[rel=stylesheet], [src]");
        assertTrue(bytes > 1000 && bytes < FIRST_PAGE, "bytes: " + bytes);
    }

    @Test
    void every_entrys_page_without_its_photographs() {
        List<String> heavy = book.entries().stream()
                .map(book::addressOf)
                .filter(address -> loaded(address, "link[rel=stylesheet], script[src]") >= ENTRY)
                .toList();
        assertEquals(List.of(), heavy);
    }

    @Test
    void all_scripts_together() {
        long bytes = book.files().stream()
                .filter(address -> address.endsWith(".js") && !address.startsWith("data/"))
                .mapToLong(address -> size(book.file(address)))
                .sum();
        assertTrue(bytes < SCRIPTS, "bytes: " + bytes);
    }

    /** A page, the files that it loads, and those that its style loads. */
    private long loaded(String address, String what) {
        Path page = book.file(address);
        return size(page) + book.page(address).select(what).stream()
                .map(element -> page.resolveSibling(element.hasAttr("src") ? element.attr("src") : element.attr("href")))
                .flatMap(file -> Stream.concat(Stream.of(file), named(file)))
                .map(Path::normalize)
                .distinct()
                .mapToLong(WeightsTest::size)
                .sum();
    }

    private Stream<Path> named(Path file) {
        if (!file.toString().endsWith(".css")) {
            return Stream.empty();
        }
        String style = book.text(book.folder().relativize(file.normalize()).toString());
        return Pattern.compile("url\\(\"([^\"]+)\"\\)").matcher(style).results()
                .map(found -> file.resolveSibling(found.group(1)));
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
