package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Photographs in the book: seen from disk at every width, what was read outlined, nothing told of where they were taken. */
class PhotographsTest {

    private static final String MOSS = "entries/2026-07-04-moss.html";

    private final PublishedBook book = PublishedBook.ofTheDemo();

    private List<Path> copies(PublishedBook of) throws IOException {
        Path folder = of.folder().resolve("pictures");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Test
    void what_was_read_is_outlined_where_it_lies_on_a_phone_and_on_a_laptop() {
        try (Browser browser = Browser.open(Browser.PHONE)) {
            for (int width : List.of(Browser.PHONE, Browser.LAPTOP)) {
                browser.width(width).show(book.folder().resolve(MOSS));
                assertEquals(List.of(), browser.complaints());
                browser.script("document.querySelector('.photograph img').loading = 'eager'; "
                        + "document.querySelector('.photograph').scrollIntoView(); return 1");
                browser.script("return document.querySelector('.photograph img').decode().then(() => 1)");
                List<?> found = (List<?>) browser.script("""
                        const image = document.querySelector('.photograph img');
                        const whole = image.getBoundingClientRect();
                        const area = name => {
                          const at = document.querySelector(name).getBoundingClientRect();
                          return [100 * (at.x - whole.x) / whole.width, 100 * (at.y - whole.y) / whole.height];
                        };
                        return [image.naturalWidth, ...area('.read-needles:not(.under)'), ...area('.read-card:not(.under)')];
                        """);
                double[] at = found.stream().mapToDouble(number -> ((Number) number).doubleValue()).toArray();
                assertTrue(at[0] > 0, "the picture is seen");
                assertEquals(28, at[1], 0.5);
                assertEquals(30, at[2], 0.5);
                assertEquals(77.5, at[3], 0.5);
                assertEquals(75, at[4], 0.5);
                assertEquals(0, browser.sidewaysScroll());
                browser.screenshot("photograph-" + width);
            }
            assertEquals(List.of(), browser.complaints());
        }
    }

    @Test
    void every_picture_has_its_words_its_size_and_all_its_copies() {
        List<Executable> checks = new ArrayList<>();
        for (String address : book.pages()) {
            for (Element image : book.page(address).select("img")) {
                Path page = book.folder().resolve(address).getParent();
                checks.add(() -> assertFalse(image.attr("alt").isBlank(), address));
                checks.add(() -> assertTrue(image.attr("width").matches("\\d+") && image.attr("height").matches("\\d+")));
                for (String source : image.attr("srcset").split(", ")) {
                    checks.add(() -> assertTrue(Files.exists(page.resolve(source.split(" ")[0])), address + source));
                }
            }
        }
        assertFalse(checks.isEmpty());
        assertAll(checks);
    }

    /** One picture of the demonstration notebook tells a place in the open sea, and the make of what took it. */
    @Test
    void no_copy_tells_where_when_or_with_what_it_was_taken() throws IOException {
        Path original = Checkout.root().resolve("content/days/2026-07-04/moss.jpg");
        assertTrue(letters(original).contains("Exif"), "the maker's own picture does tell");
        List<Executable> checks = new ArrayList<>();
        for (Path copy : copies(book)) {
            for (String trace : List.of("Exif", "ICC_PROFILE", "http", "Adobe", "drawn")) {
                checks.add(() -> assertFalse(letters(copy).contains(trace), copy + " " + trace));
            }
        }
        assertFalse(checks.isEmpty());
        assertAll(checks);
    }

    @Test
    void an_edition_holds_the_pictures_of_its_own_pages_and_no_other() throws IOException {
        for (Edition edition : Edition.values()) {
            PublishedBook of = PublishedBook.ofTheDemo(edition);
            TreeSet<String> shown = new TreeSet<>();
            for (String address : of.pages()) {
                of.page(address).select("img").forEach(image -> Stream.of(image.attr("srcset").split(", "))
                        .forEach(source -> shown.add(source.split(" ")[0].replaceFirst("^(\\.\\./)?pictures/", ""))));
            }
            TreeSet<String> held = new TreeSet<>();
            copies(of).forEach(copy -> held.add(copy.getFileName().toString()));
            assertEquals(shown, held, edition.word());
        }
    }

    private static String letters(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    }
}
