package fascicle.colour.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the keyword form of CGATS.17 and ISO 28178: lines of keywords, then the names of the columns between
 * {@code BEGIN_DATA_FORMAT} and {@code END_DATA_FORMAT}, then one reading a line between {@code BEGIN_DATA} and
 * {@code END_DATA}. Columns and what was said of the light hold for further tables of the file until they are said
 * anew.
 */
final class CgatsReader {

    private static final String COLUMNS_BEGIN = "BEGIN_DATA_FORMAT";
    private static final String COLUMNS_END = "END_DATA_FORMAT";
    private static final String READINGS_BEGIN = "BEGIN_DATA";
    private static final String READINGS_END = "END_DATA";

    private final CgatsLines lines;
    private final List<Sheet> sheets = new ArrayList<>();

    private List<String> columns = List.of();
    private int columnsLine;
    private Viewing viewing = Viewing.UNSAID;
    private Optional<Count> fields = Optional.empty();
    private Optional<Count> sets = Optional.empty();

    private CgatsReader(String text) throws UnreadableTable {
        this.lines = new CgatsLines(text);
    }

    /** How many there should be, and where that stands. */
    private record Count(int number, int line) {}

    /** Whether a text is in this form. */
    static boolean suits(String text) {
        return text.lines().map(String::strip).anyMatch(
                line -> keyword(line, COLUMNS_BEGIN) || keyword(line, READINGS_BEGIN))
                || text.stripLeading().regionMatches(true, 0, "CGATS.", 0, 6);
    }

    /** The tables of a text, as many as there are. */
    static List<Sheet> read(String text) throws UnreadableTable {
        CgatsReader reader = new CgatsReader(text);
        while (reader.lines.hasNext()) {
            reader.line(reader.lines.next());
        }
        return reader.sheets;
    }

    private void line(Row row) throws UnreadableTable {
        String first = row.cells().get(0);
        List<String> rest = row.cells().subList(1, row.cells().size());
        switch (first) {
            case COLUMNS_BEGIN -> columns(row.line(), rest);
            case READINGS_BEGIN -> readings(row.line(), rest);
            case "NUMBER_OF_FIELDS" -> fields = Optional.of(count(row));
            case "NUMBER_OF_SETS" -> sets = Optional.of(count(row));
            default -> viewing = Viewing.in(String.join(" ", row.cells())).over(viewing);
        }
    }

    private void columns(int line, List<String> first) throws UnreadableTable {
        List<String> names = new ArrayList<>();
        Row row = new Row(line, first);
        while (!row.cells().contains(COLUMNS_END)) {
            names.addAll(row.cells());
            row = following(line, COLUMNS_BEGIN, COLUMNS_END);
        }
        names.addAll(row.cells().subList(0, row.cells().indexOf(COLUMNS_END)));
        columns = names;
        columnsLine = line;
    }

    private void readings(int line, List<String> first) throws UnreadableTable {
        if (columns.isEmpty()) {
            throw new UnreadableTable(line, "the readings begin, but no " + COLUMNS_BEGIN + " … " + COLUMNS_END
                    + " before them names their columns; export the table again");
        }
        if (fields.isPresent() && fields.get().number() != columns.size()) {
            throw new UnreadableTable(fields.get().line(), "NUMBER_OF_FIELDS is " + fields.get().number() + ", but "
                    + columns.size() + " columns are named; export the table again");
        }
        fields = Optional.empty();
        List<Row> rows = new ArrayList<>();
        Row row = new Row(line, first);
        while (!row.cells().contains(READINGS_END)) {
            add(row, rows);
            row = following(line, READINGS_BEGIN, READINGS_END);
        }
        add(new Row(row.line(), row.cells().subList(0, row.cells().indexOf(READINGS_END))), rows);
        if (sets.isPresent() && sets.get().number() != rows.size()) {
            throw new UnreadableTable(sets.get().line(), "NUMBER_OF_SETS is " + sets.get().number() + ", but the "
                    + "readings are " + rows.size() + "; the file may be cut short, export it again");
        }
        sets = Optional.empty();
        sheets.add(new Sheet(columns, columnsLine, rows, viewing, Decimals.POINT));
    }

    private void add(Row row, List<Row> rows) throws UnreadableTable {
        if (row.cells().isEmpty()) {
            return;
        }
        if (row.cells().size() != columns.size()) {
            throw new UnreadableTable(row.line(), "the line has " + row.cells().size() + " values, but there are "
                    + columns.size() + " columns; a name with blanks has to stand in quotes");
        }
        rows.add(row);
    }

    private Row following(int line, String begin, String end) throws UnreadableTable {
        if (!lines.hasNext()) {
            throw new UnreadableTable(line, begin + " has no " + end + "; the file may be cut short, export it again");
        }
        return lines.next();
    }

    private static Count count(Row row) throws UnreadableTable {
        String written = row.cells().size() == 2 ? row.cells().get(1) : "";
        if (!written.matches("[0-9]{1,9}")) {
            throw new UnreadableTable(row.line(), row.cells().get(0) + " “" + written + "” is not a whole number");
        }
        return new Count(Integer.parseInt(written), row.line());
    }

    private static boolean keyword(String line, String keyword) {
        return line.startsWith(keyword)
                && (line.length() == keyword.length() || Character.isWhitespace(line.charAt(keyword.length())));
    }
}
