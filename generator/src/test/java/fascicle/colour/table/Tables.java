package fascicle.colour.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import fascicle.colour.table.ReadingTable.Kind;
import fascicle.colour.table.ReadingTable.Read;
import java.util.List;

/** Reading tables in tests. */
final class Tables {

    private Tables() {}

    static ReadingTable read(String text) {
        try {
            return ReadingTable.read(text);
        } catch (UnreadableTable unreadable) {
            throw new AssertionError(unreadable.words(), unreadable);
        }
    }

    /** Why a table cannot be read. */
    static String words(String text) {
        return assertThrows(UnreadableTable.class, () -> ReadingTable.read(text)).words();
    }

    static List<Lab> labs(ReadingTable table) {
        return table.readings().stream().map(Read::lab).toList();
    }

    static List<Kind> kinds(ReadingTable table) {
        return table.readings().stream().map(Read::kind).toList();
    }

    static void assertLab(Lab expected, Lab actual, double tolerance) {
        assertEquals(0, ColourDifference.cielab(expected, actual), tolerance, () -> expected + " and " + actual);
    }
}
