package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.Book;
import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Edition;
import fascicle.notebook.Finding;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a bath that stood already takes over from its method, which reckons with a fresh one. */
class TakenOverTest {

    private static final String ON_TOP = "as the method has it, on top of what stood in the bath";

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void aFirstBatchByTheMethod() {
        notebook = WrittenNotebook.small(folder);
        pot("2026-05-09/first", "", "glass: {left: 2.4 L}");
    }

    @Test
    void theWholeDoseOfSaltIsTakenOverWhereNothingIsSaid() {
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %", "");
        assertEquals(List.of("days/2026-05-10/again.md:4:16: warning: this bath stood already, and takes all of "
                + "“assistants” over from the method, as a fresh one would; write what was added now, or “assistants: []” "
                + "where nothing was"), proofed());
        assertEquals(1, salt("2026-05-10-again").size());
    }

    @Test
    void anEmptyListAddsNone() {
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %, assistants: []", "");
        assertEquals(List.of(), proofed());
        assertEquals(List.of(), salt("2026-05-10-again"));
    }

    @Test
    void whatTheMakerWroteIsWhatWentIn() {
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %, assistants: [{is: salt, amount: 2 g}]", "");
        assertEquals(List.of(), proofed());
        assertEquals(2, salt("2026-05-10-again").get(0).grams().orElseThrow());
    }

    @Test
    void aMethodsDyeGoesInWholeToo() {
        notebook.with("methods/low-water-simmer.md", "---\nfor: 50 g\nbath: {vessel: wide-pan, water: 3 L, dye: "
                + "[{is: brick, amount: 1 % owf}]}\n---\n");
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %", "");
        assertEquals(1, proofed().size());
        assertTrue(proofed().get(0).contains("takes all of “dye” over"), proofed().get(0));
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %, dye: []", "");
        assertEquals(List.of(), proofed());
    }

    @Test
    void thePageSaysItBesideTheAmount() throws ThemeBroken {
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %", "");
        assertTrue(page("2026-05-10-again").contains(ON_TOP));
        assertFalse(page("2026-05-09-first").contains(ON_TOP), "a fresh bath takes it over as it is meant");
        pot("2026-05-10/again", "reuses: 2026-05-09-first, left: 30 %, assistants: [{is: salt, amount: 2 g}]", "");
        assertFalse(page("2026-05-10-again").contains(ON_TOP));
    }

    private void pot(String name, String bath, String more) {
        notebook.with("days/" + name + ".md", "---\nmethod: low-water-simmer\nneedles: {lot: scalded-2025, weight: 45 g}\n"
                + "bath: {" + bath + "}\n" + more + "\n---\n");
    }

    private List<PartFigures> salt(String id) {
        return Workings.of(notebook.read().notebook()).entry(id).orElseThrow().bath().assistants();
    }

    private String page(String id) throws ThemeBroken {
        Book book = Book.of(Workings.of(notebook.read().notebook()), Edition.STUDIO, Theme.shipped("longleaf"),
                Gallery.EMPTY);
        return Jsoup.parse(new String(book.bytes("entries/" + id + ".html"), StandardCharsets.UTF_8)).select("main").text();
    }

    private List<String> proofed() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream().map(Finding::toString).toList();
    }
}
