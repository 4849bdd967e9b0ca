package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * Swatches in rows and columns, as a part of a page.
 *
 * @param caption what is laid out, in words
 * @param corner what the rows are
 * @param columns the columns
 * @param rows the rows
 */
public record Grid(String caption, String corner, List<Link> columns, List<Row> rows) {

    /**
     * A row.
     *
     * @param head what it is about; of a mixture each dye
     * @param cells one for each column
     */
    public record Row(List<Link> head, List<Cell> cells) {}

    /**
     * A place in the grid.
     *
     * @param tried what was tried there; nothing where nothing was
     */
    public record Cell(Optional<Tried> tried) {}

    /**
     * What was tried in one place.
     *
     * @param swatch the colour, small
     * @param colour its name, or why there is none
     * @param hex the colour in sRGB
     * @param of which entries the colour is taken from, where it is not what worked
     * @param entries how many entries on how many days, with a way to them
     * @param days on how many days it worked, partly worked, failed
     * @param lookUp the way to looking these very entries up
     */
    public record Tried(Markup swatch, String colour, Optional<String> hex, Optional<String> of, Link entries,
            List<Verdict> days, Link lookUp) {}
}
