package fascicle.colour;

/**
 * A name of the ISCC–NBS system at its third level (K. L. Kelly and D. B. Judd, 1976, "Color: Universal Language and
 * Dictionary of Names", NBS Special Publication 440), in the standard's spelling.
 *
 * @param number the block's number, from 1 to 267
 * @param name such as {@code Strong reddish brown}
 * @param abbreviation such as {@code s.rBr}
 * @param family the hue group at the first level, one of thirteen, such as {@code Brown}
 * @param centroid the middle of the block, to 8 bits of sRGB
 */
public record ColourName(int number, String name, String abbreviation, String family, Lab centroid) {}
