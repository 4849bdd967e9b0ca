package fascicle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.notebook.Edition;
import fascicle.workings.Workings;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the pages of the sample say, word for word and in reading order, whatever they look like. Where a page differs,
 * what it says now is laid in {@code target/golden} to be read and, if it is right, taken over.
 */
class GoldenPagesTest {

    private static final String SAYING = "h1, h2, h3, h4, dt, dd, caption, th, td, p, .caution li, .notes li, "
            + ".doors li, .specimens li, .samples li, .string li, figcaption, svg > title";

    @ParameterizedTest
    @CsvSource({"index.html, STUDIO, index", "index.html, OPEN, index-open", "entries/2026-05-09-brick.html, STUDIO, entry",
        "entries/2026-05-20-gold.html, STUDIO, entry-of-which-little-is-known", "days/2026-05-20.html, STUDIO, day",
        "methods/low-water-simmer.html, STUDIO, method", "lots/scalded-2025.html, STUDIO, lot",
        "dyes/brick.html, STUDIO, dye", "families/brown.html, OPEN, family", "about.html, OPEN, about",
        "look-up.html, STUDIO, look-up",
        "shelf.html, STUDIO, shelf", "grid.html, STUDIO, grid", "ladders.html, STUDIO, ladders", "repeats.html, STUDIO, repeats",
        "string.html, STUDIO, string", "string-by-year.html, OPEN, string-by-year"})
    void aPageSaysWhatItSaid(String address, Edition edition, String name) throws Exception {
        Book book = Book.of(Workings.of(SampleNotebook.notebook()), edition, Theme.shipped("longleaf"), Gallery.EMPTY);
        String page = new String(book.bytes(address), StandardCharsets.UTF_8);
        String said = Jsoup.parse(page).select("main").select(SAYING).stream()
                .map(GoldenPagesTest::line).collect(Collectors.joining());
        String golden = "";
        try (InputStream file = GoldenPagesTest.class.getResourceAsStream("golden/" + name + ".txt")) {
            golden = file == null ? "" : new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
        if (!golden.equals(said)) {
            Path now = Files.createDirectories(Path.of("target/golden")).resolve(name + ".txt");
            Files.writeString(now, said);
        }
        assertEquals(golden, said);
    }

    private static String line(Element element) {
        return element.normalName() + ": " + element.text() + "\n";
    }
}
