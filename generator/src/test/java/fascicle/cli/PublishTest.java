package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book is written whole, or not at all. */
class PublishTest {

    private static final String SHOWN = "share: open\nneedles: {lot: scalded-2025, weight: 45 g}\n"
            + "bath: {water: 3 L, dye: [{is: brick, amount: 1 % owf}]}\ncolour: [{hex: \"#7f4632\"}]\n";

    @TempDir
    private Path folder;
    private WrittenNotebook written;
    private Path notebook;
    private Path book;

    @BeforeEach
    void write() {
        notebook = folder.resolve("note book");
        book = folder.resolve("deep").resolve("book");
        written = WrittenNotebook.small(notebook).with("days/2026-05-09/good.md", "---\n" + SHOWN + "---\n");
    }

    private Call publish(Object... options) {
        Object[] call = new Object[options.length + 4];
        System.arraycopy(new Object[] {"publish", notebook, "--to", book}, 0, call, 0, 4);
        System.arraycopy(options, 0, call, 4, options.length);
        return Call.of(call);
    }

    private void faulty() {
        written.with("days/2026-05-09/shared.md", "---\n" + SHOWN + "fastness: {rub-dry: 9}\n---\n")
                .with("days/2026-05-09/secret.md", "---\nneedles: {lot: nowhere}\n---\n")
                .with("days/2026-05-09/torn.md", "---\ntitle: \"torn\nshare: open\n---\n");
    }

    @Test
    void aPipeGetsOneLineForPeopleAndTheWayToTheBook() {
        Call first = publish().ends(0).says("The studio edition: 1 entry, ", " written, 0 as they were, 0 removed)");
        assertEquals(1, first.words().size(), first.err());
        assertEquals(book.resolve("index.html") + "\n", first.out());
        assertFalse(first.err().contains("\r"));
    }

    @Test
    void aSecondRunSaysThatNothingChangedAndLeavesTheFilesAsOldAsTheyWere() throws IOException {
        publish().ends(0);
        var before = Call.tree(folder);
        var age = Files.getLastModifiedTime(book.resolve("index.html"));
        publish().ends(0).says("(nothing changed)");
        assertEquals(before, Call.tree(folder));
        assertEquals(age, Files.getLastModifiedTime(book.resolve("index.html")));
        written.with("days/2026-05-09/good.md", "---\ntitle: New\n" + SHOWN + "---\n");
        publish().ends(0).says(" as they were, ");
    }

    @Test
    void aNotebookWithErrorsIsRefusedAndNothingIsWritten() {
        faulty();
        var before = Call.tree(folder);
        Call refused = publish().ends(1).says("days/2026-05-09/secret.md:2:16: error: “nowhere”", "No book was written",
                "--despite-errors");
        assertEquals("", refused.out());
        assertEquals(before, Call.tree(folder));
    }

    @Test
    void anOlderBookStaysWhenTheNotebookHasErrors() {
        publish().ends(0);
        var before = Call.tree(book);
        faulty();
        publish().ends(1);
        assertEquals(before, Call.tree(book));
    }

    @Test
    void despiteErrorsTheFirstPageOfTheStudioNamesWhatIsMissingAndWhy() throws IOException {
        faulty();
        publish("--despite-errors").ends(0).says("1 entry (3 left out because of errors)");
        String first = Files.readString(book.resolve("index.html"));
        for (String word : new String[] {"2026-05-09-shared", "2026-05-09-secret", "2026-05-09-torn", "nowhere", "rub-dry"}) {
            assertTrue(first.contains(word), word);
        }
        assertTrue(Files.exists(book.resolve("entries/2026-05-09-good.html")));
        assertFalse(Files.exists(book.resolve("entries/2026-05-09-secret.html")));
    }

    @Test
    void despiteErrorsALowerEditionNamesOnlyWhatItWouldHaveShown() throws IOException {
        faulty();
        for (String edition : new String[] {"students", "open"}) {
            book = folder.resolve(edition);
            publish("--despite-errors", "--edition", edition).ends(0).says("(1 left out because of errors)");
            String first = Files.readString(book.resolve("index.html"));
            assertTrue(first.contains("2026-05-09-shared"));
            for (String hidden : new String[] {"secret", "torn", "nowhere", "rub-dry"}) {
                assertFalse(first.contains(hidden), hidden);
            }
        }
    }

    @Test
    void theFollowersOfAFaultyMethodAreLeftOutSayingSoAndOthersStay() throws IOException {
        written.with("days/2026-05-09/follower.md", "---\nmethod: low-water-simmer\n" + SHOWN + "---\n")
                .with("methods/child.md", "---\nmethod: low-water-simmer\n---\n")
                .with("methods/apart.md", "---\nfor: 50 g\nbath: {ratio: 60}\n---\n")
                .with("methods/low-water-simmer.md", "---\nfor: 50 g\nbath: {ratio: lots}\n---\n");
        Call errors = Call.of("proof", notebook).ends(1);
        assertEquals(1, errors.out().lines().filter(line -> line.contains(": error: ")).count(), errors.out());
        publish("--despite-errors").ends(0).says("1 entry (1 left out because of errors)");
        String first = Files.readString(book.resolve("index.html"));
        assertTrue(first.contains("2026-05-09-follower") && first.contains("it follows the method low-water-simmer, which has errors"),
                first);
        assertEquals(Set.of("apart.html"), names(book.resolve("methods")));
        assertEquals(Set.of("2026-05-09-good.html"), names(book.resolve("entries")));
    }

    /** A bath that was used before is no fresh one because what was in it cannot be read. */
    @ParameterizedTest
    @ValueSource(strings = {"studio", "open"})
    void aBathOfAFaultyEntryIsOneOfWhichNothingIsKnown(String edition) throws IOException {
        String needles = "share: open\nneedles: {lot: scalded-2025, weight: 45 g}\n";
        written.with("days/2026-05-09/odd.md", "---\n" + needles + "bath: {wter: 1 L}\n---\n")
                .with("days/2026-05-10/again.md", "---\n" + needles + "bath: {reuses: 2026-05-09-odd, water: 1 L, "
                        + "assistants: [{is: white-vinegar, amount: 30 mL}]}\n---\n");
        publish("--despite-errors", "--edition", edition).ends(0);
        String page = Jsoup.parse(book.resolve("entries/2026-05-10-again.html")).text();
        assertTrue(page.contains("Uses the bath of 2026-05-09-odd"), page);
        assertTrue(page.contains("What stands in this bath from before is not known here: take it for dye, acid and"), page);
        assertTrue(page.contains("pH, estimated not known: the entry whose bath it was is not in this book"), page);
        String data = Files.readString(book.resolve("data/book.json"));
        assertTrue(data.contains("\"reuses\":\"2026-05-09-odd\",\"standing\":{\"liquor_ml\":null"), data);
    }

    private static Set<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return Set.copyOf(files.map(file -> file.getFileName().toString()).toList());
        }
    }

    @Test
    void anEditionIsNamedInAnyCase() {
        publish("--edition", "OPEN").ends(0).says("The open edition");
    }

    @Test
    void anotherEditionsBookIsNotReplaced() {
        publish().ends(0);
        var before = Call.tree(folder);
        publish("--edition", "open").ends(2).says("“" + book + "”", "“studio”", "“open”", "choose another folder");
        assertEquals(before, Call.tree(folder));
    }

    @Test
    void aThemeThatDoesNotComeWithTheProgramIsNamed() {
        for (String name : new String[] {"other", "../longleaf", "Long leaf"}) {
            written.with("notebook.yaml", "form: 1\ntheme: " + name + "\n");
            publish().ends(1).says("“" + name + "”", "write “theme: longleaf”", "--theme");
        }
        assertFalse(Files.exists(book.getParent()));
        publish("--theme", Path.of("..", "themes", "longleaf")).ends(0);
    }

    @Test
    void aTargetThatIsNotForTheBookIsLeftAsItIs() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        Path foreign = Files.createDirectory(folder.resolve("foreign"));
        Files.writeString(foreign.resolve("mine.txt"), "mine");
        var before = Call.tree(folder);
        refused(file, "is a file");
        refused(file.resolve("below"), "is a file");
        refused(notebook, "is the notebook itself");
        refused(notebook.resolve("book"), "lies in the notebook");
        refused(notebook.resolve("days"), "lies in the notebook");
        refused(folder, "contains the notebook");
        refused(foreign, "mine.txt");
        assertEquals(before, Call.tree(folder));
    }

    private void refused(Path target, String why) {
        Call.of("publish", notebook, "--to", target).ends(2).says("“" + target + "”", why, "; choose ");
    }

    @Test
    void onlyThePathThatWasTypedIsSaid() throws IOException {
        Path here = Path.of("").toRealPath();
        Path typed = here.relativize(folder.toRealPath()).resolve("note book");
        faulty();
        String given = typed.getParent().toString();
        String inside = folder.toRealPath().toString();
        for (Call call : new Call[] {Call.of("publish", typed, "--to", typed), Call.of("proof", typed),
            Call.of("publish", typed, "--to", typed, "--despite-errors"), Call.of("proof", typed + "!"),
            Call.of("publish", typed, "--despite-errors", "--to", typed.resolveSibling("fine")),
            Call.of("begin", typed), Call.of("jot", typed), Call.of("scale", typed, "?", "--needles", "5 g")}) {
            assertFalse(call.said().replace(given, "").contains(inside), call.toString());
        }
    }
}
