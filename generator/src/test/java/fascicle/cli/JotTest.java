package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Entry;
import fascicle.notebook.Finding;
import fascicle.notebook.Method;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Notebook;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.read.NotebookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An entry that is jotted has gaps to fill in, and never an error. */
class JotTest {

    private static final String MODEL = """
            ---
            title: A title of its own
            tag: 41
            share: open
            method: low-water-simmer
            needles: {lot: scalded-2025, weight: 45 g}
            presoak: {water: 6 L, with: [{is: white-vinegar, amount: about 250 mL}], for: 1 h}
            before: [{as: mordant, water: 3 L, with: [{is: salt, amount: 10 % owf}], heat: [{to: 80 °C, hold: 1 h}]}]
            bath:
              ratio: 60
              dye: [{is: brick, amount: 1.5 % owf, at: 20 min}]
              extract: {of: 200 g, state: dried, water: 3 L, heat: [{to: simmer, hold: 1 h}]}
              ph: 4.1
            heat: [{to: below-simmer, hold: 1 h, on: stove}]
            cool: overnight
            rinse: none
            finish: [{is: salt, amount: ½ tsp}]
            colour: [{lab: [36.2, 27.4, 20.1]}]
            target: {hex: "#8a3b2a"}
            outcome: {verdict: worked, faults: [pale]}
            fastness: {rub-dry: 4-5}
            kept: {weight: 41 g, how: dry}
            ---
            Words of its own.
            """;

    @TempDir
    private Path folder;
    private Path notebook;
    private Path today;

    @BeforeEach
    void write() {
        notebook = WrittenNotebook.small(folder.resolve("note book")).with("days/2026-05-09/model.md", MODEL).folder();
        today = notebook.resolve("days").resolve(LocalDate.now().toString());
    }

    private Path jot(Object... options) {
        List<Object> call = new ArrayList<>(List.of("jot", notebook));
        call.addAll(List.of(options));
        Call done = Call.of(call.toArray()).ends(0);
        assertEquals("", done.err());
        return Path.of(done.out().stripTrailing());
    }

    private void proofsWithoutErrors() throws IOException {
        List<Finding> findings = NotebookFolder.proof(notebook, Call.silent()).findings();
        assertFalse(NotebookFolder.hasErrors(findings), findings.toString());
    }

    @Test
    void theEntryLiesInTheFolderOfToday() throws IOException {
        Path written = jot();
        assertEquals(today.resolve("pot.md"), written);
        String text = Files.readString(written);
        for (String gap : List.of("title:\n", "tag:\n", "method:\n", "  lot:\n", "  weight:\n", "  verdict: ", "# bath:",
                "# colour:")) {
            assertTrue(text.contains(gap), gap + " in " + text);
        }
        proofsWithoutErrors();
    }

    @Test
    void methodAndLotAreFilledIn() throws IOException {
        Path written = jot("--method", "LOW-water-simmer", "--lot", "scalded-2025");
        assertEquals(today.resolve("low-water-simmer.md"), written);
        String text = Files.readString(written);
        assertTrue(text.contains("method: low-water-simmer\n") && text.contains("  lot: scalded-2025\n"), text);
        proofsWithoutErrors();
    }

    @Test
    void theRecipeOfAnotherEntryIsTakenOverAndNothingElseOfIt() throws IOException {
        String text = Files.readString(jot("--like", "2026-05-09-model"));
        for (String own : List.of("A title", "41", "share", "45 g", "36.2", "target", "8a3b2a", "worked\n", "pale",
                "fastness", "kept", "Words", "ph:", "40 g")) {
            assertFalse(text.contains(own), own + " in " + text);
        }
        Notebook read = NotebookReader.read(notebook).notebook();
        Entry model = read.entry("2026-05-09-model").orElseThrow();
        Entry copy = read.entry(LocalDate.now() + "-model").orElseThrow();
        assertEquals(writtenRecipe(model), writtenRecipe(copy));
        proofsWithoutErrors();
    }

    /** A recipe without the places it stands in, and without what was measured. */
    private static String writtenRecipe(Entry entry) {
        return entry.recipe().toString().replaceAll("Place\\[[^]]*\\]|place=[^,\\]]*", "")
                .replaceAll("(days/[^:]*:\\d+:\\d+|file=[^,]*, line=\\d+, column=\\d+)", "")
                .replaceAll("ph=Optional.*?\\], heat=", "heat=").replaceAll("ph=Optional.empty\\], heat=", "heat=");
    }

    @Test
    void severalPotsStandInOneFileEachWithItsGaps() throws IOException {
        Path written = jot("--pots", 3, "--like", "2026-05-09-model");
        assertEquals(today.resolve("pots.md"), written);
        String text = Files.readString(written);
        for (int pot = 1; pot <= 3; pot++) {
            assertTrue(text.contains("  - name: pot-" + pot + "\n") && text.contains("\n## pot-" + pot + "\n"), text);
        }
        assertEquals(4, text.split("weight: ", -1).length, text);
        proofsWithoutErrors();
        assertEquals(4, NotebookReader.read(notebook).notebook().entries().size());
    }

    @Test
    void nothingIsEverOverwrittenAndNoIdUsedTwice() throws IOException {
        for (int time = 1; time <= 3; time++) {
            var before = Call.tree(notebook);
            jot();
            jot("--pots", 2);
            jot("--like", "2026-05-09-model");
            assertEquals(before.size() + (time == 1 ? 4 : 3), Call.tree(notebook).size());
            var after = Call.tree(notebook);
            before.forEach((file, text) -> assertEquals(text, after.get(file), file));
        }
        proofsWithoutErrors();
        assertEquals(1 + 3 * 4, NotebookReader.read(notebook).notebook().entries().size());
        Path taken = jot("--like", LocalDate.now() + "-pot-2");
        assertEquals(today.resolve("pot-2-2.md"), taken);
        proofsWithoutErrors();
    }

    @Test
    void unknownIdsOfferTheNearest() throws IOException {
        var before = Call.tree(notebook);
        Call.of("jot", notebook, "--method", "low-water-simer").ends(2).says("did you mean “low-water-simmer”?");
        Call.of("jot", notebook, "--lot", "scaled-2025").ends(2).says("did you mean “scalded-2025”?");
        Call.of("jot", notebook, "--like", "2026-05-09-modell").ends(2).says("did you mean “2026-05-09-model”?");
        Call.of("jot", notebook, "--lot", "?").ends(2).says("name one of these: scalded-2025.");
        Call.of("jot", notebook, "--like", "?").ends(2).says("its day and its name");
        for (int pots : new int[] {0, -1, 51}) {
            Call.of("jot", notebook, "--pots", pots).ends(2).says("“" + pots + "” is no number of pots; name one");
        }
        assertEquals(before, Call.tree(notebook));
    }

    @Test
    void whatHasErrorsIsNotTakenOver() throws IOException {
        Files.writeString(notebook.resolve("methods/low-water-simmer.md"), "---\nfor: lots\n---\n");
        Call.of("jot", notebook, "--method", "low-water-simmer").ends(2).says("has errors", "mend it first", "lots");
        Call.of("jot", notebook, "--like", "2026-05-09-model").ends(2).says("has errors", "mend it first");
    }

    @Test
    void noFolderIsMadeInWhatIsNoNotebook() throws IOException {
        Path stranger = Files.createDirectory(folder.resolve("stranger"));
        Call.of("jot", stranger).ends(1).says("notebook.yaml");
        assertEquals(1, Call.tree(stranger).size());
    }

    @Test
    void everyEntryMethodAndLotOfTheSampleCanBeJottedAfter() throws IOException {
        Path sample = Call.sample(folder.resolve("sample"));
        Notebook read = NotebookReader.read(sample).notebook();
        Path day = Files.createDirectories(sample.resolve("days").resolve("2026-11-01"));
        int count = 0;
        for (Entry entry : read.entries()) {
            String text = Slip.text(entry.method().map(noted -> noted.value()),
                    entry.needles().lot().map(noted -> noted.value()), Optional.of(entry), List.of("pot"));
            Files.writeString(day.resolve("like-" + count++ + ".md"), text);
        }
        for (Method method : read.methods()) {
            for (NeedleLot lot : read.lots()) {
                Files.writeString(day.resolve("after-" + count + ".md"), Slip.text(Optional.of(method.id()),
                        Optional.of(lot.id()), Optional.empty(), List.of("one-" + count, "two-" + count)));
                count++;
            }
        }
        List<Finding> findings = NotebookFolder.proof(sample, Call.silent()).findings();
        TreeSet<String> errors = new TreeSet<>();
        findings.stream().filter(finding -> finding.level() == Finding.Level.ERROR)
                .forEach(finding -> errors.add(finding.toString()));
        assertEquals(new TreeSet<>(), errors);
        assertTrue(count > 100, "the sample has " + count);
    }
}
