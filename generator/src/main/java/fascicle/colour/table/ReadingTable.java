package fascicle.colour.table;

import fascicle.colour.Lab;
import java.util.List;

/**
 * The readings of a table, in its order.
 *
 * @param readings at least one
 */
public record ReadingTable(List<Read> readings) {

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
     * Reads a table.
     *
     * @param text the file's text
     * @return its readings
     * @throws UnreadableTable if it is no table of colours, or any of its lines cannot be read
     */
    public static ReadingTable read(String text) throws UnreadableTable {
        throw new UnreadableTable("is not read yet");
    }
}
