package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a folder holds, a call ends with a plain sentence that says what to do, and without half a book. */
class BadNotebookTest {

    private static final String DAY = "days/2026-05-09/";
    private static final String POT = "---\nneedles: {lot: scalded-2025, weight: 45 g}\n---\n";

    @TempDir
    private Path folder;
    private Path notebook;
    private Path book;
    private WrittenNotebook written;

    @BeforeEach
    void write() {
        notebook = folder.resolve("notebook");
        book = folder.resolve("book");
        written = WrittenNotebook.small(notebook).with(DAY + "good.md", POT);
    }

    /** Checks that the only error of a file says this, that there is no book of it, and one of the rest. */
    private void oneError(String place, String... words) throws IOException {
        Call proof = Call.of("proof", notebook).ends(1);
        List<String> errors = proof.out().lines().filter(line -> line.contains(": error: ")).toList();
        assertEquals(1, errors.size(), proof.out());
        assertTrue(errors.get(0).startsWith(place), errors.get(0));
        for (String word : words) {
            assertTrue(errors.get(0).contains(word), errors.get(0));
        }
        Call.of("publish", notebook, "--to", book).ends(1).says("No book was written");
        assertFalse(Files.exists(book));
        Call.of("publish", notebook, "--to", book, "--despite-errors").ends(0);
        assertTrue(Files.exists(book.resolve("entries/2026-05-09-good.html")));
    }

    /** Checks that without a cover nothing is made, whatever the maker insists on. */
    private void noCover(String... words) {
        var before = Call.tree(folder);
        Call.of("proof", notebook).ends(1).prints("notebook.yaml:").prints(words);
        Call.of("publish", notebook, "--to", book).ends(1).says("No book was written");
        Call.of("publish", notebook, "--to", book, "--despite-errors").ends(1).says("until its notebook.yaml is mended");
        Call.of("jot", notebook).ends(1).says("until its notebook.yaml is mended").says(words);
        Call.of("scale", notebook, "low-water-simmer", "--needles", "5 g").ends(1).says(words);
        assertEquals(before, Call.tree(folder));
    }

    @Test
    void aFolderThatIsNotThere() {
        Path none = folder.resolve("none");
        for (Call call : everyCommand(none)) {
            call.ends(2).says("There is no folder “" + none + "”; name the folder of your notebook", "fascicle begin");
            assertEquals(1, call.words().size());
        }
        assertFalse(Files.exists(none) || Files.exists(book));
    }

    @Test
    void aFile() {
        Path file = notebook.resolve("notebook.yaml");
        for (Call call : everyCommand(file)) {
            call.ends(2).says("“" + file + "” is a file; name the folder that holds your notebook.");
        }
    }

    private List<Call> everyCommand(Path what) {
        return List.of(Call.of("proof", what), Call.of("jot", what), Call.of("publish", what, "--to", book),
                Call.of("scale", what, "41", "--needles", "5 g"));
    }

    @Test
    void anEmptyFolder() throws IOException {
        notebook = Files.createDirectory(folder.resolve("empty"));
        noCover("this file is missing, so this is no notebook yet", "fascicle begin");
    }

    @Test
    void aFolderThatMayNotBeRead() {
        assertTrue(notebook.toFile().setReadable(false));
        assumeFalse(Files.isReadable(notebook), "someone who may read everything");
        Call.of("proof", notebook).ends(3).says("may not be read", "give yourself the right");
    }

    @Test
    void aNotebookWhoseCoverCannotBeRead() throws IOException {
        written.with("notebook.yaml", "form: 1\ntitle: \"never closed\n");
        noCover("quotation mark");
        written.with("notebook.yaml", "form: 2\n");
        noCover("newer than form 1", "use a newer Fascicle");
        written.with("notebook.yaml", new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        noCover("UTF-8");
        Files.delete(notebook.resolve("notebook.yaml"));
        noCover("this file is missing");
        Files.createDirectory(notebook.resolve("notebook.yaml"));
        noCover("no plain file");
    }

    @Test
    void aCoverThatCannotBeReadIsTheOnlyErrorThoughTheMakersConditionsStoodInIt() throws IOException {
        written.with("needles/smoked.md", "---\ncondition: smoked\n---\n").with("notebook.yaml", "form: 1\ntitle: [\n");
        Call proof = Call.of("proof", notebook).ends(1);
        assertEquals(1, proof.out().lines().count(), proof.out());
    }

    @Test
    void anEntryOfFiftyMegabytes() throws IOException {
        try (var file = Files.newByteChannel(Files.createFile(notebook.resolve(DAY + "big.md")),
                java.nio.file.StandardOpenOption.WRITE)) {
            file.position(50_000_000).write(java.nio.ByteBuffer.wrap(new byte[] {'x'}));
        }
        oneError(DAY + "big.md:1:1", "50 MB", "split it");
    }

    @Test
    void anEntryOfNothingAtAll() throws IOException {
        written.with(DAY + "nothing.md", "");
        oneError(DAY + "nothing.md:1:1", "this file is empty", "---");
    }

    @Test
    void binaryGarbage() throws IOException {
        byte[] garbage = new byte[5000];
        new Random(7).nextBytes(garbage);
        written.with(DAY + "garbage.md", garbage);
        oneError(DAY + "garbage.md:", "is not UTF-8 text", "save it again");
    }

    @Test
    void anotherEncoding() throws IOException {
        written.with(DAY + "wide.md", POT.getBytes(StandardCharsets.UTF_16));
        oneError(DAY + "wide.md:1:1", "is not UTF-8 text", "save it again with the encoding UTF-8");
    }

    @Test
    void nulsAlone() throws IOException {
        written.with(DAY + "nuls.md", new byte[4000]);
        oneError(DAY + "nuls.md:1:1", "the keys are missing");
    }

    @Test
    void aNulInATitle() throws IOException {
        written.with(DAY + "nul.md", "---\ntitle: a\0b\n---\n");
        oneError(DAY + "nul.md:2:", "control character", "take it out");
    }

    @Test
    void aMillionAliases() {
        written.with(DAY + "aliases.md", "---\ntitle: &a x\nfaults: [" + "*a,".repeat(600_000) + "*a]\n---\n");
        Assertions.assertTimeout(Duration.ofMinutes(1), () -> {
            Call proof = Call.of("proof", notebook).ends(1).prints("write the value out");
            assertTrue(proof.out().lines().count() < 110, "as many lines as " + proof.out().lines().count());
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- "})
    void nestingWithoutEnd(String opening) throws IOException {
        written.with(DAY + "deep.md", "---\ntitle: \n  " + opening.repeat(100_000) + "\n---\n");
        oneError(DAY + "deep.md:", "nested too deeply");
    }

    @Test
    void nestingWithoutEndInTheBody() {
        written.with(DAY + "deep.md", POT + ">".repeat(50_000) + "\n\n" + "- ".repeat(50_000) + "\n\n"
                + "[".repeat(50_000) + "\n\n" + "*a_".repeat(20_000) + "\n");
        Assertions.assertTimeout(Duration.ofMinutes(1),
                () -> Call.of("publish", notebook, "--to", book).ends(0));
    }

    @Test
    void vesselsThatCannotBeReadWhileEntriesUseThem() throws IOException {
        written.with("vessels.yaml", "wide-pan: {shape: oval\n").with(DAY + "good.md",
                "---\nneedles: {lot: scalded-2025, weight: 45 g}\nmethod: low-water-simmer\n---\n");
        oneError("vessels.yaml:", "close it");
    }

    @Test
    void linksThatLeaveTheNotebook() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.md"), POT.replace("---\n", "---\ntitle: Secret\n"));
        Files.createSymbolicLink(notebook.resolve(DAY + "out.md"), secret);
        oneError(DAY + "out.md:1:1", "is a link that leaves the notebook", "put the file itself here");
        assertFalse(Call.tree(book).toString().contains("Secret"));
    }

    @Test
    void aLinkToNothingAndALinkToItself() throws IOException {
        Path link = Files.createSymbolicLink(notebook.resolve(DAY + "gone.md"), Path.of("nothing"));
        oneError(DAY + "gone.md:1:1", "a link");
        Files.delete(link);
        Files.createSymbolicLink(notebook.resolve(DAY + "loop.md"), Path.of("loop.md"));
        Call.of("proof", notebook).ends(1).prints(DAY + "loop.md:1:1: error: ");
    }

    @Test
    void aFolderOfEntriesThatLeavesTheNotebook() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.writeString(other.resolve("secret.md"), POT);
        Files.createSymbolicLink(notebook.resolve("days/2026-05-10"), other);
        oneError("days/2026-05-10:1:1", "this folder is a link that leaves the notebook", "put the folder itself here");
    }

    @Test
    void aPhotographOutsideTheNotebook() throws IOException {
        Files.write(folder.resolve("secret.jpg"), new byte[10]);
        written.with(DAY + "photo.md", POT.replace("---\nneedles", "---\ncolour: [{photo: {file: ../../../secret.jpg, "
                + "needles: [1, 2, 3, 4], card: {at: [1, 2, 3, 4], grey: 18}}}]\nneedles"));
        oneError(DAY + "photo.md:2:", "lies outside the notebook", "put it beside the entry");
    }

    @Test
    void aPipeAmongTheEntriesIsNotWaitedFor() throws Exception {
        Path pipe = notebook.resolve(DAY + "pipe.md");
        try {
            assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
        } catch (IOException noSuchProgram) {
            assumeTrue(false, "a system with named pipes");
        }
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(30),
                () -> Call.of("proof", notebook).ends(1).prints("pipe.md:1:1: error: this is no plain file"));
    }

    @Test
    void aTitleOfThreeHundredLetters() {
        written.with(DAY + "long.md", POT.replace("---\nneedles", "---\ntitle: " + "Rust ".repeat(60) + "\nneedles"))
                .with(DAY + "n".repeat(200) + ".md", POT);
        Call.of("publish", notebook, "--to", book).ends(0).says("3 entries");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pine 🌲 tree", "אורן", "two words", "it's", "$HOME", "a;b&c", "index", "con"})
    void aNameOfUnusualLettersHasAPage(String name) {
        written.with(DAY + name + ".md", POT);
        Call.of("publish", notebook, "--to", book).ends(0).says("2 entries");
        Call.of("scale", notebook, "2026-05-09-" + name, "--needles", "90 g").ends(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"100%", "a#b", "say \"pine\"", "a<b>", "what?", "back\\slash", "dot.", "new\nline"})
    void aNameThatNoPageCanHaveIsAnError(String name) throws IOException {
        try {
            written.with(DAY + name + ".md", POT);
        } catch (java.nio.file.InvalidPathException | java.io.UncheckedIOException noSuchFile) {
            assumeFalse(true, "a system without such names");
        }
        oneError(DAY + name.replace('\n', '\uFFFD') + ".md:", "cannot name a page", "use letters, digits and hyphens");
    }

    @Test
    void idsThatDifferOnlyInCaseOrInHowAnAccentIsWritten() throws IOException {
        String composed = Normalizer.normalize("café", Normalizer.Form.NFC);
        String apart = Normalizer.normalize("café", Normalizer.Form.NFD);
        written.with(DAY + composed + ".md", POT).with(DAY + apart + ".md", POT);
        assumeFalse(Files.isSameFile(notebook.resolve(DAY + composed + ".md"), notebook.resolve(DAY + apart + ".md")));
        oneError(DAY, "is used twice", "rename one of them");
        Files.delete(notebook.resolve(DAY + apart + ".md"));
        written.with("dyes/BRICK.md", "---\nkind: dye\n---\n");
        assumeFalse(Files.isSameFile(notebook.resolve("dyes/BRICK.md"), notebook.resolve("dyes/brick.md")));
        Call.of("proof", notebook).ends(1).prints("dyes/brick.md:1:1: error: the id “brick” is used twice");
    }

    @Test
    void aNotebookWithoutEntriesOrWithoutAnythingStillMakesABook() throws IOException {
        Files.delete(notebook.resolve(DAY + "good.md"));
        Call.of("publish", notebook, "--to", book).ends(0).says("0 entries");
        Path bare = WrittenNotebook.empty(folder.resolve("bare")).with("notebook.yaml", "form: 1\n").folder();
        Call.of("publish", bare, "--to", folder.resolve("bare-book")).ends(0).says("0 entries");
        assertTrue(Files.exists(folder.resolve("bare-book/index.html")));
        Call.of("jot", bare).ends(0);
        Call.of("publish", bare, "--to", folder.resolve("bare-book")).ends(0).says("1 entry");
    }
}
