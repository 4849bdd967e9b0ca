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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Liquids of which nobody pours so much, and baths without any. */
class LiquidFindingsTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder).with("dyes/amber.md", "---\nkind: dye\nform: liquid\n---\n");
    }

    @Test
    void inAPresoak() {
        pot("presoak: {water: 6 L, with: [{is: white-vinegar, amount: 50 L}]}");
        found("days/2026-05-09/pot.md:3:58: warning: “50 L” of White vinegar comes to 1111 mL to a gram of needles, more than "
                + "the 200 mL that one expects at most of a liquid; check the figure and its unit");
        pot("presoak: {water: 6 L, with: [{is: white-vinegar, amount: 250 mL}]}");
        found();
    }

    @Test
    void inAFinish() {
        pot("finish: [{is: white-vinegar, amount: 40 L}]");
        found("days/2026-05-09/pot.md:3:38: warning: “40 L” of White vinegar comes to 888.9 mL to a gram of needles, more "
                + "than the 200 mL that one expects at most of a liquid; check the figure and its unit");
    }

    @Test
    void inATreatment() {
        pot("before: [{as: scour, water: 3 L, with: [{is: white-vinegar, amount: 40 L}]}]");
        assertEquals(1, proofed().size());
    }

    /** The slip is in the vinegar, and is said once. */
    @Test
    void inADyebathAndNotAtItsWater() {
        pot("bath: {water: 1 L, dye: [{is: brick, amount: 1 % owf}], assistants: [{is: white-vinegar, amount: 50 L}]}");
        found("days/2026-05-09/pot.md:3:98: warning: “50 L” of White vinegar comes to 1111 mL to a gram of needles, more than "
                + "the 200 mL that one expects at most of a liquid; check the figure and its unit");
    }

    @Test
    void norAtTheWaterOfAPotThatRunsOver() {
        pot("bath: {vessel: wide-pan, water: 7 L, assistants: [{is: white-vinegar, amount: 8 L}]}");
        found("days/2026-05-09/pot.md:3:79: warning: “8 L” makes 15 L of liquor, which cannot be: “wide-pan” holds 11.08 L to "
                + "the brim; check it, the weight of the needles, or the vessel");
    }

    /** A jar of a litre in which a sample of 5 g lies. */
    @Test
    void aSmallSampleMayLieInAJar() {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 5 g}\n"
                + "before: [{as: iron, water: 0 L, with: [{is: white-vinegar, amount: 1 L}]}]\n---\n");
        found();
    }

    @Test
    void inABinThatPotsShare() {
        bin("1 L");
        found();
        bin("50 L");
        found("days/2026-05-09/bin.md:2:58: warning: “50 L” of White vinegar is more than the 6 L of water in its bin; check "
                + "the figure and its unit");
    }

    /** 20 mL to 100 g is what a practitioner uses; a twenty-fifth of the limit. */
    @ParameterizedTest
    @CsvSource({"4 kg, 88.89 g, 5 g", "4 L, 88.89 mL, 5 mL", "2 L, 44.44 mL, 5 mL"})
    void aLiquidDyeByTheLitre(String amount, String comesTo, String most) {
        dye(amount);
        found("days/2026-05-09/pot.md:3:46: warning: “" + amount + "” of amber comes to " + comesTo + " to a gram of needles, "
                + "more than the " + most + " that one expects at most of a liquid dye; check the figure and its unit, or say "
                + "“type: natural” in its file if it is a decoction");
    }

    @Test
    void ofADyeWhoseDensityIsKnownToo() {
        notebook.with("dyes/amber.md", "---\nkind: dye\nform: liquid\ndensity: 2 g/mL\n---\n");
        dye("1 kg");
        assertEquals(List.of("11.11 mL"), proofed().stream().map(line -> line.replaceAll(".*comes to | to a gram.*", "")).toList());
    }

    /** 225 mL are those 5 mL to a gram: a solution of one's own of 1 %, for 5 % owf. */
    @ParameterizedTest
    @ValueSource(strings = {"2 tsp", "10 mL", "225 mL", "a splash"})
    void nobodyIsTroubledAboutADyeThatDyes(String amount) {
        dye(amount);
        found();
    }

    @ParameterizedTest
    @ValueSource(strings = {"type: natural", "type: vat"})
    void aDecoctionMayBeTheBathItself(String type) {
        notebook.with("dyes/amber.md", "---\nkind: dye\nform: liquid\n" + type + "\n---\n");
        dye("2 L");
        found();
    }

    @Test
    void noAmountOfAPlant() {
        notebook.with("dyes/amber.md", "---\nkind: dye\nform: plant\ndensity: 1 g/mL\n---\n");
        dye("20 L");
        found();
    }

    @Test
    void waterOfNothing() {
        pot("presoak: {water: 0 L}");
        found("days/2026-05-09/pot.md:3:18: warning: “water: 0 L” is no water; write how much it was (about is welcome), or "
                + "leave it out");
        pot("after: [{as: iron, water: 0 L}]");
        assertEquals(1, proofed().size());
        pot("bath: {water: 2 L, dye: [{is: brick, amount: 1 g}], extract: {of: 200 g, water: 0 mL}}");
        assertEquals(1, proofed().size());
        pot("bath: {water: 0 L, dye: [{is: brick, amount: 1 g}]}");
        assertEquals(1, proofed().size());
        notebook.with("methods/none.md", "---\nbath: {water: 0 L, dye: [{is: brick, amount: 1 % owf}]}\n---\n");
        assertEquals(1, proofed().stream().filter(line -> line.contains("is no water")).count(), "of unknown needles too");
    }

    private void dye(String amount) {
        pot("bath: {water: 3 L, dye: [{is: amber, amount: " + amount + "}]}");
    }

    /** Writes 45 g, with a line of their own. */
    private void pot(String line) {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 45 g}\n" + line + "\n---\n");
    }

    private void bin(String vinegar) {
        notebook.with("days/2026-05-09/bin.md", "---\npresoak: {water: 6 L, with: [{is: white-vinegar, amount: " + vinegar
                + "}]}\npots: [{name: one, needles: {weight: 2 g}}, {name: two, needles: {weight: 2 g}}]\n---\n");
    }

    private void found(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", proofed()));
    }

    private List<String> proofed() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream().map(Finding::toString).toList();
    }
}
