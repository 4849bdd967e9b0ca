package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a file with an error nothing is missed: its error is all that is said. */
class UnreadFilesTest {

    private static final String DAY = "days/2026-05-09/pot.md";

    @TempDir
    private Path folder;

    private List<String> found(String... filesAndTexts) {
        WrittenNotebook notebook = WrittenNotebook.small(folder);
        for (int at = 0; at < filesAndTexts.length; at += 2) {
            notebook.with(filesAndTexts[at], filesAndTexts[at + 1]);
        }
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream()
                .map(finding -> finding.place() + " " + finding.level().word()).toList();
    }

    @Test
    void anAcidThatIsALiquidWhateverItsStrengthShouldBe() {
        assertEquals(List.of("dyes/sour.md:4:10 error"), found(
                "dyes/sour.md", "---\nkind: acid\nform: liquid\nacidity: 200 %\n---\n",
                DAY, "---\nneedles: {weight: 45 g}\nbath: {water: 2 L, assistants: [{is: sour, amount: 1 tbsp}]}\n---\n"));
    }

    @Test
    void aPowderOfWhichADensityWasWritten() {
        assertEquals(List.of("dyes/red.md:4:10 error"), found(
                "dyes/red.md", "---\nkind: dye\nform: powder\ndensity: 0.6\n---\n",
                DAY, "---\nneedles: {weight: 45 g}\nbath: {water: 2 L, dye: [{is: red, amount: 1 tsp}]}\n---\n"));
    }

    @Test
    void aPowderOfWhichASpoonWasWeighed() {
        assertEquals(List.of("dyes/red.md:3:12 error"), found(
                "dyes/red.md", "---\nkind: dye\nlevel-tsp: 3 g\n---\n",
                DAY, "---\nneedles: {weight: 45 g}\nbath: {water: 2 L, dye: [{is: red, amount: 1 tsp}]}\n---\n"));
    }

    @Test
    void aPlantOfWhichAnyAmountMayBeRight() {
        assertEquals(List.of("dyes/walnut.md:4:1 error"), found(
                "dyes/walnut.md", "---\nkind: dye\nform: plant\ncolour: brown\n---\n",
                DAY, "---\nneedles: {weight: 45 g}\nbath: {water: 2 L, dye: [{is: walnut, amount: 200 g}]}\n---\n"));
    }

    @Test
    void aLotOfWhichBundlesWereWeighed() {
        assertEquals(List.of("needles/lot-b.md:3:9 error"), found(
                "needles/lot-b.md", "---\nbundle: {weight: 150 g, counted: 10}\nlength: 14\n---\n",
                DAY, "---\nneedles: {lot: lot-b, bundles: 3}\nbath: {water: 2 L}\n---\n"));
    }

    @Test
    void aVesselInAFileThatCannotBeRead() {
        assertEquals(List.of("vessels.yaml:2:1 error"), found(
                "vessels.yaml", "pot: {shape: round, diameter: 18 cm\n",
                DAY, "---\nneedles: {weight: 45 g}\nbath: {vessel: pot, depth: 7 cm}\n---\n"));
    }

    /** What is sound is still missed. */
    @Test
    void aPowderThatNobodyWeighed() {
        assertEquals(List.of("dyes/red.md:2:1 warning"), found(
                "dyes/red.md", "---\nkind: dye\n---\n",
                DAY, "---\nneedles: {weight: 45 g}\nbath: {water: 2 L, dye: [{is: red, amount: 1 tsp}]}\n---\n"));
    }
}
