package fascicle.workings.clock;

import static fascicle.workings.clock.Kitchen.lines;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.Finding;
import fascicle.notebook.WrittenNotebook;
import fascicle.notebook.read.NotebookReader;
import fascicle.workings.EntryWorking;
import fascicle.workings.Workings;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A pot as one practitioner tells of dyeing pine needles: common practice, no source. A cup of white vinegar in a bin of
 * warm water for about an hour; water about three inches deep in a small pot, two teaspoons of liquid dye and a quarter
 * cup of salt; just below a simmer for about two hours; left overnight in the bath; out unrinsed, dried a little, then
 * rinsed; damp for a few days in the cold.
 */
class PractitionersPotTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void write() {
        notebook = WrittenNotebook.empty(folder)
                .with("notebook.yaml", "form: 1\ntitle: A kitchen's notebook\nkitchen: us\ndamp-keeps: 3 days\n")
                .with("needles/longleaf.md", "---\ntitle: Long needles\nspecies: Pinus palustris\ncondition: shade-dried\n---\n")
                .with("dyes/rust.md", "---\ntitle: Rust\nkind: dye\nform: liquid\n---\n")
                .with("dyes/salt.md", "---\ntitle: Table salt\nkind: salt\nform: crystals\n---\n")
                .with("dyes/white-vinegar.md", "---\ntitle: White vinegar\nkind: acid\nform: liquid\nacidity: 5 %\n---\n")
                .with("vessels.yaml", "small-pot: {shape: round, diameter: 8 in, height: 5 in, made-of: stainless}\n");
        pot("[{to: below-simmer, hold: about 2 h}]", "damp");
    }

    private void pot(String heat, String kept) {
        notebook.with("days/2026-06-13/rust.md", """
                ---
                needles: {lot: longleaf, weight: about 40 g}
                presoak: {water: about 2 gallons, with: [{is: white-vinegar, amount: 1 cup}], for: about 1 h}
                bath:
                  vessel: small-pot
                  depth: about 3 in
                  dye: [{is: rust, amount: 2 tsp}]
                  assistants: [{is: salt, amount: 1/4 cup}]
                heat: %s
                cool: overnight
                rinse: after-drying
                kept: {how: %s}
                ---
                """.formatted(heat, kept));
    }

    @Test
    void itComesOutWithoutAFinding() {
        assertEquals(List.of(), findings());
        pot("[{to: below-simmer, hold: 2 h}, {to: steaming, hold: 2 h}]", "dry");
        assertEquals(List.of(), findings(), "nor where it takes four hours, the last two on low, and is dried");
    }

    /** 8 in across and 3 in deep is 2471 mL; at 1 kW that is just below a simmer in 12.1 min, and so 15. */
    @Test
    void itsDayByTheClock() {
        assertEquals(lines("0 soak bin until ~60", "~60 make dyebath", "~60 out bin", "~60 on dyebath", "~60 rise dyebath until ~75",
                "~75 hold dyebath until ~195", "~195 off dyebath", "~195 cool dyebath until ~morning 1 + 0",
                "~morning 1 + 0 out dyebath", "~morning 1 + 0 half_dry until ?", "? rinse", "? dry until ?",
                "~morning 1 + 0 keep until ~morning 1 + 4320"), Kitchen.said(clock()));
    }

    @Test
    void theDampNeedlesAreUsedByWednesday() {
        Schedule saturday = Schedule.of(List.of(new Schedule.Pot("Rust", clock())), LocalDateTime.parse("2026-06-13T10:00"));
        Schedule.Due keep = saturday.due().get(saturday.due().size() - 1);
        assertEquals(Stage.Kind.KEEP, keep.stage().kind());
        assertEquals(LocalDateTime.parse("2026-06-17T08:00"), saturday.at(keep.until().orElseThrow()).orElseThrow());
    }

    @Test
    void theStoveIsLitOnceAndTheHandIsNeededSevenTimes() {
        assertEquals(1, clock().onStove().size());
        assertEquals("SOAK MAKE OUT ON OFF OUT RINSE", clock().stages().stream().filter(stage -> stage.kind().byHand())
                .map(stage -> stage.kind().name()).collect(Collectors.joining(" ")));
        assertTrue(clock().stages().stream().anyMatch(Stage::estimated), "heating up is an estimate");
    }

    private List<String> findings() {
        NotebookReader.Result read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream().map(Finding::toString).toList();
    }

    private Clock clock() {
        NotebookReader.Result read = notebook.read();
        EntryWorking pot = Workings.of(read.notebook()).entry("2026-06-13-rust").orElseThrow();
        return Clock.of(Work.of(pot, read.notebook().cover()));
    }
}
