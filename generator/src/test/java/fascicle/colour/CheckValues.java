package fascicle.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Published values to check against: a CSV file whose first lines, marked #, name its sources. */
public final class CheckValues {

    private CheckValues() {}

    /** One line of the file: its cells by the names of their columns. */
    public record Row(Map<String, String> cells) {

        /** A cell. */
        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), () -> "no column " + column + " in " + cells);
        }

        /** A cell's number. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** Three cells as a colour. */
        public Lab lab(String lightness, String a, String b) {
            return new Lab(number(lightness), number(a), number(b));
        }
    }

    /** The lines of a file of check values. */
    public static List<Row> rows(String file) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(CheckValues.class.getResourceAsStream(file), file), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().filter(line -> !line.startsWith("#")).toList();
            String[] columns = lines.get(0).split(",");
            List<Row> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < columns.length; i++) {
                    row.put(columns[i], cells[i]);
                }
                rows.add(new Row(row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
