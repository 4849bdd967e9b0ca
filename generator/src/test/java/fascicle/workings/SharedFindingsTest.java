package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.Finding;
import fascicle.notebook.Missing;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a line that several recipes share is said once, where it is to be mended. */
class SharedFindingsTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder)
                .with("vessels.yaml", """
                        pot: {shape: round, diameter: 18 cm, height: 14 cm}
                        wide-pan: {shape: oval, length: 42 cm, width: 28 cm, height: 12 cm}
                        """);
    }

    /** 50 g at 1:10 are 500 mL of liquor, and 2 L of stock do not go into them, nor in proportion for 45 g. */
    @Test
    void aMethodThatCannotBeSaysSoForAllWhoFollowIt() {
        method("stk", "for: 50 g\nbath: {ratio: 10, dye: [{is: brick, amount: 2 L of 0.1 % stock}]}");
        for (String name : List.of("a", "b", "c", "d")) {
            pot(name, "needles: {weight: 45 g}\nmethod: stk");
        }
        found("methods/stk.md:3:15: error: in “stk” the liquid parts come to 2 L but the liquor is only 500 mL: use a stronger "
                + "stock, or a higher ratio");
        assertEquals(List.of("2026-05-09-a", "2026-05-09-b", "2026-05-09-c", "2026-05-09-d"),
                proof().notebook().missing().stream().map(Missing::what).toList(), "none of them can be reckoned");
        assertEquals("methods/stk.md:3:15: in “a” the liquid parts come to 1.8 L but the liquor is only 450 mL: use a stronger "
                + "stock, or a higher ratio", proof().notebook().missing().get(0).why().get(0));
    }

    /** 15 L for the method's 50 g, 13.5 L for 45 g; the pot of 18 × 14 cm holds 3.563 L. */
    @Test
    void aPotThatRunsOverAtItsMethodsWeightRunsOverOnce() {
        method("deep", "for: 50 g\nbath: {vessel: pot, ratio: 300, dye: [{is: brick, amount: 1 % owf}]}");
        pot("a", "needles: {weight: 45 g}\nmethod: deep");
        found("methods/deep.md:3:28: warning: “300” makes 15 L of liquor, which cannot be: “pot” holds 3.563 L to the brim; "
                + "check the water, the weight of the needles, or the vessel");
    }

    /** 20 g at 1:60 are 1.2 L; 70 g are 4.2 L, and that is the doing of whoever took 70 g. */
    @Test
    void moreNeedlesThanAMethodsPotTakesAreTheEntrysDoing() {
        method("sound", "for: 20 g\nbath: {vessel: pot, ratio: 60, dye: [{is: brick, amount: 1 % owf}]}");
        pot("a", "needles: {weight: 70 g}\nmethod: sound");
        pot("b", "needles: {weight: 80 g}\nmethod: sound");
        pot("c", "needles: {weight: 25 g}\nmethod: sound");
        found("days/2026-05-09/a.md:2:1: warning: following methods/sound.md:3:28: “60” makes 4.2 L of liquor, which cannot be: "
                        + "“pot” holds 3.563 L to the brim; check the water, the weight of the needles, or the vessel",
                "days/2026-05-09/b.md:2:1: warning: following methods/sound.md:3:28: “60” makes 4.8 L of liquor, which cannot "
                        + "be: “pot” holds 3.563 L to the brim; check the water, the weight of the needles, or the vessel");
    }

    @Test
    void anEntrysOwnRatioIsItsOwn() {
        method("sound", "for: 20 g\nbath: {vessel: pot, ratio: 60, dye: [{is: brick, amount: 1 % owf}]}");
        pot("a", "needles: {weight: 20 g}\nmethod: sound\nbath: {ratio: 600}");
        found("days/2026-05-09/a.md:4:15: warning: “600” gives 600 mL of liquor to a gram of needles, where 3 to 500 is usual; "
                        + "check the water and the weight",
                "days/2026-05-09/a.md:4:15: warning: “600” makes 12 L of liquor, which cannot be: “pot” holds 3.563 L to the "
                        + "brim; check the water, the weight of the needles, or the vessel");
    }

    @Test
    void theFirstOfSeveralPotsSpeaksForWhatTheyShare() {
        notebook.with("days/2026-05-09/pots.md", """
                ---
                bath: {vessel: pot, water: 4 L}
                pots:
                  - name: a
                    needles: {weight: 20 g}
                  - name: b
                    needles: {weight: 30 g}
                  - name: c
                    needles: {weight: 40 g}
                    bath: {water: 5 L}
                ---
                """);
        found("days/2026-05-09/pots.md:2:28: warning: “4 L” makes 4 L of liquor, which cannot be: “pot” holds 3.563 L to the "
                        + "brim; check the water, the weight of the needles, or the vessel",
                "days/2026-05-09/pots.md:10:19: warning: “5 L” makes 5 L of liquor, which cannot be: “pot” holds 3.563 L to "
                        + "the brim; check the water, the weight of the needles, or the vessel");
    }

    @Test
    void aMethodThatTakesAnothersFaultOverIsSilentWhateverItsName() {
        method("z-first", "for: 50 g\nbath: {vessel: pot, ratio: 300}");
        method("a-second", "method: z-first\ndry: 2 h");
        found("methods/z-first.md:3:28: warning: “300” makes 15 L of liquor, which cannot be: “pot” holds 3.563 L to the brim; "
                + "check the water, the weight of the needles, or the vessel");
    }

    /** 5 g at 1:300 are 1.5 L; the 15 L are those of the second method's 50 g. */
    @Test
    void aMethodSpeaksForItsFollowersOfWhatItTakesOver() {
        method("first", "for: 5 g\nbath: {vessel: pot, ratio: 300}");
        method("second", "method: first\nfor: 50 g");
        pot("a", "needles: {weight: 45 g}\nmethod: second");
        pot("b", "needles: {weight: 4 g}\nmethod: first");
        found("methods/second.md:2:1: warning: following methods/first.md:3:28: “300” makes 15 L of liquor, which cannot be: "
                + "“pot” holds 3.563 L to the brim; check the water, the weight of the needles, or the vessel");
        pot("b", "needles: {weight: 45 g}\nmethod: first");
        assertEquals(List.of("days/2026-05-09/b.md", "methods/second.md"), proof().findings().stream()
                .map(finding -> finding.place().file()).toList(), "who follows the first alone has a fault of its own");
    }

    @Test
    void twoFaultsOfOneKindInOneRecipeAreTwo() {
        method("open", "for: 50 g\nbath: {ratio: 60, dye: [{is: brick}], assistants: [{is: salt}]}");
        pot("a", "needles: {weight: 45 g}\nmethod: open");
        assertEquals(2, proof().findings().size(), "neither dye nor salt has an amount");
    }

    @Test
    void manyWarningsAreNoErrorOfTheEntry() {
        pot("a", "needles: {weight: 45 g}\nbath: {water: 1 L, dye: ["
                + String.join(", ", Collections.nCopies(150, "{is: brick}")) + "]}");
        assertEquals(List.of(), proof().notebook().missing());
    }

    /** The pot holds 1.018 L under 4 cm: π · 9² · 4. */
    @Test
    void moreVinegarThanAShallowBathHasRoomFor() {
        pot("a", "needles: {weight: 45 g}\nbath: {vessel: pot, depth: 4 cm, assistants: [{is: white-vinegar, amount: 2 L}]}");
        found("days/2026-05-09/a.md:3:28: error: in “a” the liquid parts come to 2 L but the liquor is only 1.018 L: use less of "
                + "them, or deeper water");
    }

    private void method(String id, String lines) {
        notebook.with("methods/" + id + ".md", "---\n" + lines + "\n---\n");
    }

    private void pot(String name, String lines) {
        notebook.with("days/2026-05-09/" + name + ".md", "---\n" + lines + "\n---\n");
    }

    private Proofreading.Proof proof() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings());
    }

    private void found(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", proof().findings().stream().map(Finding::toString).toList()));
    }
}
