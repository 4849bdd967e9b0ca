package fascicle.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fascicle.notebook.Finding;
import fascicle.notebook.Today;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.proof.Proofreading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was kept, what was mixed, what was left open, and when. */
class EntryFindingsTest {

    @TempDir
    private Path folder;

    private WrittenNotebook notebook;

    @BeforeEach
    void begin() {
        notebook = WrittenNotebook.small(folder)
                .with("dyes/soda.md", "---\ntitle: Washing soda\nkind: alkali\nform: powder\n---\n")
                .with("dyes/sumac.md", "---\nkind: acid\nform: plant\n---\n");
    }

    @Test
    void moreKeptThanWasDyed() {
        pot("kept: {weight: 900 g, how: damp}");
        found("days/2026-05-09/pot.md:3:16: warning: “900 g” kept damp is 20 times the 45 g of needles that were dyed, more "
                + "than the 5 times that one expects at most; check both weights");
        pot("kept: {weight: 91 g, how: dry}");
        found("days/2026-05-09/pot.md:3:16: warning: “91 g” kept dry is 2.022 times the 45 g of needles that were dyed, more "
                + "than the 2 times that one expects at most; check both weights");
        pot("kept: {weight: 226 g}");
        found("days/2026-05-09/pot.md:3:16: warning: “226 g” kept is 5.022 times the 45 g of needles that were dyed, more than "
                + "the 5 times that one expects at most; check both weights");
    }

    @ParameterizedTest
    @ValueSource(strings = {"90 g, how: dry", "225 g, how: damp", "41 g"})
    void wetOrGlycerinedNeedlesAreHeavier(String kept) {
        pot("kept: {weight: " + kept + "}");
        found();
    }

    @Test
    void acidAndAlkaliInOneBath() {
        pot("bath: {water: 3 L, assistants: [{is: soda, amount: 5 g}, {is: white-vinegar, amount: 60 mL}]}");
        found("days/2026-05-09/pot.md:3:63: warning: “White vinegar” is an acid, and “Washing soda”, an alkali, is in the same "
                + "bath: they cancel each other out, and may foam up; leave one out, or give each a bath of its own");
        pot("presoak: {water: 3 L, with: [{is: white-vinegar, amount: 60 mL}, {is: soda, amount: 5 g}]}");
        found("days/2026-05-09/pot.md:3:71: warning: “Washing soda” is an alkali, and “White vinegar”, an acid, is in the same "
                + "bath: they cancel each other out, and may foam up; leave one out, or give each a bath of its own");
    }

    @Test
    void acidAndAlkaliInBathsOfTheirOwn() {
        pot("presoak: {water: 3 L, with: [{is: soda, amount: 5 g}]}\n"
                + "bath: {water: 3 L, assistants: [{is: white-vinegar, amount: 60 mL}]}\n"
                + "after: [{as: scour, water: 3 L, with: [{is: soda, amount: 5 g}]}]\nfinish: [{is: white-vinegar, amount: 5 mL}]");
        found();
        pot("bath: {water: 3 L, assistants: [{is: sumac, amount: 50 g}, {is: soda, amount: 5 g}]}");
        found();
    }

    @Test
    void anAmountThatNobodyWrote() {
        pot("bath: {water: 3 L, dye: [{is: brick}], assistants: [{is: salt}]}");
        found("days/2026-05-09/pot.md:3:31: warning: no amount of “Brick”; what it comes to is not known; write how much it was "
                        + "(about is welcome), or take the line out",
                "days/2026-05-09/pot.md:3:58: warning: no amount of “Table salt”; what it comes to is not known; write how much "
                        + "it was (about is welcome), or take the line out");
    }

    @Test
    void aMethodMayLeaveAnAmountOpenAndItsEntryMayNot() {
        notebook.with("methods/open.md", "---\nfor: 50 g\nbath: {ratio: 60, dye: [{is: brick}]}\n---\n");
        found();
        pot("method: open");
        found("days/2026-05-09/pot.md:2:1: warning: no amount of “Brick” (methods/open.md:3:30); what it comes to is not known; "
                + "write how much it was (about is welcome), or take the line out");
    }

    @Test
    void whatNobodyMeasuresNeedsNoAmount() {
        pot("bath: {water: 3 L, assistants: [{is: sumac}]}\nfinish: [{is: salt}]");
        found();
    }

    @Test
    void aYearFarAheadIsNotToday() {
        day("2026-05-09");
        day("2026-06-09");
        day("2062-11-24");
        found("days/2062-11-24/pot.md:2:1: warning: this dye day, 2062-11-24, comes 36 years after the dye day before it, "
                + "2026-06-09, and does not count as today; check the year");
        assertEquals(Optional.of(LocalDate.parse("2026-06-09")), today());
        notebook.with("days/2062-11-24/pot.md", "---\nneedles: {weight: 45 g}\nkept: {weight: 41 g, since: 2062-11-25}\n---\n");
        assertEquals(1, proofed().size(), "what was kept of that day has the same year");
        day("2062-11-25");
        assertEquals(1, proofed().size());
        assertEquals(Optional.of(LocalDate.parse("2062-11-25")), today(), "two such days are no slip");
    }

    @Test
    void norIsAYearOfLongAgoADyeDay() {
        day("1926-05-09");
        day("2026-05-09");
        day("2026-06-09");
        found("days/1926-05-09/pot.md:2:1: warning: this dye day, 1926-05-09, comes 100 years before the next one, 2026-05-09; "
                + "check the year");
    }

    @Test
    void tenYearsAreAPause() {
        day("2016-05-09");
        day("2026-05-09");
        found();
        day("2015-05-09");
        found();
    }

    @Test
    void ofTwoDaysNobodyKnowsWhichIsWrong() {
        day("2026-05-09");
        day("2062-11-24");
        found("days/2062-11-24/pot.md:2:1: warning: this dye day, 2062-11-24, comes 36 years after the dye day before it, "
                + "2026-05-09; check the year");
        assertEquals(Optional.of(LocalDate.parse("2062-11-24")), today());
    }

    private Optional<LocalDate> today() {
        return Today.of(notebook.read().notebook());
    }

    private void day(String date) {
        notebook.with("days/" + date + "/pot.md", "---\nneedles: {weight: 45 g}\n---\n");
    }

    /** Writes 45 g, with lines of their own from line 3 on. */
    private void pot(String lines) {
        notebook.with("days/2026-05-09/pot.md", "---\nneedles: {weight: 45 g}\n" + lines + "\n---\n");
    }

    private void found(String... expected) {
        assertEquals(String.join("\n", expected), String.join("\n", proofed()));
    }

    private List<String> proofed() {
        var read = notebook.read();
        return Proofreading.of(read.notebook(), read.findings()).findings().stream().map(Finding::toString).toList();
    }
}
