package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.Book;
import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.edition.EditionCut;
import fascicle.workings.Workings;
import fascicle.workings.proof.Proofreading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An edition's book is, byte for byte, the book of the notebook with everything more private taken out by hand. */
class EditionLawTest {

    @TempDir
    private Path folder;

    /** What is written with more to it than the open edition holds, and the same as its maker would cut it by hand. */
    private static WrittenNotebook whole(Path folder) {
        return WrittenNotebook.small(folder)
                .with("dyes/secret.md", "---\ntitle: Secret dye\nkind: dye\n---\nNobody may know.\n")
                .with("dyes/brick.md", """
                        ---
                        title: Brick
                        kind: dye
                        form: powder
                        level-tsp: {weight: 3.1 g, weighed: 10}
                        pack: {holds: 50 g, price: 4.20}
                        bought: [{on: 2025-03-01, packs: 2}]
                        ---
                        Bought on the sly.
                        """)
                .with("needles/stashed.md", "---\ntitle: Stashed lot\ncondition: smoked\n---\n")
                .with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: metric\n"
                        + "conditions: {smoked: Smoked in secret}\n")
                .with("days/2026-05-02/private.md", """
                        ---
                        title: A private pot
                        tag: P707
                        needles: {lot: stashed, weight: 30 g}
                        bath: {water: 2 L, dye: [{is: secret, amount: 3 g}]}
                        colour: [{hex: "#336699"}]
                        outcome: {verdict: worked}
                        ---
                        Words nobody may read.
                        """)
                .with("days/2026-05-09/shown.md", """
                        ---
                        title: A shown pot
                        tag: 41
                        share: open
                        method: low-water-simmer
                        needles: {lot: scalded-2025, weight: 45 g}
                        bath: {reuses: 2026-05-02-private, dye: [{is: brick, amount: 1.5 % owf}]}
                        colour: [{hex: "#7f4632"}, {like: P707, but: redder}]
                        outcome: {verdict: worked, evenness: 4}
                        kept: {weight: 41 g, how: damp, since: 2026-05-11}
                        ---

                        For everyone. See [the other](../2026-05-02/private.md).

                        ## What it cost (studio only)

                        Four and a half.

                        ### More of that

                        Much more.

                        ## For the class (students only)

                        Mind the steam.

                        ## Again

                        For everyone.
                        """)
                .with("days/2026-05-10/pots.md", """
                        ---
                        method: low-water-simmer
                        share: open
                        pots:
                          - {name: one, needles: {lot: scalded-2025, weight: 20 g}, outcome: {verdict: failed}}
                          - {name: two, needles: {lot: scalded-2025, weight: 20 g}, share: studio, tag: P708}
                          - {name: three, needles: {lot: scalded-2025, weight: 20 g}, share: students, tag: P709}
                        ---

                        The day.

                        ## one

                        Of one.

                        ## two

                        Of two.

                        ## three

                        Of three.
                        """);
    }

    private static WrittenNotebook cutByHandForEveryone(Path folder) {
        return WrittenNotebook.small(folder)
                .with("dyes/brick.md", "---\ntitle: Brick\nkind: dye\nform: powder\n"
                        + "level-tsp: {weight: 3.1 g, weighed: 10}\n---\n")
                .with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: metric\n")
                .with("days/2026-05-09/shown.md", """
                        ---
                        title: A shown pot
                        tag: 41
                        share: open
                        method: low-water-simmer
                        needles: {lot: scalded-2025, weight: 45 g}
                        bath: {dye: [{is: brick, amount: 1.5 % owf}]}
                        colour: [{hex: "#7f4632"}]
                        outcome: {verdict: worked, evenness: 4}
                        ---

                        For everyone. See the other.

                        ## Again

                        For everyone.
                        """)
                .with("days/2026-05-10/pots.md", """
                        ---
                        method: low-water-simmer
                        share: open
                        pots:
                          - {name: one, needles: {lot: scalded-2025, weight: 20 g}, outcome: {verdict: failed}}
                        ---

                        The day.

                        ## one

                        Of one.
                        """);
    }

    @Test
    void theOpenBookIsThatOfTheNotebookCutByHand() throws IOException, ThemeBroken {
        Book cut = book(whole(folder.resolve("whole")), Edition.OPEN);
        Book byHand = book(cutByHandForEveryone(folder.resolve("by-hand")), Edition.OPEN);
        assertEquals(byHand.addresses(), cut.addresses());
        for (String address : cut.addresses()) {
            assertEquals(text(byHand, address), text(cut, address), address);
        }
    }

    @Test
    void nothingPrivateIsInALowerEdition() throws IOException, ThemeBroken {
        Book open = book(whole(folder.resolve("whole")), Edition.OPEN);
        for (String address : open.addresses()) {
            for (String secret : List.of("private", "Secret", "secret", "Stashed", "stashed", "smoked", "Smoked", "P707",
                    "P708", "P709", "#336699", "sly", "4.20", "Four and a half", "Much more", "Mind the steam", "Of two",
                    "Of three", "redder", "41 g")) {
                assertFalse((address + text(open, address)).contains(secret), secret + " in " + address);
            }
        }
    }

    @Test
    void studentsReadWhatIsTheirsAndTheStudioReadsAll() throws IOException, ThemeBroken {
        Book students = book(whole(folder.resolve("whole")), Edition.STUDENTS);
        String shown = text(students, "entries/2026-05-09-shown.html");
        assertTrue(shown.contains("Mind the steam"));
        assertTrue(shown.contains("For the class"));
        assertFalse(shown.contains("students only"), "who may read a section does not hear for whom it is closed");
        assertFalse(shown.contains("Four and a half"));
        assertTrue(students.addresses().contains("entries/2026-05-10-three.html"));
        Book studio = book(whole(folder.resolve("again")), Edition.STUDIO);
        assertTrue(text(studio, "entries/2026-05-09-shown.html").contains("Four and a half"));
        assertTrue(studio.addresses().contains("entries/2026-05-02-private.html"));
    }

    @Test
    void figuresOfAnEntryAreThoseOfTheStudiosBook() throws IOException {
        WrittenNotebook written = whole(folder.resolve("whole"));
        Workings studio = workings(written, Edition.STUDIO);
        Workings open = workings(written, Edition.OPEN);
        assertEquals(studio.entry("2026-05-10-one").orElseThrow().bath(),
                open.entry("2026-05-10-one").orElseThrow().bath());
        assertEquals(1200, open.entry("2026-05-10-one").orElseThrow().bath().waterMl().orElseThrow(), 1e-9);
    }

    @Test
    void aPageMadeAloneEqualsThatOfTheWholeBookInAnyOrder() throws IOException, ThemeBroken {
        WrittenNotebook written = whole(folder.resolve("whole"));
        Book whole = book(written, Edition.STUDIO);
        List<String> shuffled = new ArrayList<>(whole.addresses());
        Collections.shuffle(shuffled, new Random(7));
        for (String address : shuffled) {
            assertArrayEquals(whole.bytes(address), book(written, Edition.STUDIO).bytes(address), address);
        }
        Path target = folder.resolve("book");
        int status = Fascicle.run(silent(), "publish", written.folder().toString(), "--to", target.toString());
        assertEquals(Status.DONE, status);
        for (String address : shuffled) {
            assertArrayEquals(Files.readAllBytes(target.resolve(address)), whole.bytes(address), address);
        }
    }

    private static Terminal silent() {
        return new Terminal(new java.io.PrintWriter(new java.io.StringWriter()),
                new java.io.PrintWriter(new java.io.StringWriter()), false);
    }

    private static Workings workings(WrittenNotebook written, Edition edition) throws IOException {
        Proofreading.Proof proof = NotebookFolder.proof(written.folder(), Call.silent());
        assertFalse(NotebookFolder.hasErrors(proof.findings()), () -> proof.findings().toString());
        return Workings.of(EditionCut.of(proof.notebook(), edition));
    }

    private static Book book(WrittenNotebook written, Edition edition) throws IOException, ThemeBroken {
        return Book.of(workings(written, edition), edition, Theme.shipped("longleaf"), Gallery.EMPTY);
    }

    private static String text(Book book, String address) {
        return new String(book.bytes(address), StandardCharsets.UTF_8);
    }
}
