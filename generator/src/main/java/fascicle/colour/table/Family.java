package fascicle.colour.table;

import java.util.List;

/** What the columns of a table can make a colour from; the earlier is the better where a table has several. */
enum Family {

    /** L*, a* and b*. */
    LAB("L", "a", "b"),

    /** Reflectance at some wavelengths. */
    SPECTRUM,

    /** X, Y and Z. */
    XYZ("X", "Y", "Z"),

    /** A colour code such as {@code #7f4632}. */
    HEX,

    /** Red, green and blue of sRGB. */
    RGB("R", "G", "B");

    private final List<String> usual;

    Family(String... usual) {
        this.usual = List.of(usual);
    }

    /** The letters of its parts in their usual case; none where it is not written in letters. */
    List<String> usual() {
        return usual;
    }

    /** Whether its figures depend on an illuminant and an observer that the meter has chosen. */
    boolean seen() {
        return this == LAB || this == XYZ;
    }
}
