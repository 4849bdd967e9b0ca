package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** What the maker keeps private is in no byte of a book for others. */
class EditionsTest {

    private static final Set<String> STUDIO_KEYS = Set.of("cost", "kept", "left", "left_g");
    private static final Pattern KEY = Pattern.compile("\"([a-z_0-9]+)\":");
    private static final Pattern USED_IN = Pattern.compile("in: *([^},]+)[},]");
    private static final Pattern TAG_ON_A_PAGE = Pattern.compile("\\btag (\\w+)");

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void an_edition_holds_exactly_the_entries_that_are_shared_with_it(Edition edition) {
        List<String> expected = studioEntries(entry -> edition.shows(share(entry)));
        assertEquals(expected, PublishedBook.ofTheDemo(edition).entries());
        assertFalse(expected.isEmpty());
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "STUDIO")
    void a_private_entrys_id_and_title_are_nowhere(Edition edition) {
        Map<String, String> book = bytesAndNames(edition);
        List<JsonNode> hidden = PublishedBook.ofTheDemo().data().required("entries").valueStream()
                .filter(entry -> !edition.shows(share(entry)))
                .toList();
        Set<String> shownTitles = PublishedBook.ofTheDemo(edition).data().required("entries").valueStream()
                .map(entry -> plain(entry.required("title").asString()))
                .collect(Collectors.toSet());
        assertTrue(hidden.size() > 20, "the demo keeps entries from the edition " + edition.word());
        assertAll(hidden.stream().flatMap(entry -> Stream.of("id", "title")
                .map(key -> plain(entry.required(key).asString()))
                .filter(words -> !shownTitles.contains(words))
                .map(words -> () -> assertNowhere(words, book))));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "STUDIO")
    void a_private_entrys_tag_is_nowhere(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        Set<String> shown = book.data().required("entries").valueStream()
                .map(entry -> entry.required("tag").asString(""))
                .collect(Collectors.toSet());
        book.pages().forEach(address -> TAG_ON_A_PAGE
                .matcher(plain(book.page(address).text()))
                .results()
                .map(match -> match.group(1))
                .filter(tag -> tag.chars().allMatch(Character::isDigit))
                .forEach(tag -> assertTrue(shown.contains(tag), address + ": tag " + tag)));
    }

    @ParameterizedTest
    @EnumSource
    void the_makers_words_are_where_they_are_shared_and_nowhere_else(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        String pages = book.pages().stream()
                .map(address -> Source.plain(book.page(address).text()))
                .collect(Collectors.joining("\n"));
        String bytes = String.join("\n", bytesAndNames(edition).values());
        List<Source.Words> all = Source.demo().stream().flatMap(source -> source.words().stream()).toList();
        Set<String> shared = all.stream()
                .filter(words -> edition.shows(words.share()))
                .map(Source.Words::words)
                .collect(Collectors.toSet());
        assertTrue(shared.size() > 50 && shared.size() <= all.size(), "stretches: " + shared.size());
        assertAll(all.stream().map(words -> () -> {
            if (shared.contains(words.words())) {
                assertTrue(pages.contains(words.words()), words + " is missing");
            } else {
                assertFalse(pages.contains(words.words()) || bytes.contains(words.words()), words + " is shown");
            }
        }));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "STUDIO")
    void what_is_kept_left_and_paid_is_the_makers_alone(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        assertEquals(Set.of(), keys(book.text("data/book.json"), STUDIO_KEYS::contains));
        assertEquals(STUDIO_KEYS, keys(PublishedBook.ofTheDemo().text("data/book.json"), STUDIO_KEYS::contains));
        String columns = book.text("data/entries.csv").lines().findFirst().orElse("");
        assertFalse(columns.contains("kept") || columns.contains("left") || columns.contains("cost"), columns);
        String sources = Source.demo().stream()
                .flatMap(source -> source.words().stream())
                .filter(words -> edition.shows(words.share()))
                .map(Source.Words::words)
                .collect(Collectors.joining("\n"));
        Map<String, String> bytes = bytesAndNames(edition);
        Set<String> uses = Source.demo().stream()
                .flatMap(source -> source.frontMatter().stream())
                .filter(line -> line.contains("used:"))
                .flatMap(line -> USED_IN.matcher(line).results())
                .map(match -> plain(match.group(1).strip()))
                .filter(use -> !sources.contains(use))
                .collect(Collectors.toSet());
        assertTrue(uses.size() > 5, "the demo tells what needles went into");
        assertAll(uses.stream().map(use -> () -> assertNowhere(use, bytes)));
        assertAll(book.pages().stream().map(address -> () -> assertEquals(
                List.of(),
                book.page(address).select("dt").eachText().stream()
                        .filter(label -> label.matches("Kept.*|Used.*|.* left|Price.*|Bought|Cost.*"))
                        .filter(label -> !label.matches("Used again.*|Bath left over"))
                        .toList(),
                address)));
    }

    @Test
    void the_book_without_the_makers_own_dye_days_is_the_same_book() throws IOException {
        Path notebook = folder.resolve("notebook");
        Set<String> privateDays = Source.demo().stream()
                .filter(source -> source.path().startsWith("days/") && source.share() == Edition.STUDIO)
                .filter(source -> source.lines().stream().noneMatch(line -> line.contains("share:")))
                .map(Source::path)
                .collect(Collectors.toSet());
        assertTrue(privateDays.size() > 10, "the demo has private dye days");
        copy(Checkout.root().resolve("content"), notebook, path -> !privateDays.contains(path));
        for (Edition edition : List.of(Edition.STUDENTS, Edition.OPEN)) {
            PublishedBook cut = PublishedBook.publish(
                    notebook, folder.resolve("book"), "--edition", edition.word(), "--despite-errors");
            assertSame(PublishedBook.ofTheDemo(edition), cut);
        }
    }

    @ParameterizedTest
    @EnumSource
    void publishing_again_changes_no_byte(Edition edition) throws IOException {
        Path again = folder.resolve("again");
        PublishedBook first = PublishedBook.ofTheDemo(edition);
        copy(first.folder(), again, path -> true);
        Run run = Program.run("publish", "content", "--to", again.toString(), "--edition", edition.word());
        assertEquals(0, run.status(), run.words());
        assertSame(first, new PublishedBook(again));
    }

    @ParameterizedTest
    @EnumSource
    void a_book_of_another_edition_is_not_overwritten(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        Map<String, String> before = book.digests();
        for (Edition other : Edition.values()) {
            if (other != edition) {
                Run run = Program.run(
                        "publish", "content", "--to", book.folder().toString(), "--edition", other.word());
                assertEquals(2, run.status(), run.words());
                assertTrue(run.words().contains(edition.word()), run.words());
            }
        }
        assertEquals(before, book.digests());
    }

    private static void assertSame(PublishedBook expected, PublishedBook actual) {
        Map<String, String> differing = new TreeMap<>(expected.digests());
        actual.digests().forEach((address, digest) -> {
            if (!differing.remove(address, digest)) {
                differing.put(address, "differs, or is in one of the two alone");
            }
        });
        assertEquals(Map.of(), differing);
    }

    private static void assertNowhere(String words, Map<String, String> book) {
        Pattern whole = Pattern.compile("(?<![\\p{L}\\p{N}-])" + Pattern.quote(words) + "(?![\\p{L}\\p{N}-])");
        book.forEach((address, text) -> assertFalse(whole.matcher(text).find(), words + " is in " + address));
    }

    /** Every file but the theme's face and the pictures: its name and all its bytes, in lower case, read as UTF-8. */
    private static Map<String, String> bytesAndNames(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        return book.files().stream().filter(file -> !file.endsWith(".woff2") && !file.endsWith(".jpg")).collect(Collectors.toMap(
                address -> address, address -> plain(address + "\n" + book.text(address).replace("&#39;", "'"))));
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static Set<String> keys(String json, Predicate<String> asked) {
        return KEY.matcher(json).results().map((MatchResult key) -> key.group(1)).filter(asked)
                .collect(Collectors.toSet());
    }

    private static List<String> studioEntries(Predicate<JsonNode> asked) {
        return PublishedBook.ofTheDemo().data().required("entries").valueStream()
                .filter(asked)
                .map(entry -> entry.required("id").asString())
                .toList();
    }

    private static Edition share(JsonNode entry) {
        return Edition.of(entry.required("share").asString());
    }

    private static void copy(Path from, Path to, Predicate<String> wanted) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String path = from.relativize(file).toString().replace('\\', '/');
                if (wanted.test(path)) {
                    Path copy = to.resolve(path);
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        }
    }
}
