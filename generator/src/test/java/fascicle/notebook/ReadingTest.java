package fascicle.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.bath.Amount;
import fascicle.bath.Basis;
import fascicle.notebook.edition.EditionCut;
import fascicle.notebook.read.NotebookReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a maker writes is in the notebook's records, with its place and its origin; nothing is dropped. */
class ReadingTest {

    @TempDir
    private Path folder;

    private Entry entry(String keys) {
        NotebookReader.Result result = WrittenNotebook.small(folder)
                .with("days/2026-05-01/sample.md", "---\ntag: 40\n---\n")
                .with("days/2026-05-09/brick.md", "---\n" + keys + "---\nWords.\n").read();
        assertEquals(List.of(), result.findings());
        return result.notebook().entry("2026-05-09-brick").orElseThrow();
    }

    @Test
    void anEntryKeepsEverythingItSays() {
        Entry entry = entry("""
                title: Brick
                tag: 41
                needles: {lot: scalded-2025, weight: about 45 g, sheaths: off, weighed: guessed}
                presoak: {water: 6 L, with: [{is: white-vinegar, amount: 250 mL}], for: overnight}
                before: [{as: mordant, water: 3 L, with: [{is: salt, amount: 10 % owf}], heat: [{to: 80 °C, hold: 1 h}]}]
                bath:
                  vessel: wide-pan
                  depth: 7 cm
                  from: rain
                  dye: [{is: brick, amount: 1 1/2 tsp, at: 20 min, by: batch}]
                  extract: {of: 200 g, state: dried, water: 3 L, heat: [{to: simmer, hold: 1 h}]}
                  ph: {reads: 4, with: strip}
                heat: [{to: 190 °F, over: 30 min, hold: 2 h, on: oven}]
                cool: overnight
                dry: 1 day
                rinse: after-drying
                finish: [{is: white-vinegar, amount: a splash}]
                colour: [{lab: [36.2, 27.4, 20.1]}, {hex: "#7f4632", when: wet}, {like: 40, but: redder}]
                glass: {before: {hex: "#a03020"}, diluted: 2, left: 2.4 L}
                target: {hex: "#8a3b2a"}
                outcome: {verdict: partly, evenness: 4, feel: stiff, faults: [pale, off-shade]}
                fastness: {rub-dry: 4-5, rub-wet: 3}
                window: [{after: 6 weeks, lab: [40.1, 22.0, 18.2]}]
                kept: {weight: 41 g, how: damp, since: 2026-05-11, used: [{weight: 10 g, in: lake-basket}]}
                share: open
                """);
        assertEquals("2026-05-09-brick", entry.id());
        assertEquals(LocalDate.of(2026, 5, 9), entry.date());
        assertEquals("41", entry.tag().orElseThrow().value());
        assertTrue(entry.needles().weight().orElseThrow().value().about());
        assertEquals(Needles.Weighed.GUESSED, entry.needles().state());
        assertEquals(Needles.Sheaths.OFF, entry.needles().sheaths().orElseThrow().value());
        assertEquals(new Span.Overnight(), entry.recipe().presoak().orElseThrow().time().orElseThrow().value());
        assertEquals(Recipe.Purpose.MORDANT, entry.recipe().before().get(0).as().orElseThrow().value());
        Bath bath = entry.recipe().bath();
        assertTrue(bath.water().orElseThrow().value() instanceof Water.ByDepth);
        assertEquals(Bath.Source.RAIN, bath.from().orElseThrow().value());
        Part dye = bath.dye().get(0);
        assertEquals(7.5, ((Amount.Measured) dye.amount().orElseThrow().value()).volume().value());
        assertEquals("1 1/2 tsp", dye.amount().orElseThrow().written());
        assertEquals(Basis.BATCH, dye.by().orElseThrow().value());
        assertTrue(dye.at().isPresent());
        assertEquals("dried", bath.extract().orElseThrow().state().orElseThrow().value());
        assertEquals(Bath.PhTool.STRIP, bath.ph().orElseThrow().with().orElseThrow().value());
        HeatStep.Degrees degrees = (HeatStep.Degrees) entry.recipe().heat().get(0).to().orElseThrow().value();
        // NIST Handbook 44 App. C: °C = (°F − 32)·5/9
        assertEquals((190 - 32) * 5 / 9.0, degrees.temperature().value(), 1e-12);
        assertEquals(HeatStep.Source.OVEN, entry.recipe().heat().get(0).on().orElseThrow().value());
        assertEquals("a splash", entry.recipe().finish().get(0).amount().orElseThrow().written());
        assertEquals(1, Reading.comparable(entry.colour()).size());
        assertEquals(3, entry.colour().size());
        assertEquals(2.0, entry.glass().orElseThrow().diluted().before().orElseThrow().value());
        assertEquals(2.0, entry.glass().orElseThrow().diluted().after().orElseThrow().value());
        assertEquals(List.of(Outcome.Fault.PALE, Outcome.Fault.OFF_SHADE),
                entry.outcome().orElseThrow().faults().stream().map(Noted::value).toList());
        assertEquals("4-5", entry.fastness().flatMap(Fastness::rubDry).map(rub -> (Fastness.Rub.Graded) rub)
                .orElseThrow().grade().value().toString());
        assertEquals(6 * 7 * 24 * 60, entry.window().get(0).after().value().value());
        assertEquals("lake-basket", entry.kept().orElseThrow().used().get(0).in().orElseThrow().value());
        assertEquals(Edition.OPEN, entry.share());
        assertEquals("Words.\n", entry.notes().get(0).markdown());
    }

    @Test
    void valuesKnowTheirPlaceAndAnEmojiCountsAsOneCharacter() {
        Entry entry = entry("""
                title: "🌲🌲 Brick"
                needles: {lot: scalded-2025, weight: 45 g}
                """);
        assertEquals(new Place("days/2026-05-09/brick.md", 2, 8), entry.title().orElseThrow().place());
        assertEquals(new Place("days/2026-05-09/brick.md", 3, 38), entry.needles().weight().orElseThrow().place());
    }

    @Test
    void whatAnEntryLeavesOutComesFromItsMethodAndSaysSo() {
        Entry entry = entry("""
                method: low-water-simmer
                needles: {lot: scalded-2025, weight: 45 g}
                bath: {ratio: 60}
                """);
        assertEquals(new Origin.Method("low-water-simmer"),
                entry.recipe().bath().vessel().orElseThrow().origin());
        assertTrue(entry.recipe().bath().water().orElseThrow().value() instanceof Water.ByRatio,
                "water, ratio and depth are one choice");
        assertEquals(Origin.OWN, entry.recipe().bath().water().orElseThrow().origin());
        assertEquals(1, entry.recipe().bath().assistants().size());
        assertEquals(Optional.empty(), entry.title(), "a title is never taken from a method");
    }

    @Test
    void eachValueOfAChainOfMethodsComesFromTheMethodThatWroteIt() {
        WrittenNotebook.small(folder).with("methods/warmer.md", """
                ---
                method: low-water-simmer
                bath: {ratio: 80, dye: [{is: brick, amount: 1 g}]}
                ---
                """);
        NotebookReader.Result result = WrittenNotebook.empty(folder).with("days/2026-05-09/brick.md",
                "---\nmethod: warmer\nneedles: {lot: scalded-2025, weight: 45 g}\n---\n").read();
        Bath bath = result.notebook().entries().get(0).recipe().bath();
        assertEquals(new Origin.Method("warmer"), bath.dye().get(0).is().origin());
        assertEquals(new Origin.Method("low-water-simmer"), bath.assistants().get(0).is().origin());
        assertEquals("50 g", result.notebook().method("warmer").orElseThrow().forWeight().orElseThrow().written(),
                "the weight amounts are for is handed on");
    }

    @Test
    void listsReplaceWhole() {
        Entry entry = entry("""
                method: low-water-simmer
                needles: {lot: scalded-2025, weight: 45 g}
                bath: {assistants: [{is: white-vinegar, amount: 10 mL}]}
                """);
        assertEquals(List.of("white-vinegar"),
                entry.recipe().bath().assistants().stream().map(part -> part.is().value()).toList());
    }

    @Test
    void potsTakeWhatTheirFileSharesAndTheirOwnSections() {
        Notebook notebook = WrittenNotebook.small(folder).with("days/2026-05-09/pots.md", """
                ---
                method: low-water-simmer
                presoak: {water: 6 L}
                outcome: {verdict: worked}
                pots:
                  - {name: one, title: The first, needles: {lot: scalded-2025, weight: 45 g}}
                  - {name: two, needles: {lot: scalded-2025, weight: 30 g}, outcome: {evenness: 3}}
                ---
                Of the day.

                # THE FIRST

                Of one.

                # two (studio only)

                Of two.
                """).read().notebook();
        Entry one = notebook.entry("2026-05-09-one").orElseThrow();
        Entry two = notebook.entry("2026-05-09-TWO").orElseThrow();
        assertEquals(Origin.SHARED, one.recipe().presoak().orElseThrow().origin());
        assertEquals(Outcome.Verdict.WORKED, two.verdict().orElseThrow());
        assertEquals(3, two.outcome().orElseThrow().evenness().orElseThrow().value());
        assertEquals("Of one.", one.notes().get(0).markdown().strip());
        assertEquals(Edition.STUDIO, two.notes().get(0).share());
        assertEquals("Of the day.", notebook.days().get(0).notes().get(0).markdown().strip());
    }

    @Test
    void oneFaultyPotHidesNoOther() {
        Notebook notebook = WrittenNotebook.small(folder).with("days/2026-05-09/pots.md", """
                ---
                pots:
                  - {name: good, needles: {lot: scalded-2025, weight: 45 g}}
                  - {name: bad, needles: {lot: scalded-2025, weight: 45 grm}}
                ---
                """).read().notebook();
        assertEquals(List.of("2026-05-09-good"), notebook.entries().stream().map(Entry::id).toList());
        assertEquals(List.of("2026-05-09-bad"), notebook.missing().stream().map(Missing::what).toList());
    }

    @Test
    void aFaultyMethodTakesItsFollowersWithItAndSaysWhy() {
        NotebookReader.Result result = WrittenNotebook.small(folder)
                .with("methods/low-water-simmer.md", "---\nbath: {water: 3 lumps\n---\n")
                .with("days/2026-05-09/follower.md", "---\nmethod: low-water-simmer\n---\n")
                .with("days/2026-05-09/other.md", "---\nneedles: {lot: scalded-2025, weight: 45 g}\n---\n").read();
        assertEquals(List.of("2026-05-09-other"), result.notebook().entries().stream().map(Entry::id).toList());
        assertTrue(result.notebook().missing().stream().anyMatch(missing ->
                missing.what().equals("2026-05-09-follower") && missing.why().get(0).contains("low-water-simmer")));
    }

    @Test
    void aFaultyDyeLeavesItsNameAndNoHalfTruth() {
        Notebook notebook = WrittenNotebook.small(folder)
                .with("dyes/brick.md", "---\nkind: dye\nform: powder\ndensity: 0.6 lumps\n---\n")
                .with("days/2026-05-09/a.md", "---\nbath: {dye: [{is: brick, amount: 1 tsp}]}\n---\n").read().notebook();
        assertEquals(1, notebook.entries().size());
        Dye brick = notebook.dyes().stream().filter(dye -> dye.id().equals("brick")).findFirst().orElseThrow();
        assertEquals(Optional.empty(), brick.form());
    }

    @Test
    void whatIsNotUtf8IsSaidWithItsLineAndColumn() {
        byte[] bytes = "---\ntitle: Fohre\n---\n".getBytes(StandardCharsets.UTF_8);
        bytes[12] = (byte) 0xF6;
        List<String> findings = WrittenNotebook.small(folder).with("days/2026-05-09/a.md", bytes).findings();
        assertEquals(1, findings.size());
        assertTrue(findings.get(0).startsWith("days/2026-05-09/a.md:2:9: error: this file is not UTF-8"),
                findings.get(0));
    }

    @Test
    void windowsLineEndsAndAByteOrderMarkAreReadSilently() {
        Notebook notebook = WrittenNotebook.small(folder).with("days/2026-05-09/a.md",
                "\uFEFF---\r\ntitle: Brick\r\n---\r\nWords.\r\n").read().notebook();
        assertEquals("Brick", notebook.entries().get(0).called());
    }

    @Test
    void anEditionBelowTheStudioKnowsNothingOfWhatWasKept() {
        Notebook notebook = WrittenNotebook.small(folder).with("days/2026-05-09/a.md", """
                ---
                share: open
                needles: {lot: scalded-2025, weight: 45 g}
                kept: {weight: 41 g}
                ---
                """).read().notebook();
        assertTrue(EditionCut.of(notebook, Edition.STUDIO).entries().get(0).kept().isPresent());
        assertTrue(EditionCut.of(notebook, Edition.OPEN).entries().get(0).kept().isEmpty());
        assertEquals(Optional.empty(), EditionCut.of(notebook, Edition.OPEN).lots().get(0).weight());
    }
}
