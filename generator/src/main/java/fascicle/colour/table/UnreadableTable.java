package fascicle.colour.table;

import java.io.Serial;

/** A table that cannot be read; the message says where, what was found, what was expected and how to mend it. */
public final class UnreadableTable extends Exception {

    @Serial
    private static final long serialVersionUID = 1L;

    /**
     * A table that cannot be read.
     *
     * @param words such as {@code has no columns of colour; expected are LAB_L, LAB_A and LAB_B}
     */
    public UnreadableTable(String words) {
        super(words);
    }

    /**
     * A table that cannot be read because of one of its lines.
     *
     * @param line the line, counted from 1
     * @param words such as {@code “36,2” has a decimal comma; write 36.2}
     */
    public UnreadableTable(int line, String words) {
        super("in line " + line + ": " + words);
    }

    /**
     * Where, why, and how to mend it.
     *
     * @return the words
     */
    public String words() {
        return String.valueOf(getMessage());
    }
}
