package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** {@code data/entries.csv} opens in a spreadsheet, holds the figures of {@code data/book.json}, and runs nothing. */
class TableOfEntriesTest {

    /** Where in an entry's data a column's cell stands. */
    private static final Map<String, String> PLACES = places();

    /** Where in an entry's data the list stands that a column's cell puts in a row, and of what in each item. */
    private static final Map<String, Map.Entry<String, String>> LISTS = lists();

    private static Map<String, String> places() {
        Map<String, String> places = new TreeMap<>();
        Stream.of("id", "tag", "title", "date", "method", "share").forEach(key -> places.put(key, "/" + key));
        Stream.of("lot", "from", "condition", "species", "weight_g", "weighed")
                .forEach(key -> places.put(key, "/needles/" + key));
        Stream.of("water_ml", "liquor_ml", "ratio", "vessel", "ph_measured", "ph_estimate", "ph_after_heating",
                        "depth_cm", "filled_percent", "reuses")
                .forEach(key -> places.put(key, "/bath/" + key));
        places.put("extract_of_g", "/bath/extract/of_g");
        places.put("extract_water_ml", "/bath/extract/water_ml");
        places.put("standing_ml", "/bath/standing/liquor_ml");
        places.put("presoak_ph_estimate", "/presoak/ph_estimate");
        places.put("presoak_water_ml", "/presoak/water_ml");
        places.put("presoak_liquor_ml", "/presoak/liquor_ml");
        Stream.of("minutes_above_80c", "minutes_total", "peak_c").forEach(key -> places.put(key, "/heat/" + key));
        places.put("lab_l", "/colour/lab/0");
        places.put("lab_a", "/colour/lab/1");
        places.put("lab_b", "/colour/lab/2");
        Stream.of("hex", "readings", "by", "unlevelness_de00", "name", "family", "chroma", "hue_deg", "shift_de00",
                        "target_de00", "shift_tone", "uncertainty_de00")
                .forEach(key -> places.put(key, "/colour/" + key));
        Stream.of("verdict", "evenness", "feel").forEach(key -> places.put(key, "/outcome/" + key));
        Stream.of("rub_dry", "rub_wet").forEach(key -> places.put(key, "/fastness/" + key));
        places.put("taken_up_percent", "/glass/taken_up_percent");
        places.put("taken_up_low", "/glass/low");
        places.put("taken_up_high", "/glass/high");
        places.put("kept_left_g", "/kept/left_g");
        places.put("kept_how", "/kept/how");
        places.put("kept_use_by", "/kept/use_by");
        places.put("cost_total", "/cost/total");
        places.put("cost_per_100g", "/cost/per_100g");
        return places;
    }

    private static Map<String, Map.Entry<String, String>> lists() {
        Map<String, Map.Entry<String, String>> lists = new TreeMap<>();
        for (String parts : List.of("dye", "assistants")) {
            lists.put(parts, Map.entry("/bath/" + parts, "is"));
            Stream.of("as_written", "g", "ml", "owf_percent", "g_per_l")
                    .forEach(key -> lists.put(parts + "_" + key, Map.entry("/bath/" + parts, key)));
        }
        lists.put("window_after_days", Map.entry("/window", "after_days"));
        lists.put("window_de00", Map.entry("/window", "de00"));
        lists.put("window_grade", Map.entry("/window", "grade"));
        lists.put("faults", Map.entry("/outcome/faults", ""));
        return lists;
    }

    @ParameterizedTest
    @EnumSource
    void every_cell_is_what_the_data_say(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        Table table = Table.of(book.text("data/entries.csv"));
        List<JsonNode> entries = book.data().required("entries").valueStream().toList();
        assertEquals(entries.size(), table.rows().size());
        assertAll(entries.stream().map(entry -> () -> {
            Map<String, String> row = table.rows().get(entries.indexOf(entry));
            String id = entry.required("id").asString();
            row.forEach((column, cell) -> {
                String where = id + ": " + column;
                if (LISTS.containsKey(column)) {
                    assertEquals(inARow(entry, LISTS.get(column)), cell, where);
                } else {
                    assertTrue(PLACES.containsKey(column), "an unknown column: " + column);
                    agrees(entry.at(PLACES.get(column)), cell, where);
                }
            });
        }));
    }

    @ParameterizedTest
    @EnumSource
    void the_table_has_a_column_for_every_figure(Edition edition) {
        List<String> columns = Table.of(PublishedBook.ofTheDemo(edition).text("data/entries.csv")).columns();
        List<String> missing = Stream.concat(PLACES.keySet().stream(), LISTS.keySet().stream())
                .filter(column -> edition == Edition.STUDIO || !column.startsWith("kept") && !column.startsWith("cost"))
                .filter(column -> !columns.contains(column))
                .toList();
        assertEquals(List.of(), missing);
    }

    @ParameterizedTest
    @EnumSource
    void no_cell_of_text_begins_a_formula(Edition edition) {
        Table table = Table.of(PublishedBook.ofTheDemo(edition).text("data/entries.csv"));
        for (Map<String, String> row : table.rows()) {
            row.forEach((column, cell) -> assertFalse(
                    cell.matches("(?s)\\s*[=+\\-@\t\r＝＋－＠].*") && !cell.matches("-[0-9.]+"),
                    row.get("id") + ": " + column + ": " + cell));
        }
    }

    @Test
    void the_reader_of_these_tests_knows_quotes_and_line_ends() {
        Table table = Table.of("id,title\r\na,\"one, \"\"two\"\"\r\nthree\"\r\nb,\r\n");
        assertEquals(
                List.of(Map.of("id", "a", "title", "one, \"two\"\r\nthree"), Map.of("id", "b", "title", "")),
                table.rows());
    }

    private static void agrees(JsonNode datum, String cell, String where) {
        if (datum.isNull() || datum.isMissingNode()) {
            assertEquals("", cell, where);
        } else if (datum.isNumber()) {
            assertEquals(0, new BigDecimal(cell).compareTo(datum.decimalValue()), where + ": " + cell + ", " + datum);
        } else {
            assertEquals(datum.asString(), cell, where);
        }
    }

    private static String inARow(JsonNode entry, Map.Entry<String, String> list) {
        return entry.at(list.getKey()).valueStream()
                .map(item -> list.getValue().isEmpty() ? item : item.required(list.getValue()))
                .map(item -> item.isNumber() ? item.decimalValue().toPlainString() : item.asString(""))
                .collect(Collectors.joining("; "));
    }

    /** A table after RFC 4180, read strictly. */
    record Table(List<String> columns, List<Map<String, String>> rows) {

        static Table of(String text) {
            List<List<String>> records = records(text);
            List<String> columns = records.get(0);
            assertEquals(columns.size(), columns.stream().distinct().count(), "columns: " + columns);
            List<Map<String, String>> rows = new ArrayList<>();
            for (List<String> cells : records.subList(1, records.size())) {
                assertEquals(columns.size(), cells.size(), "cells of " + cells);
                Map<String, String> row = new TreeMap<>();
                for (int i = 0; i < cells.size(); i++) {
                    row.put(columns.get(i), cells.get(i));
                }
                rows.add(row);
            }
            return new Table(columns, rows);
        }

        private static List<List<String>> records(String text) {
            List<List<String>> records = new ArrayList<>();
            List<String> record = new ArrayList<>();
            int at = 0;
            while (at < text.length()) {
                StringBuilder cell = new StringBuilder();
                at = text.charAt(at) == '"' ? quoted(text, at, cell) : bare(text, at, cell);
                record.add(cell.toString());
                assertTrue(at < text.length(), "the last line has no end");
                if (text.charAt(at) == ',') {
                    at++;
                    assertFalse(at == text.length(), "a cell is missing at the end");
                    continue;
                }
                assertTrue(text.startsWith("\r\n", at), "a line ends otherwise than by CR LF, at " + at);
                at += 2;
                records.add(record);
                record = new ArrayList<>();
            }
            assertEquals(List.of(), record);
            return records;
        }

        private static int quoted(String text, int from, StringBuilder cell) {
            int at = from + 1;
            while (true) {
                int quote = text.indexOf('"', at);
                assertTrue(quote >= 0, "a quote is not closed, at " + from);
                cell.append(text, at, quote);
                if (!text.startsWith("\"\"", quote)) {
                    return quote + 1;
                }
                cell.append('"');
                at = quote + 2;
            }
        }

        private static int bare(String text, int from, StringBuilder cell) {
            int at = from;
            while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
                assertTrue(text.charAt(at) != '"', "a quote in a bare cell, at " + at);
                cell.append(text.charAt(at++));
            }
            return at;
        }
    }
}
