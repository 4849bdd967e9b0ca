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

/** What is added to a bath that is over by then. */
class AdditionFindingsTest {

    private static final String HEAT = "heat: [{to: 80 °C, over: 30 min, hold: 1 h}]";
    private static final String MEND = "check the time and its unit, or say how long the bath goes on under “cool:”";

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder);
    }

    @Test
    void afterTheHeat() {
        pot("30 h", HEAT);
        found("days/2026-05-09/pot.md:3:55: warning: “at: 30 h” comes when the bath is over: its heat takes 90 min; " + MEND);
        pot("91 min", HEAT);
        assertEquals(1, proofed().size());
        pot("90 min", HEAT);
        found();
    }

    @Test
    void whileItCoolsIsSoonEnough() {
        pot("3 h", HEAT, "cool: 2 h");
        found();
        pot("4 h", HEAT, "cool: 2 h");
        found("days/2026-05-09/pot.md:3:55: warning: “at: 4 h” comes when the bath is over: its heat takes 90 min and its "
                + "cooling 2 h; check the time and its unit");
    }

    @Test
    void aNightIsOverWithinADay() {
        pot("12 h", HEAT, "cool: overnight");
        found();
        pot("30 h", HEAT, "cool: overnight");
        found("days/2026-05-09/pot.md:3:55: warning: “at: 30 h” comes when the bath is over: its heat takes 90 min and its "
                + "cooling 24 h at most; check the time and its unit");
        pot("overnight", HEAT);
        found();
    }

    @Test
    void howLongAPotTakesToGetHotWithoutAWordMayBeHours() {
        pot("4 h", "heat: [{to: 80 °C, hold: 1 h}]");
        found();
        pot("30 h", "heat: [{to: simmer, hold: 1 h}]");
        found("days/2026-05-09/pot.md:3:55: warning: “at: 30 h” comes when the bath is over: its heat takes 5 h at most; "
                + MEND);
    }

    @Test
    void whatHasNoKnownEndIsNeverOver() {
        pot("30 h", "heat: [{to: simmer}]");
        found();
        pot("30 h");
        found();
    }

    @Test
    void aBathThatOnlyStands() {
        pot("3 days", "cool: 2 days");
        found("days/2026-05-09/pot.md:3:55: warning: “at: 3 days” comes when the bath is over: its cooling takes 2 days; "
                + "check the time and its unit");
    }

    @Test
    void inATreatmentToo() {
        pot("30 min", HEAT, "before: [{as: mordant, water: 3 L, with: [{is: salt, amount: 3 g, at: 2 h}], heat: [{to: 60 °C, "
                + "over: 20 min, hold: 1 h}]}]");
        found("days/2026-05-09/pot.md:5:71: warning: “at: 2 h” comes when the bath is over: its heat takes 80 min; check the "
                + "time and its unit");
    }

    @Test
    void aMethodsSlipIsSaidOnceAndAnEntrysOwnHeatWhereItStands() {
        notebook.with("methods/late.md", "---\nfor: 50 g\nbath: {ratio: 60, dye: [{is: brick, amount: 1 g, at: 2 h}]}\n"
                + HEAT + "\n---\n");
        entry("late", "");
        String said = "methods/late.md:3:54: warning: “at: 2 h” comes when the bath is over: its heat takes 90 min; " + MEND;
        found(said);
        entry("late", "heat: [{to: 80 °C, over: 30 min, hold: 10 min}]\n");
        found("days/2026-05-09/pot.md:4:13: warning: “at: 2 h” (methods/late.md:3:54) comes when the bath is over: its heat "
                + "takes 40 min; " + MEND, said);
    }

    private void entry(String method, String lines) {
        notebook.with("days/2026-05-09/pot.md", "---\nmethod: " + method + "\nneedles: {weight: 45 g}\n" + lines + "---\n");
    }

    /** Writes a pot to which brick is added so late, and lines from line 4 on. */
    private void pot(String at, String... lines) {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 45 g}\nbath: {water: 3 L, dye: [{is: brick, amount: "
                + "1 g, at: " + at + "}]}\n" + String.join("\n", lines) + "\n---\n");
    }

    private void found(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", proofed()));
    }

    private List<String> proofed() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream().map(Finding::toString).toList();
    }
}
