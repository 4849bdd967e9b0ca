package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.Grid;
import fascicle.book.page.GridPage;
import fascicle.book.page.Link;
import fascicle.book.words.Words;
import fascicle.notebook.Ids;
import fascicle.workings.Group;
import fascicle.workings.grid.DyeGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dyes on conditions: the page of all, and the parts of it that stand on pages of methods and dyes. */
public final class GridComposer {

    /** Rows that a browser lays out at once. */
    private static final int PIECE = 200;

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final CellComposer cells;

    /**
     * Composes the grid.
     *
     * @param materials what pages are made from
     */
    public GridComposer(Materials materials) {
        this(materials, Ways.fromTop(materials));
    }

    GridComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.cells = new CellComposer(materials, ways);
    }

    /**
     * The page of all dyes on all conditions.
     *
     * @return what the page says
     */
    public GridPage page() {
        DyeGrid grid = DyeGrid.of(materials.workings(), materials.workings().entries());
        List<Grid> pieces = new ArrayList<>();
        int rows = grid.rows().size();
        for (int from = 0; from < rows && !grid.conditions().isEmpty(); from += PIECE) {
            int to = Math.min(from + PIECE, rows);
            String caption = rows <= PIECE ? words.say("grid.caption")
                    : words.say("grid.caption-piece", from + 1, to, rows);
            pieces.add(laid(caption, grid, grid.rows().subList(from, to), Optional.empty()));
        }
        return new GridPage(ways.frame(words.say("grid.title")), List.copyOf(pieces),
                grid.aside() == 0 ? Optional.empty() : Optional.of(words.say("grid.aside", grid.aside())));
    }

    /** A method's results on each condition, by its dyes; nothing where no entry has a place in it. */
    Optional<Grid> ofMethod(String id) {
        return materials.workings().group(Group.Kind.METHOD, id).flatMap(method -> part(
                words.say("grid.method", method.title()), DyeGrid.of(materials.workings(), method.entries()), Optional.empty()));
    }

    /** A dye on each condition, alone and in its mixtures; nothing where no entry has a place in it. */
    Optional<Grid> ofDye(String id) {
        return materials.workings().group(Group.Kind.DYE, id).flatMap(dye -> part(
                words.say("grid.dye", dye.title()), DyeGrid.ofDye(materials.workings(), id), Optional.of(dye.id())));
    }

    private Optional<Grid> part(String caption, DyeGrid grid, Optional<String> here) {
        List<DyeGrid.Row> tried = grid.rows().stream()
                .filter(row -> row.cells().stream().anyMatch(cell -> !cell.entries().isEmpty())).toList();
        return tried.isEmpty() ? Optional.empty() : Optional.of(laid(caption, grid, tried, here));
    }

    private Grid laid(String caption, DyeGrid grid, List<DyeGrid.Row> rows, Optional<String> here) {
        return new Grid(caption, words.say("grid.dyes"), grid.conditions().stream().map(ways::condition).toList(),
                rows.stream().map(row -> row(grid, row, here)).toList());
    }

    private Grid.Row row(DyeGrid grid, DyeGrid.Row row, Optional<String> here) {
        List<Grid.Cell> laid = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String condition = grid.conditions().get(i);
            laid.add(cells.cell(row.cells().get(i), behind(row, condition, here), ways.lookUp(row.dyes(), condition)));
        }
        return new Grid.Row(row.dyes().stream().map(dye -> ways.to(Shelf.DYES, dye)).toList(), List.copyOf(laid));
    }

    /** A dye's own page lists its entries; of mixtures, and on that page itself, the condition's does. */
    private Link behind(DyeGrid.Row row, String condition, Optional<String> here) {
        String dye = row.dyes().get(0);
        boolean listed = row.dyes().size() == 1 && here.filter(id -> Ids.same(id, dye)).isEmpty();
        return listed ? ways.to(Shelf.DYES, dye) : ways.condition(condition);
    }
}
