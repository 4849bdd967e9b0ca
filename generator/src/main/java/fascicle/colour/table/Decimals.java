package fascicle.colour.table;

import java.util.regex.Pattern;

/** What may stand before the decimals of a table's numbers. */
enum Decimals {

    /** Only a point. */
    POINT,

    /** A point, or a comma where it cannot be taken for the separator of cells. */
    POINT_OR_COMMA;

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,2})?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[0-9]*,[0-9]+");

    /** Whether a cell holds a number. */
    boolean reads(String cell) {
        String plain = plain(cell);
        return NUMBER.matcher(plain).matches() || this == POINT_OR_COMMA && WITH_COMMA.matcher(plain).matches();
    }

    /**
     * The number in a cell.
     *
     * @param cell what stands there
     * @param column the column's name, for the message
     * @param line the line in the file, for the message
     */
    double read(String cell, String column, int line) throws UnreadableTable {
        String plain = plain(cell);
        if (reads(plain)) {
            return Double.parseDouble(plain.replace(',', '.'));
        }
        if (plain.isEmpty()) {
            throw new UnreadableTable(
                    line, "nothing stands under “" + column + "”; write a number, or leave the line out");
        }
        if (WITH_COMMA.matcher(plain).matches()) {
            throw new UnreadableTable(
                    line, "“" + cell + "” has a decimal comma; write " + plain.replace(',', '.') + " with a point");
        }
        throw new UnreadableTable(line, "“" + cell + "” under “" + column + "” is not a number");
    }

    /** A number as the messages have it: whole ones without a point. */
    static String written(double value) {
        return value == StrictMath.rint(value) && StrictMath.abs(value) < 1e9
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }

    /** Programs that set text write a true minus. */
    private static String plain(String cell) {
        return cell.replace('−', '-');
    }
}
