package fascicle.photo;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Published columns of figures, one line a wavelength; the lines marked # of the file name their sources. */
record Table(List<String> columns, double[][] rows) {

    static Table read(String file) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Table.class.getResourceAsStream(file), file), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().filter(line -> !line.startsWith("#")).toList();
            double[][] rows = lines.stream().skip(1).map(Table::numbers).toArray(double[][]::new);
            return new Table(List.of(lines.get(0).split(",")), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double[] column(String name) {
        int index = columns.indexOf(name);
        double[] column = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            column[i] = rows[i][index];
        }
        return column;
    }

    private static double[] numbers(String line) {
        return List.of(line.split(",")).stream().mapToDouble(Double::parseDouble).toArray();
    }
}
