package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A notebook that is begun can be published as it is. */
class BeginTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"studio", "students", "open"})
    void itsBookIsMadeWithoutAFinding(String edition) {
        Path notebook = folder.resolve("my own notebook");
        Call.of("begin", notebook).ends(0);
        assertEquals("Nothing to mend.\n", Call.of("proof", notebook).ends(0).err());
        Path book = folder.resolve("its book");
        Call published = Call.of("publish", notebook, "--to", book, "--edition", edition).ends(0);
        assertEquals(1, published.words().size(), published.err());
        assertTrue(Files.isRegularFile(book.resolve("index.html")));
    }

    @Test
    void itHoldsOneLotOneMethodAndOneEntryOfToday() throws IOException {
        Path notebook = folder.resolve("notebook");
        Call.of("begin", notebook).ends(0);
        Call.of("scale", notebook, LocalDate.now() + "-first-pot", "--needles", "90 g").ends(0).prints("First pot");
        Call.of("scale", notebook, "low-simmer", "--needles", "90 g").ends(0).prints("Low simmer");
        for (String kind : List.of("needles", "methods", "days")) {
            try (var files = Files.list(notebook.resolve(kind))) {
                assertEquals(1, files.count(), kind);
            }
        }
    }

    /** What its method says in words, its clock says by the hour. */
    @Test
    void noDryNeedlesGoOnTheStove() throws IOException {
        Path notebook = folder.resolve("notebook");
        Path book = folder.resolve("book");
        Call.of("begin", notebook).ends(0);
        Call.of("publish", notebook, "--to", book).ends(0);
        var page = Jsoup.parse(Files.readString(book.resolve("methods/low-simmer.html")));
        List<String> steps = page.select(".notes li").eachText();
        List<String> clock = page.select(".by-clock tbody tr").eachText();
        assertEquals(List.of("Soak the needles for an hour.", "Dry them for a day; then rinse them."),
                List.of(steps.get(0), steps.get(4)));
        assertTrue(steps.get(2).contains("within half an hour, and keep it at 85 °C for an hour"), steps.get(2));
        assertTrue(steps.get(3).startsWith("Let it cool in the pan overnight."), steps.get(3));
        assertEquals(List.of("0:00 Needles into the presoak. 1:00", "1:00 Make up the bath. Out of the presoak. Bath on the "
                        + "stove, needles in. Heat to 85\u202f°C. 0:30", "1:30 Hold at 85\u202f°C. 1:00",
                "2:30 Heat off. Leave to cool in the bath. overnight", "next morning Out of the bath. Dry. 1 day",
                "day 3, about 8:00 Rinse. Dry. until dry"), clock);
    }

    @Test
    void theNextCallItNamesMakesABook() throws IOException {
        for (String name : new String[] {"plain", "with space", "-dash", "ünïcode"}) {
            // A name without a folder means the one the tests run in, so the call is made by its way from there.
            Path notebook = relative(folder.resolve(name));
            Call begun = Call.of("begin", "--", notebook).ends(0);
            String[] next = begun.words().get(1).strip().split(" --to ");
            Path written = Path.of(next[1].replace("\"", ""));
            assertEquals(relative(folder.resolve(name + "-book")), written);
            assertEquals(notebook, Path.of(next[0].replace("fascicle publish ", "").replace("\"", "")));
            assertTrue(Call.of("publish", notebook, "--to", written).ends(0).err().contains("1 entry"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/.", "/./", "/../inner"})
    void anEmptyFolderIsTakenHoweverItIsWritten(String ending) throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Call begun = Call.of("begin", inner + ending.replace('/', File.separatorChar)).ends(0);
        assertTrue(begun.err().contains("inner-book"), begun.err());
        assertTrue(Files.exists(inner.resolve("notebook.yaml")));
        String book = begun.words().get(1).split(" --to ")[1].replace("\"", "");
        Call.of("publish", inner, "--to", book).ends(0);
    }

    @Test
    void namesThatAShellWouldTakeApartStandInQuotes() {
        assertEquals("plain/notebook", CommandLinePath.of(Path.of("plain", "notebook")).replace('\\', '/'));
        assertEquals("\"two words\"", CommandLinePath.of(Path.of("two words")));
        assertEquals("\"~pine\"", CommandLinePath.of(Path.of("~pine")));
        assertEquals("./-dash", CommandLinePath.of(Path.of("-dash")));
        assumeTrue(File.separatorChar == '/', "names that only some systems allow");
        assertEquals("'say \"pine\"'", CommandLinePath.of(Path.of("say \"pine\"")));
        assertEquals("'the maker'\\''s $5'", CommandLinePath.of(Path.of("the maker's $5")));
    }

    @Test
    void nothingThatIsThereIsTouched() throws IOException {
        Path notebook = folder.resolve("notebook");
        Call.of("begin", notebook).ends(0);
        var before = Call.tree(folder);
        Call.of("begin", notebook).ends(2).says("holds something already", "name a new folder");
        Call.of("begin", notebook.resolve("needles").resolve("..")).ends(2).says("holds something already");
        Call.of("begin", notebook.resolve("notebook.yaml")).ends(2).says("is no folder", "name a new folder");
        Call.of("begin", notebook.resolve("notebook.yaml").resolve("in")).ends(2).says("is no folder");
        Call.of("begin", "").ends(2).says("name is empty");
        assertEquals(before, Call.tree(folder));
    }

    @Test
    void aLinkThatLeadsToNothingIsNoFolder() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("nothing"));
        Call.of("begin", link).ends(2).says("is no folder");
        assertFalse(Files.exists(folder.resolve("nothing")));
    }

    private static Path relative(Path path) throws IOException {
        Path here = Path.of("").toRealPath();
        Path parent = path.getParent().toRealPath();
        assumeTrue(here.getRoot().equals(parent.getRoot()), "both on one disk");
        return here.relativize(parent).resolve(path.getFileName());
    }
}
