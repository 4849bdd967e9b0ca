package fascicle.colour.table;

import fascicle.colour.Lab;
import java.util.ArrayList;
import java.util.List;

/**
 * The readings of a table, in its order.
 *
 * <p>Of the columns of a table the best are used: L*, a* and b* before a spectrum, that before X, Y and Z, and those
 * before sRGB. Lab and XYZ are taken to be under D50 for the 2° observer unless the table says otherwise; what it says
 * to be under D65 is adapted. Nothing is guessed that would turn out a wrong colour which looks right.
 *
 * @param readings at least one
 */
public record ReadingTable(List<Read> readings) {

    /** More readings than a maker takes of a batch; a log of a machine has more. */
    private static final int MOST = 10_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /**
     * The readings of a table.
     *
     * @throws IllegalArgumentException if there are none
     */
    public ReadingTable {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a table of no readings: " + readings);
        }
        readings = List.copyOf(readings);
    }

    /** What a colour was made from. */
    public enum Kind { LAB, XYZ, SPECTRAL, SCREEN }

    /**
     * One reading.
     *
     * @param lab the colour under D50, 2°
     * @param kind what it was made from
     * @param line its line in the file, counted from 1
     */
    public record Read(Lab lab, Kind kind, int line) {}

    /**
     * Reads a table: CGATS text (ISO 28178) or plain cells parted by tabs, semicolons or commas. Of a CGATS file with
     * several tables all that hold colours are taken.
     *
     * @param text the file's text
     * @return its readings
     * @throws UnreadableTable if it is no table of colours, or any of its lines cannot be read
     */
    public static ReadingTable read(String text) throws UnreadableTable {
        if (text.indexOf('\0') >= 0) {
            throw new UnreadableTable("is no plain text; export the readings as CGATS or CSV, in UTF-8");
        }
        String plain = plain(text);
        if (plain.isBlank()) {
            throw new UnreadableTable("is empty; export the readings again");
        }
        List<Sheet> sheets = CgatsReader.suits(plain) ? CgatsReader.read(plain) : List.of(CsvReader.read(plain));
        if (sheets.isEmpty()) {
            throw new UnreadableTable("has no BEGIN_DATA; the file may be cut short, export it again");
        }
        return of(sheets);
    }

    private static ReadingTable of(List<Sheet> sheets) throws UnreadableTable {
        List<Sheet> coloured = sheets.stream().filter(sheet -> new Columns(sheet.columns()).some()).toList();
        if (coloured.isEmpty()) {
            Sheet first = sheets.get(0);
            throw new UnreadableTable(first.line(), new Columns(first.columns()).colourless());
        }
        List<Read> readings = new ArrayList<>();
        for (Sheet sheet : coloured) {
            Columns.Choice choice = new Columns(sheet.columns()).choose(sheet.line(), sheet.viewing());
            if (readings.size() + sheet.rows().size() > MOST) {
                throw new UnreadableTable("has more than " + MOST + " readings; export fewer");
            }
            if (!sheet.rows().isEmpty()) {
                readings.addAll(new Colouring(sheet, choice).reads());
            }
        }
        if (readings.isEmpty()) {
            throw new UnreadableTable(coloured.get(0).line(), "columns are named, but no reading follows");
        }
        return new ReadingTable(readings);
    }

    /** Without the mark that some programs put first, and with one kind of line end. */
    private static String plain(String text) {
        String unmarked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        return unmarked.replace("\r\n", "\n").replace('\r', '\n');
    }
}
