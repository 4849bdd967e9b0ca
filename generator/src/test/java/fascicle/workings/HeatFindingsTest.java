package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.Finding;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Heat that no pot reaches, times that nobody works, and baths without water, as a maker would write them. */
class HeatFindingsTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder);
    }

    @Test
    void anOpenPotCannotPassTheBoilOfItsHeight() {
        notebook.with("notebook.yaml", "form: 1\ntitle: Up here\nkitchen: metric\nheight: 1400 m\n");
        pot("heat: [{to: 98 °C, hold: 1 h}]");
        found("days/2026-05-09/pot.md:4:13: warning: “98 °C” is hotter than an open pot gets, on the stove or in the oven: "
                + "water boils at 95.4 °C at the workshop's height of 1400 m; write “to: boil” or a lower temperature, and "
                + "check whether °F is meant");
        pot("heat: [{to: 98 °C, hold: 1 h, on: oven}]");
        assertEquals(1, proofed().size(), "an oven heats the pot, not past its boil");
        pot("heat: [{to: 95 °C, hold: 1 h}, {to: boil, hold: 10 min}]");
        found();
    }

    @Test
    void atTheSeaWaterBoilsAtAHundred() {
        pot("heat: [{to: 212 °F, hold: 1 h}]");
        found();
        pot("heat: [{to: 105 °C, hold: 1 h}]");
        assertEquals(1, proofed().size());
    }

    @Test
    void noWorkshopStandsHigherThanAnyMountain() {
        notebook.with("notebook.yaml", "form: 1\ntitle: Up here\nkitchen: metric\nheight: 50000 m\n");
        found("notebook.yaml:4:9: warning: “50000 m” is no height of a workshop, which lies from −500 m to 9000 m above the "
                + "sea; check the figure and its unit (the boil at the sea is taken instead)");
    }

    /** 6000 ft are 1828.8 m exactly (NIST SP 811), where cooks' tables let water boil at 201 °F, 94 °C (from memory). */
    @Test
    void aHeightInFeetIsThatInMetres() {
        notebook.with("notebook.yaml", "form: 1\ntitle: Up here\nkitchen: us\nheight: 6000 ft\n");
        pot("heat: [{to: 98 °C, hold: 1 h}]");
        found("days/2026-05-09/pot.md:4:13: warning: “98 °C” is hotter than an open pot gets, on the stove or in the oven: "
                + "water boils at 93.9 °C at the workshop's height of 1829 m; write “to: boil” or a lower temperature, and "
                + "check whether °F is meant");
    }

    /** About 106 200 Pa at −400 m by the standard atmosphere (ICAO Doc 7488), where water boils at 101.3 °C. */
    @Test
    void belowTheSeaWaterBoilsHotter() {
        notebook.with("notebook.yaml", "form: 1\ntitle: Down here\nkitchen: metric\nheight: −400 m\n");
        pot("heat: [{to: 102 °C, hold: 1 h}]");
        found();
        pot("heat: [{to: 103 °C, hold: 1 h}]");
        found("days/2026-05-09/pot.md:4:13: warning: “103 °C” is hotter than an open pot gets, on the stove or in the oven: "
                + "water boils at 101.3 °C at the workshop's height of -400 m; write “to: boil” or a lower temperature, and "
                + "check whether °F is meant");
    }

    @Test
    void aBathIsNoIce() {
        pot("heat: [{from: -4 °C, to: 88 °C, over: 30 min, hold: 1 h}]");
        found("days/2026-05-09/pot.md:4:15: warning: “-4 °C” is below 0 °C, where a bath is ice; check the figure and its "
                + "unit");
    }

    @Test
    void nobodyHoldsAPotForDays() {
        pot("heat: [{to: 88 °C, over: 30 h, hold: 24 h}, {hold: 29 days, on: sun}]");
        found("days/2026-05-09/pot.md:4:26: warning: “over: 30 h” is longer than 24 h, the most one expects of heating; check "
                + "the figure and its unit");
        pot("heat: [{hold: 31 days, on: sun}]");
        found("days/2026-05-09/pot.md:4:15: warning: “hold: 31 days” is longer than 30 days, the most one expects of the sun; "
                + "check the figure and its unit");
    }

    @Test
    void norSoaksCoolsOrDriesForASeason() {
        pot("presoak: {water: 3 L, for: 5 weeks}", "cool: 8 days", "dry: 9 weeks");
        assertEquals(List.of("“for: 5 weeks” is longer than 30 days, the most one expects of a soak",
                        "“cool: 8 days” is longer than 7 days, the most one expects of cooling",
                        "“dry: 9 weeks” is longer than 60 days, the most one expects of drying"),
                proofed().stream().map(line -> line.replaceAll(".*warning: |;.*", "")).toList());
        pot("presoak: {water: 3 L, for: overnight}", "cool: overnight", "dry: 3 weeks");
        found();
    }

    @Test
    void norIsAnythingAddedMonthsLater() {
        notebook.with("dyes/brick.md", "---\nkind: dye\nform: powder\n---\n");
        pot("bath: {water: 3 L, dye: [{is: brick, amount: 1 g, at: 400 days}]}");
        assertEquals(List.of("“at: 400 days” is longer than 30 days, the most one expects of a bath"),
                proofed().stream().map(line -> line.replaceAll(".*warning: |;.*", "")).toList());
    }

    @Test
    void noTimeAtAllIsAMistake() {
        pot("heat: [{to: 88 °C, hold: 0 min}]");
        found("days/2026-05-09/pot.md:4:26: warning: “hold: 0 min” is no time at all; write how long, or leave “hold” out");
    }

    @Test
    void aLookWithoutALengthIsFine() {
        pot("heat: [{to: below-simmer}]");
        found();
    }

    @Test
    void aBathOfWhichNobodyKnowsTheWater() {
        notebook.with("days/2026-05-09/pot.md", """
                ---
                needles: {lot: scalded-2025, weight: 45 g}
                bath: {dye: [{is: brick, amount: 1 % owf}]}
                ---
                """);
        found("days/2026-05-09/pot.md:2:1: warning: “pot” does not say how much water its bath has, so its liquor is not "
                + "known; add “water: 3 L”, “ratio: 60” or “depth: 7 cm” under “bath:” (about is welcome)");
        notebook.with("methods/dry.md", "---\ntitle: Dry\nfor: 50 g\nbath: {assistants: [{is: salt, amount: 40 g}]}\n---\n");
        assertEquals(2, proofed().size(), "a method's bath too");
    }

    @Test
    void whatTheMethodPoursIsPoured() {
        pot();
        found();
    }

    /** Writes a pot of the method, with lines of its own from line 4 on. */
    private void pot(String... lines) {
        notebook.with("days/2026-05-09/pot.md", Stream.of(List.of("---", "method: low-water-simmer",
                "needles: {lot: scalded-2025, weight: 45 g}"), List.of(lines), List.of("---", ""))
                .flatMap(List::stream).reduce((one, other) -> one + "\n" + other).orElseThrow());
    }

    private void found(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", proofed()));
    }

    private List<String> proofed() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream()
                .map(Finding::toString).toList();
    }
}
