package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.notebook.WrittenNotebook;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A maker asks the notebook from the terminal. */
class RecallTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void write() {
        WrittenNotebook.small(folder)
                .with("days/2025-04-01/rust.md", "---\ntitle: Rust on scalded pine\ntag: 123\n"
                        + "needles: {lot: scalded-2025, weight: 50 g}\ncolour: [{lab: [44, 22, 18]}]\n"
                        + "outcome: {verdict: partly}\n---\nToo pale for the lake basket.\n")
                .with("days/2026-05-09/brick.md", """
                        ---
                        title: Brick pot
                        tag: 41
                        method: low-water-simmer
                        needles: {lot: scalded-2025, weight: 40 g}
                        bath:
                          water: 2400 mL
                          dye: [{is: brick, amount: 2 % owf}]
                          assistants: [{is: white-vinegar, amount: 60 mL}]
                        colour: [{lab: [36.2, 27.4, 20.1]}, {hex: "#7f4632"}]
                        outcome: {verdict: worked, evenness: 4}
                        ---
                        Took evenly.
                        """)
                .with("days/2026-05-10/plain.md", "---\nneedles: {lot: scalded-2025}\n---\n");
    }

    private Call recall(Object... arguments) {
        List<Object> call = new ArrayList<>(List.of("recall", folder));
        call.addAll(List.of(arguments));
        return Call.of(call.toArray());
    }

    private static List<String> ids(Call call) {
        return StreamSupport.stream(JsonMapper.shared().readTree(call.out()).get("entries").spliterator(), false)
                .map(entry -> entry.get("id").asString()).toList();
    }

    @Test
    void anEntryIsToldInTwoLines() {
        Call told = recall("evenly").ends(0).says("1 entry.");
        assertEquals("""
                Brick pot · 9 May 2026 · Tag 41 · worked
                  2026-05-09-brick · Brick 2 % owf · White vinegar 60 mL · held 2 h at 88 °C · Evenness 4 of 5
                """, told.out().replace('\u202f', ' '));
        recall("plain").ends(0).prints("plain · 10 May 2026 · no verdict\n  2026-05-10-plain\n");
    }

    @Test
    void wordsATagAndChoicesNarrowTheAnswer() {
        assertEquals(List.of("2026-05-10-plain", "2026-05-09-brick", "2025-04-01-rust"), ids(recall("--json").ends(0)));
        assertEquals(List.of("2025-04-01-rust"), ids(recall("lake", "basket", "--json").ends(0)));
        assertEquals(List.of("2026-05-09-brick"), ids(recall("41", "--json").ends(0)));
        assertEquals(List.of("2026-05-10-plain", "2026-05-09-brick"),
                ids(recall("--condition", "SCALDED", "--year", "2026", "--json").ends(0)));
        assertEquals(List.of("2026-05-09-brick", "2025-04-01-rust"),
                ids(recall("--verdict", "worked", "--verdict", "partly", "--json").ends(0)));
        assertEquals(List.of("2026-05-09-brick"), ids(recall("--dye", "brick", "--lot", "scalded-2025", "--method",
                "low-water-simmer", "--json").ends(0)));
    }

    @Test
    void dataIsThatOfTheBookWithTheDifference() {
        JsonNode entries = JsonMapper.shared().readTree(recall("--near", "36.2,27.4,20.1", "--json").ends(0).out())
                .get("entries");
        assertEquals("2026-05-09-brick", entries.get(0).get("id").asString());
        assertEquals(41, entries.get(0).get("tag").asInt());
        assertEquals(2, entries.get(0).get("bath").get("dye").get(0).get("owf_percent").asDouble());
        assertTrue(entries.get(1).get("de00").asDouble() > entries.get(0).get("de00").asDouble());
        assertTrue(entries.get(2).get("de00").isNull());
        assertTrue(JsonMapper.shared().readTree(recall("--json").out()).get("entries").get(0).get("de00").isNull());
    }

    @Test
    void aColourIsNamedInAnyUsualWay() {
        for (String colour : List.of("#7f4632", "7F4632", "#abc", "abc", "36.2,27.4,20.1", "36.2 27.4 20.1", "50,-3,-4.5",
                "41", "2026-05-09-brick", "2026-05-09-BRICK")) {
            recall("--near", colour).ends(0).prints("ΔE00");
        }
        recall("--near", "123").says("“123” is taken as the tag of 2025-04-01-rust; write #123 for the screen colour.")
                .prints("ΔE00\u00a00.0");
        assertTrue(ids(recall("--near", "123", "--json")).get(0).equals("2025-04-01-rust"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --condition | scaled      | did you mean “scalded”?
            --lot       | scalded2025 | did you mean “scalded-2025”?
            --dye       | brik        | did you mean “brick”?
            --method    | low-water   | There is no method “low-water”
            --verdict   | worke       | did you mean “worked”?
            --verdict   | superb      | there are worked, partly, failed.
            --family    | brwn        | did you mean “brown”?
            --year      | 26          | write it with four digits
            --near      | #12345      | “#12345” is no colour
            --near      | 200,0,0     | a lightness outside 0 to 100
            --near      | 2026-05-09-brik | did you mean “2026-05-09-brick”?
            --near      | 2026-05-10-plain | has no colour in figures
            --order     | lightnes    | did you mean “lightness”?
            --order     | near        | needs a colour
            --shade     | dark        | There is no option “--shade”
            """)
    void whatIsNotKnownIsAWrongCall(String option, String value, String said) {
        Call wrong = recall(option, value).ends(2).says(said);
        assertEquals("", wrong.out());
    }

    @Test
    void nothingFoundIsSaidWithWhatToLeaveOut() {
        recall("evenly", "--year", "2025").ends(1)
                .says("Nothing matches. Without the words: 1 entry. Without --year: 1 entry.");
        recall("--dye", "brick", "--year", "2020").ends(1).says("Without --year: 1 entry.");
        assertEquals("{\"entries\":[]}", recall("xyz", "--json").ends(1).out().strip());
    }

    @Test
    void aSlipIsForgivenAndSaid() {
        recall("evnely").ends(0).says("No word begins with “evnely”; taken instead: evenly.", "1 entry.");
    }

    @Test
    void entriesWithErrorsAreLeftOutAndSaid() {
        WrittenNotebook.empty(folder).with("days/2026-05-11/faulty.md", "---\nneedles: {lot: nowhere}\n---\n");
        recall("brick").ends(0).says("1 file or pot has errors and could not be looked at; see: fascicle proof");
        WrittenNotebook.empty(folder).with("notebook.yaml", "title: [");
        recall("brick").ends(1);
        Call.of("recall", folder.resolve("nowhere")).ends(2);
    }

    @Test
    void aColourTerminalShowsTheReadingsAndNoOtherDoes() {
        StringWriter out = new StringWriter();
        Terminal watched = new Terminal(new PrintWriter(out), new PrintWriter(new StringWriter()), true);
        Fascicle.run(watched, "recall", folder.toString(), "41");
        watched.flush();
        // The first reading, Lab 36.2, 27.4, 20.1, and the second, #7f4632.
        assertEquals(watched.coloured(), out.toString().contains("\u001B[48;2;127;70;50m \u001B[0m "), out.toString());
        assertFalse(recall("41").out().contains("\u001B"));
    }

    @Test
    void theMakersWordsHoldNoOrdersToATerminal() {
        WrittenNotebook.empty(folder).with("days/2026-05-12/odd.md", "---\ntitle: \"red \\e[31m bell \\a\"\n---\n");
        recall("bell").ends(0).prints("red \ufffd[31m bell \ufffd");
    }
}
