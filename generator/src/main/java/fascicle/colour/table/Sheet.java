package fascicle.colour.table;

import java.util.List;

/**
 * A table whose form is understood and whose colours are not yet.
 *
 * @param columns the names of its columns
 * @param line where they stand in the file, counted from 1
 * @param rows its lines, each with as many cells as there are columns
 * @param viewing under which light its Lab and XYZ are meant, as far as the table says so as a whole
 * @param decimals what may stand before a number's decimals
 */
record Sheet(List<String> columns, int line, List<Row> rows, Viewing viewing, Decimals decimals) {

    Sheet {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** The number in a cell. */
    double number(Row row, Heading heading) throws UnreadableTable {
        return decimals.read(row.cells().get(heading.column()), heading.name(), row.line());
    }

    /** The numbers of a row in the order of these columns. */
    double[] numbers(Row row, List<Heading> headings) throws UnreadableTable {
        double[] numbers = new double[headings.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = number(row, headings.get(i));
        }
        return numbers;
    }
}
