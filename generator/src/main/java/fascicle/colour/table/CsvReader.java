package fascicle.colour.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a plain table whose cells are parted by tabs, semicolons or commas: whichever lets one of its first lines name
 * the columns of a colour. Lines above that one are titles; a table without any such line holds L*, a* and b* if each
 * of its lines is three numbers.
 */
final class CsvReader {

    private static final char[] SEPARATORS = {'\t', ';', ','};

    /** Meters put their titles above the columns; columns named further down are none. */
    private static final int FIRST_LINES = 60;

    private static final List<String> UNNAMED = List.of("L", "a", "b");

    private CsvReader() {}

    /** A text cut at one of the separators. */
    private static final Pattern LIGHT = Pattern.compile(
            "(?:ILLUMINANT|ILLUMINATION|OBSERVER|LIGHT|LIGHT SOURCE)(?:\\s*/\\s*OBSERVER)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern USUAL_LIGHT = Pattern.compile("(?:D50)?[\\s/]*(?:2\\s*(?:°|DEG.*)?)?",
            Pattern.CASE_INSENSITIVE);

    private record Cut(char separator, List<Row> rows) {}

    /** The table of a text. */
    static Sheet read(String text) throws UnreadableTable {
        List<Cut> cuts = new ArrayList<>();
        List<UnreadableTable> faults = new ArrayList<>();
        for (char separator : SEPARATORS) {
            try {
                cuts.add(new Cut(separator, cut(text, separator)));
            } catch (UnreadableTable fault) {
                // A wrong separator may make nonsense of sound quotes.
                faults.add(fault);
            }
        }
        for (Cut cut : cuts) {
            for (int i = 0; i < StrictMath.min(FIRST_LINES, cut.rows().size()); i++) {
                if (new Columns(cut.rows().get(i).cells()).complete()) {
                    return named(cut, i);
                }
            }
        }
        for (Cut cut : cuts) {
            if (!cut.rows().isEmpty() && threeNumbers(cut.rows().get(0))) {
                return sheet(cut, UNNAMED, 0, cut.rows(), Viewing.UNSAID);
            }
        }
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        return unnamed(cuts);
    }

    private static Sheet named(Cut cut, int header) throws UnreadableTable {
        Viewing viewing = Viewing.UNSAID;
        for (Row title : cut.rows().subList(0, header)) {
            viewing = Viewing.in(String.join(", ", title.without(0).cells())).over(viewing);
        }
        Row names = cut.rows().get(header).without(0);
        List<Row> rows = cut.rows().subList(header + 1, cut.rows().size());
        checkLight(names.cells(), rows);
        return sheet(cut, names.cells(), names.line(), rows, viewing);
    }

    /** A column that names the light or the observer of each reading must name those that readings are taken under. */
    private static void checkLight(List<String> names, List<Row> rows) throws UnreadableTable {
        for (int column = 0; column < names.size(); column++) {
            if (!LIGHT.matcher(names.get(column).strip()).matches()) {
                continue;
            }
            for (Row row : rows) {
                String cell = column < row.cells().size() ? row.cells().get(column).strip() : "";
                if (!USUAL_LIGHT.matcher(cell).matches()) {
                    throw new UnreadableTable(row.line(), "“" + cell + "” stands under “" + names.get(column)
                            + "”; export the readings for D50 and the 2° observer");
                }
            }
        }
    }

    private static Sheet sheet(Cut cut, List<String> columns, int line, List<Row> rows, Viewing viewing)
            throws UnreadableTable {
        List<Row> even = new ArrayList<>();
        for (Row row : rows) {
            Row trimmed = row.without(columns.size());
            if (trimmed.cells().size() != columns.size()) {
                boolean commas = cut.separator() == ',' && trimmed.cells().size() > columns.size();
                throw new UnreadableTable(row.line(), "the line has " + trimmed.cells().size() + " values, but there "
                        + "are " + columns.size() + " columns"
                        + (commas ? "; numbers with decimal commas need points, or semicolons between the cells" : ""));
            }
            even.add(trimmed);
        }
        return new Sheet(columns, line, even, viewing, Decimals.POINT_OR_COMMA);
    }

    /** No line names a colour: the one that comes nearest tells what is missing. */
    private static Sheet unnamed(List<Cut> cuts) throws UnreadableTable {
        Row nearest = new Row(1, List.of());
        int parts = -1;
        for (Cut cut : cuts) {
            for (Row row : cut.rows().subList(0, StrictMath.min(FIRST_LINES, cut.rows().size()))) {
                int found = new Columns(row.cells()).parts();
                if (found > parts || found == parts && row.cells().size() > nearest.cells().size()) {
                    nearest = row;
                    parts = found;
                }
            }
        }
        if (nearest.cells().stream().allMatch(Decimals.POINT_OR_COMMA::reads) && !nearest.cells().isEmpty()) {
            throw new UnreadableTable(nearest.line(), "no line names the columns, and here are "
                    + nearest.cells().size() + " numbers; without names there have to be three, L*, a* and b*, "
                    + "with decimal points");
        }
        return new Sheet(nearest.cells(), nearest.line(), List.of(), Viewing.UNSAID, Decimals.POINT_OR_COMMA);
    }

    private static boolean threeNumbers(Row row) {
        Row trimmed = row.without(UNNAMED.size());
        return trimmed.cells().size() == UNNAMED.size()
                && trimmed.cells().stream().allMatch(Decimals.POINT_OR_COMMA::reads);
    }

    /** The lines that are not blank. */
    private static List<Row> cut(String text, char separator) throws UnreadableTable {
        CSVFormat format = CSVFormat.DEFAULT.builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
        List<Row> rows = new ArrayList<>();
        long line = 0;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                List<String> cells = records.next().stream().map(String::strip).toList();
                Row row = new Row((int) line + 1, cells);
                line = parser.getCurrentLineNumber();
                if (!row.blank()) {
                    rows.add(row);
                }
            }
            return rows;
        } catch (IOException | UncheckedIOException broken) {
            throw new UnreadableTable((int) line + 1, "a quote opens and does not close, or something follows it");
        }
    }
}
