package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.Finding;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts that nobody weighs out, in whatever bath, whatever is not known of it. The limits: common practice, no source. */
class AbsurdAmountsTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder).with("dyes/alum.md", "---\nkind: mordant\nform: powder\n---\n");
    }

    /** 900 g to 45 g are 2000 % owf: 100 g/L in the jar of a litre in which 50 g to 1 g lie, and be there ever so much water. */
    @ParameterizedTest
    @ValueSource(strings = {"finish: [{is: salt, amount: %s}]", "presoak: {with: [{is: salt, amount: %s}], for: 1 h}",
        "before: [{as: scour, with: [{is: salt, amount: %s}]}]", "after: [{as: scour, with: [{is: salt, amount: %s}]}]"})
    void ofWhatGoesByTheLitreWhereNobodyKnowsTheLitres(String line) {
        pot(line.formatted("40 kg"));
        found("“40 kg” of Table salt comes to 88890 % owf, more than the 2000 % owf that one expects at most of anything but "
                + "a plant, in however much water; check the figure and its unit, or say “form: plant” in its file if it is "
                + "one");
        pot(line.formatted("901 g"));
        assertEquals(1, proofed().size(), "just above");
        pot(line.formatted("900 g"));
        found();
        pot(line.formatted("899 g"));
        found();
    }

    @Test
    void inABathOfUnknownWater() {
        pot("bath: {vessel: wide-pan, assistants: [{is: salt, amount: 4 kg}]}");
        assertEquals(List.of("“pot” does not say how much", "“4 kg” of Table salt comes to 8889"), proofed().stream()
                .map(line -> line.replaceAll(" water its.*| % owf.*", "")).toList());
        pot("bath: {vessel: wide-pan, assistants: [{is: salt, amount: 1/4 cup}]}");
        assertEquals(1, proofed().size(), "a quarter cup for a small bundle is what a practitioner takes");
    }

    @Test
    void inABathThatWasUsedBefore() {
        notebook.with("days/2026-05-08/one.md", "---\nneedles: {weight: 45 g}\n"
                + "bath: {water: 3 L, dye: [{is: brick, amount: 1 % owf}]}\n---\n");
        pot("bath: {reuses: 2026-05-08-one, assistants: [{is: salt, amount: 40 kg}]}");
        assertEquals(1, proofed().size());
        pot("bath: {reuses: 2026-05-08-one, assistants: [{is: salt, amount: 40 g}]}");
        found();
    }

    /** 3 L at 100 g/L are 300 g, and 667 % owf of 45 g: salt follows the water. */
    @Test
    void whereTheLitresAreKnownTheyTell() {
        pot("presoak: {water: 3 L, with: [{is: salt, amount: 300 g}]}");
        found();
        pot("presoak: {water: 3 L, with: [{is: salt, amount: 301 g}]}");
        assertEquals(1, proofed().size());
        pot("bath: {water: 3 L, assistants: [{is: salt, amount: 300 g, by: batch}]}");
        found();
        pot("bath: {water: 3 L, assistants: [{is: salt, amount: 100 g, by: needles}]}");
        assertEquals(1, proofed().size(), "what follows the needles is judged by them");
    }

    @Test
    void aMordantFollowsTheNeedles() {
        pot("before: [{as: mordant, water: 2 L, with: [{is: alum, amount: 100 % owf}]}]");
        found();
        pot("before: [{as: mordant, water: 2 L, with: [{is: alum, amount: 101 % owf}]}]");
        assertEquals(1, proofed().size());
        pot("after: [{as: mordant, with: [{is: alum, amount: 45 g}]}]");
        found();
        pot("after: [{as: mordant, with: [{is: alum, amount: 46 g}]}]");
        assertEquals(1, proofed().size());
    }

    /** 6 L at 100 g/L are 600 g; what the pots of the bin weigh is not what it was poured for. */
    @Test
    void inABinThatPotsShare() {
        bin("{water: 6 L, with: [{is: salt, amount: 600 g}]}");
        found();
        bin("{water: 6 L, with: [{is: salt, amount: 606 g}]}");
        found("“606 g” of Table salt comes to 101 g in a litre, more than the 100 g that one expects at most of anything but "
                + "a plant; check the figure and its unit, or say “form: plant” in its file if it is one");
    }

    @Test
    void inABinOfWhichNothingIsKnown() {
        bin("{with: [{is: salt, amount: 5 kg}]}");
        found();
        bin("{with: [{is: salt, amount: 5.01 kg}]}");
        found("“5.01 kg” of Table salt is more than the 5 kg that one expects at most of anything but a plant, for whatever "
                + "needles; check the figure and its unit, or say “form: plant” in its file if it is one");
    }

    @Test
    void whereTheNeedlesWereNotWeighed() {
        notebook.with("methods/loose.md", "---\nbath: {ratio: 60, assistants: [{is: salt, amount: 100 g/L}]}\n---\n");
        found();
        notebook.with("methods/loose.md", "---\nbath: {ratio: 60, assistants: [{is: salt, amount: 4000 g/L}]}\n---\n");
        assertEquals(1, proofed().size());
    }

    @Test
    void aFinishHasNoLitres() {
        pot("finish: [{is: salt, amount: 12 g/L}]");
        found("“12 g/L” of Table salt is for each litre of a bath, and a finish has none; write how much it was, such as 12 g");
        pot("finish: [{is: salt, amount: 12 g}]");
        found();
    }

    @Test
    void soThatWhatIsWrittenForEachLitreIsNotKnown() {
        pot("bath: {water: 2 L}\nfinish: [{is: salt, amount: 12 g/L}]");
        PartFigures salt = Workings.of(notebook.read().notebook()).entry("2026-05-09-pot").orElseThrow().finish().get(0);
        assertEquals(List.of(true, true, true), List.of(salt.grams().isEmpty(), salt.ml().isEmpty(), salt.owfPercent().isEmpty()));
        assertEquals(12, salt.gramsPerLitre().orElseThrow());
    }

    /** 0.2 mL of 100 % are 0.2 g. */
    @Test
    void noStockIsThickerThanSyrup() {
        pot("bath: {water: 3 L, dye: [{is: brick, amount: 0.2 mL of 500 % stock}]}");
        found("“0.2 mL of 500 % stock” of Brick would be 500 g in 100 mL, more than the 100 g that one expects at most in a "
                + "stock solution; check its strength");
        pot("bath: {water: 3 L, dye: [{is: brick, amount: 0.2 mL of 101 % stock}]}");
        assertEquals(1, proofed().size());
        pot("bath: {water: 3 L, dye: [{is: brick, amount: 0.2 mL of 100 % stock}]}");
        found();
    }

    /** In 135 mL lie 45 g of needles at 3 mL to a gram, as few as in any dyebath. */
    @Test
    void noWaterButEnoughVinegarToLieIn() {
        pot("presoak: {water: 0 L, with: [{is: white-vinegar, amount: 40 mL}]}");
        found("“water: 0 L” is no water; write how much it was (about is welcome), or leave it out");
        pot("presoak: {water: 0 L, with: [{is: white-vinegar, amount: 134 mL}]}");
        assertEquals(1, proofed().size());
        pot("presoak: {water: 0 L, with: [{is: white-vinegar, amount: 135 mL}]}");
        found();
    }

    @Test
    void weightsThatRecipesAreWorkedOutFor() {
        weights("[900 kg, 1 mg]");
        found("900 kg of needles is more than 5 kg in one pot; check the figure and its unit",
                "0.001 g of needles is less than a single one weighs, 0.05 g or more; check the figure and its unit");
        weights("[5001 g, 49 mg]");
        assertEquals(2, proofed().size());
        weights("[5 kg, 4999 g, 50 mg, 51 mg]");
        found();
    }

    private void weights(String list) {
        notebook.with("notebook.yaml", "form: 1\ntitle: A small notebook\nkitchen: metric\nweights: " + list + "\n");
    }

    private void bin(String presoak) {
        notebook.with("days/2026-05-09/bin.md", "---\npresoak: " + presoak
                + "\npots: [{name: one, needles: {weight: 2 g}}, {name: two, needles: {weight: 2 g}}]\n---\n");
    }

    /** Writes 45 g, with lines of their own. */
    private void pot(String lines) {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 45 g}\n" + lines + "\n---\n");
    }

    private void found(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", proofed()));
    }

    private List<String> proofed() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream().map(Finding::message).toList();
    }
}
