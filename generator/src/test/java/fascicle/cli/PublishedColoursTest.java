package fascicle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.CheckValues;
import fascicle.notebook.WrittenNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Published colours, pairs, names and grades, written into a notebook and read again from the book's data. The sources
 * stand beside the figures.
 */
class PublishedColoursTest {

    @TempDir
    Path folder;

    private JsonNode entries(WrittenNotebook written) throws IOException {
        Path book = folder.resolve("book");
        Call.of("publish", written.folder(), "--to", book).ends(0);
        return new ObjectMapper().readTree(Files.readAllBytes(book.resolve("data/book.json"))).get("entries");
    }

    private WrittenNotebook pots(List<String> pots) {
        return WrittenNotebook.small(folder.resolve("notebook")).with("days/2026-05-09/all.md", "---\nneedles: {lot: "
                + "scalded-2025, weight: 20 g}\nbath: {water: 1 L, dye: [{is: brick, amount: 1 % owf}]}\npots:\n"
                + String.join("", pots) + "---\n");
    }

    private static String lab(CheckValues.Row row, int which) {
        return "{lab: [" + row.text("L" + which) + ", " + row.text("a" + which) + ", " + row.text("b" + which) + "]}";
    }

    private static void each(JsonNode entries, List<CheckValues.Row> rows, Checked checked) {
        assertEquals(rows.size(), entries.size());
        for (int number = 0; number < rows.size(); number++) {
            checked.check(entries.get(number), rows.get(number));
        }
    }

    /** What is asked of an entry. */
    private interface Checked {
        void check(JsonNode entry, CheckValues.Row row);
    }

    private static String name(int number) {
        return "pot-" + (1000 + number);
    }

    private static List<String> written(List<CheckValues.Row> rows, java.util.function.Function<CheckValues.Row, String> keys) {
        return java.util.stream.IntStream.range(0, rows.size()).mapToObj(number -> "  - {name: " + name(number) + ", "
                + keys.apply(rows.get(number)) + "}\n").collect(Collectors.toList());
    }

    @Test
    void theThirtyFourPairs() throws IOException {
        List<CheckValues.Row> rows = CheckValues.rows("ciede2000.csv");
        each(entries(pots(written(rows, row -> "colour: [" + lab(row, 1) + "], target: " + lab(row, 2)))), rows,
                (entry, row) -> assertEquals(row.number("de00_published"),
                        entry.get("colour").get("target_de00").asDouble(), 1e-4, row.toString()));
    }

    @Test
    void theStandardsNames() throws IOException {
        List<CheckValues.Row> rows = CheckValues.rows("iscc-nbs.csv");
        each(entries(pots(written(rows, row -> "colour: [{hex: \"" + row.text("centroid_hex") + "\"}]"))), rows,
                (entry, row) -> {
                    assertEquals(row.text("name"), entry.get("colour").get("name").asString());
                    assertEquals(row.text("level1"), entry.get("colour").get("family").asString());
                });
    }

    @Test
    void screenColoursAndLabUnderBothWhites() throws IOException {
        List<CheckValues.Row> rows = CheckValues.rows("lab-srgb.csv").stream()
                .filter(row -> row.number("js_L50") <= 100).toList();
        each(entries(pots(written(rows, row -> "colour: [{lab: [" + row.text("js_L65") + ", " + row.text("js_a65") + ", "
                        + row.text("js_b65") + "], white: D65}], target: {hex: \"" + row.text("hex") + "\"}"))), rows,
                (entry, row) -> {
                    JsonNode colour = entry.get("colour");
                    assertEquals(row.number("js_L50"), colour.get("lab").get(0).asDouble(), 2e-4);
                    assertEquals(row.number("js_a50"), colour.get("lab").get(1).asDouble(), 2e-4);
                    assertEquals(row.number("js_b50"), colour.get("lab").get(2).asDouble(), 2e-4);
                    assertEquals(row.text("hex"), colour.get("hex").asString());
                    assertTrue(colour.get("target_de00").asDouble() < 1e-3, row.toString());
                });
    }

    @Test
    void fadingIsGradedAsTheStandardGradesIt() throws IOException {
        List<CheckValues.Row> rows = CheckValues.rows("grey-scale.csv").stream()
                .filter(row -> row.text("method").equals("A05")).toList();
        each(entries(pots(written(rows, row -> "colour: [" + lab(row, 1) + "], window: [{after: 2 weeks, "
                        + lab(row, 2).substring(1) + "]"))), rows, (entry, row) -> {
                    JsonNode window = entry.get("window").get(0);
                    assertEquals(row.text("grade"), window.get("grade").asString(), row.toString());
                    assertEquals(14, window.get("after_days").asDouble());
                });
    }

    @Test
    void aRubbedClothIsGradedAsTheStandardGradesIt() throws IOException {
        List<CheckValues.Row> rows = CheckValues.rows("grey-scale.csv").stream()
                .filter(row -> row.text("method").equals("A04")).toList();
        each(entries(pots(written(rows, row -> "fastness: {rub-dry: {before: " + lab(row, 1) + ", after: "
                        + lab(row, 2) + "}, rub-wet: 3-4}"))), rows, (entry, row) -> {
                    assertEquals(row.text("grade"), entry.get("fastness").get("rub_dry").asString(), row.toString());
                    assertEquals("3-4", entry.get("fastness").get("rub_wet").asString());
                });
    }

    @Test
    void unlevelnessIsTheMeanDifferenceFromTheMean() throws IOException {
        String readings = CheckValues.rows("unlevelness.csv").stream().map(row -> "{lab: [" + row.text("L") + ", "
                + row.text("a") + ", " + row.text("b") + "]}").collect(Collectors.joining(", "));
        JsonNode colour = entries(pots(List.of("  - {name: five, colour: [" + readings + "]}\n"))).get(0).get("colour");
        assertEquals(0.3413, colour.get("unlevelness_de00").asDouble(), 5e-5);
        assertEquals(5, colour.get("readings").asInt());
        assertEquals(1, colour.get("uncertainty_de00").asDouble());
    }

    @Test
    void aTableOfAMeterIsAsManyReadings() throws IOException {
        String table = CheckValues.rows("unlevelness.csv").stream().map(row -> row.text("L") + " " + row.text("a") + " "
                + row.text("b") + "\n").collect(Collectors.joining());
        WrittenNotebook written = pots(List.of("  - {name: five, colour: [{file: bench.txt}]}\n")).with(
                "days/2026-05-09/bench.txt", "CGATS.17\nNUMBER_OF_FIELDS 3\nBEGIN_DATA_FORMAT\nLAB_L LAB_A LAB_B\n"
                        + "END_DATA_FORMAT\nNUMBER_OF_SETS 5\nBEGIN_DATA\n" + table + "END_DATA\n");
        JsonNode colour = entries(written).get(0).get("colour");
        assertEquals(0.3413, colour.get("unlevelness_de00").asDouble(), 5e-5);
        assertEquals(5, colour.get("readings").asInt());
        assertEquals("lab", colour.get("by").asString());
    }

    @Test
    void aTableThatCannotBeReadIsAFindingWhereItIsNamedAndTheRestGoesOn() throws IOException {
        WrittenNotebook written = pots(List.of("  - {name: good, colour: [{lab: [40, 20, 20]}]}\n",
                "  - {name: torn, colour: [{file: bench.txt}]}\n")).with("days/2026-05-09/bench.txt",
                "CGATS.17\nBEGIN_DATA_FORMAT\nLAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n36,2 27.4 20.1\nEND_DATA\n");
        Call.of("publish", written.folder(), "--to", folder.resolve("book"), "--despite-errors").ends(0)
                .says("days/2026-05-09/all.md:6:34: error: the table “bench.txt” cannot be read: in line 6:", "36,2");
        Call.of("proof", written.folder()).prints("decimal comma").ends(1);
        assertFalse(Call.of("proof", written.folder()).out().contains("is not read"));
        String json = Files.readString(folder.resolve("book/data/book.json"));
        assertTrue(json.contains("2026-05-09-good") && !json.contains("\"id\":\"2026-05-09-torn\""), json);
    }
}
