package fascicle.book.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.Book;
import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.Workings;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the table for other weights says beside its figures, and where it has none. */
class ScalingTableTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder);
    }

    @Test
    void severalPotsSayWhatTheAmountsAreFor() throws Exception {
        entry("bath: {vessel: wide-pan, ratio: 60}");
        assertEquals("In", rows().get(0).selectFirst("th").text());
        notebook.with("notebook.yaml", "form: 1\ntitle: Large batches\nkitchen: metric\nweights: [50 g, 900 g]\n");
        assertEquals("In (all pots together, then each)", rows().get(0).selectFirst("th").text());
    }

    /** 0.2 % of 900 g are 1.8 g, which a balance of 0.1 g tells; in seven pans of 11.08 L, three quarters full, 0.257 g do not. */
    @Test
    void eachPotOfASplitBatchHasItsShareInTheTable() throws Exception {
        entry("bath: {vessel: wide-pan, ratio: 60, dye: [{is: brick, amount: 0.2 % owf}]}");
        notebook.with("notebook.yaml", "form: 1\ntitle: Large batches\nkitchen: metric\nbalance: 0.1 g\nweights: [50 g, 900 g]\n");
        assertTrue(rows().get(0).text().replace('\u202f', ' ').contains("7 × "), () -> "pots");
        assertEquals("Brick 0.1 g or 10 mL of 1 % stock 1.8 g each pot 0.257 g, or 25.7 mL of 1 % stock",
                row("Brick").replace('\u202f', ' '));
        assertEquals("Water 3000 mL 54000 mL each pot 7714 mL", row("Water").replace('\u202f', ' '));
    }

    @Test
    void whatSoaksInAnUnknownAmountOfWaterIsNotLeftOut() throws Exception {
        entry("presoak: {with: [{is: white-vinegar, amount: 1 cup}]}", "bath: {ratio: 60}");
        assertEquals("White vinegar, Presoak not known (“1 cup”) not known (“1 cup”) not known (“1 cup”)", row("White vinegar"));
        assertEquals("Water, Presoak – – –", row("Water, Presoak"));
        assertTrue(remarks().contains("How much liquid “Presoak” takes is not known: it has no “water:” in the recipe, or it "
                + "is not said for which weight of needles."), remarks()::toString);
    }

    @Test
    void aBinThatSeveralPotsShareIsNotWorkedOut() throws Exception {
        notebook.with("days/2026-05-09/day.md", """
                ---
                presoak: {water: 6 L, with: [{is: white-vinegar, amount: 1 cup}]}
                pots:
                  - {name: pot, needles: {weight: 40 g}, bath: {ratio: 60}}
                  - {name: other, needles: {weight: 40 g}, bath: {ratio: 60}}
                ---
                """);
        assertTrue(row("White vinegar").contains("not known (“1 cup”)"), () -> "no figure, and yet what was written");
        assertTrue(remarks().contains("The presoak is one bin that several pots share (“presoak:” beside “pots:”), so "
                + "that it is not worked out for another weight."), remarks()::toString);
    }

    @Test
    void aPlantThatIsDrawnOutIsNotWeighedTwice() throws Exception {
        entry("bath: {water: 2 L, dye: [{is: brick, amount: 100 % owf}], extract: {of: 40 g, water: 1.8 L}}");
        assertTrue(remarks().stream().anyMatch(said -> said.startsWith("The plant to draw out is no second one")),
                remarks()::toString);
    }

    private void entry(String... lines) {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 40 g}\n" + String.join("\n", lines) + "\n---\n");
    }

    private Element page() throws Exception {
        Book book = Book.of(Workings.of(notebook.read().notebook()), Edition.STUDIO, Theme.shipped("longleaf"), Gallery.EMPTY);
        return Jsoup.parse(new String(book.bytes("entries/2026-05-09-pot.html"), StandardCharsets.UTF_8)).body();
    }

    private List<Element> rows() throws Exception {
        return page().select(".measures tbody tr");
    }

    private String row(String thing) throws Exception {
        return rows().stream().map(Element::text).filter(row -> row.startsWith(thing)).findFirst().orElse("");
    }

    private List<String> remarks() throws Exception {
        return page().select(".remarks li").eachText();
    }
}
