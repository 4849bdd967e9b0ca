package fascicle.book.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.book.Book;
import fascicle.book.gallery.Gallery;
import fascicle.book.theme.Theme;
import fascicle.book.theme.ThemeBroken;
import fascicle.notebook.Edition;
import fascicle.notebook.WrittenNotebook;
import fascicle.workings.Workings;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whoever works with the table has every figure of a bath that the data hold, and none of her own to work out. */
class BathsInTheTableTest {

    /** Where the data say otherwise than the table what a figure is called. */
    private static final Map<String, String> COLUMNS = Map.of("extract.of_g", "extract_of_g", "extract.water_ml",
            "extract_water_ml", "standing.liquor_ml", "standing_ml");

    @TempDir
    private Path folder;

    private List<JsonNode> entries;
    private List<CSVRecord> rows;

    @BeforeEach
    void aSoakedPotAndASecondBatchOfItsBath() throws IOException, ThemeBroken {
        WrittenNotebook notebook = WrittenNotebook.small(folder)
                .with("notebook.yaml", "form: 1\ntitle: Small\nkitchen: metric\nwater: {alkalinity: 90 mg/L, ph: 7.4}\n")
                .with("days/2026-05-09/first.md", """
                        ---
                        needles: {lot: scalded-2025, weight: 45 g}
                        presoak: {water: 3 L, with: [{is: white-vinegar, amount: 40 mL}], for: 1 h}
                        bath:
                          vessel: wide-pan
                          water: 2.2 L
                          dye: [{is: brick, amount: 2 % owf}]
                          assistants: [{is: white-vinegar, amount: 50 mL}]
                          extract: {of: 40 g, state: dried, water: 1.8 L}
                        glass: {left: 1.9 L}
                        ---
                        """)
                .with("days/2026-05-10/second.md", """
                        ---
                        needles: {lot: scalded-2025, weight: 30 g}
                        bath: {vessel: wide-pan, reuses: 2026-05-09-first, left: 30 %}
                        ---
                        """);
        Book book = Book.of(Workings.of(notebook.read().notebook()), Edition.STUDIO, Theme.shipped("longleaf"),
                Gallery.EMPTY);
        entries = new ArrayList<>(JsonMapper.shared().readTree(book.bytes("data/book.json")).get("entries").values());
        rows = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get()
                .parse(new StringReader(new String(book.bytes("data/entries.csv"), StandardCharsets.UTF_8))).getRecords();
    }

    @Test
    void everySingleFigureOfABathAndItsPresoakHasAColumn() {
        for (int place = 0; place < rows.size(); place++) {
            CSVRecord row = rows.get(place);
            figures(entries.get(place)).forEach((column, figure) -> {
                assertTrue(row.isMapped(column), "a column for " + column);
                assertEquals(figure, row.get(column), row.get("id") + ": " + column);
            });
        }
    }

    /** An unknown is an empty cell, as it is null in the data. */
    @Test
    void theColumnsHoldWhatTheyAreFor() {
        CSVRecord first = first("2026-05-09-first");
        for (String column : List.of("presoak_ph_estimate", "depth_cm", "filled_percent", "extract_of_g")) {
            assertTrue(new BigDecimal(first.get(column)).signum() > 0, column);
        }
        assertEquals("", first.get("standing_ml"));
        assertEquals("", first.get("reuses"));
        CSVRecord second = first("2026-05-10-second");
        assertEquals("1900", second.get("standing_ml"));
        assertEquals("2026-05-09-first", second.get("reuses"));
        assertEquals("", second.get("presoak_ph_estimate"));
    }

    private CSVRecord first(String id) {
        return rows.stream().filter(row -> row.get("id").equals(id)).findFirst().orElseThrow();
    }

    /** The figures of an entry's bath and presoak that stand alone, by the column that should hold them. */
    private static Map<String, String> figures(JsonNode entry) {
        Map<String, String> figures = new LinkedHashMap<>();
        add(figures, "", "", entry.get("bath"));
        add(figures, "", "extract.", entry.get("bath").get("extract"));
        JsonNode standing = entry.get("bath").get("standing");
        if (!standing.isNull()) {
            figures.put("standing_ml", plain(standing.get("liquor_ml")));
        }
        add(figures, "presoak_", "", entry.get("presoak"));
        return figures;
    }

    private static void add(Map<String, String> figures, String before, String of, JsonNode data) {
        data.properties().stream().filter(datum -> datum.getValue().isNumber()).forEach(datum -> figures.put(
                before + COLUMNS.getOrDefault(of + datum.getKey(), of + datum.getKey()), plain(datum.getValue())));
    }

    private static String plain(JsonNode datum) {
        return datum.isNull() ? "" : datum.decimalValue().toPlainString();
    }
}
