package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.page.Grid;
import fascicle.book.page.LaddersPage;
import fascicle.book.page.Link;
import fascicle.book.words.Words;
import fascicle.workings.grid.Ladder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Depth ladders: the page of all, and the one that stands on a dye's page. */
public final class LadderComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final CellComposer cells;

    /**
     * Composes ladders.
     *
     * @param materials what pages are made from
     */
    public LadderComposer(Materials materials) {
        this(materials, Ways.fromTop(materials));
    }

    LadderComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.cells = new CellComposer(materials, ways);
    }

    /**
     * The page of all ladders.
     *
     * @return what the page says
     */
    public LaddersPage page() {
        List<LaddersPage.Ladder> ladders = new ArrayList<>();
        List<String> single = new ArrayList<>();
        for (Ladder ladder : Ladder.all(materials.workings())) {
            Link dye = ways.to(Shelf.DYES, ladder.dye());
            if (rises(ladder)) {
                ladders.add(new LaddersPage.Ladder(dye, grid(ladder, dye)));
            } else {
                single.add(words.say("ladder.at", dye.text(), depth(ladder.rungs().get(0))));
            }
        }
        return new LaddersPage(ways.frame(words.say("ladder.title")), List.copyOf(ladders), single.isEmpty()
                ? Optional.empty() : Optional.of(words.say("ladder.single", String.join(words.say("pieces"), single))));
    }

    /** A dye's ladder; nothing below two depths. */
    Optional<Grid> ofDye(String id) {
        Ladder ladder = Ladder.of(materials.workings(), id);
        return rises(ladder) ? Optional.of(grid(ladder, ways.to(Shelf.DYES, id))) : Optional.empty();
    }

    private static boolean rises(Ladder ladder) {
        return ladder.rungs().size() > 1;
    }

    private Grid grid(Ladder ladder, Link dye) {
        return new Grid(words.say("ladder.caption", dye.text()), words.say("ladder.condition"),
                ladder.rungs().stream().map(rung -> Link.plain(depth(rung))).toList(),
                ladder.rows().stream().map(row -> row(ladder, row)).toList());
    }

    private Grid.Row row(Ladder ladder, Ladder.Row row) {
        Link condition = ways.condition(row.condition());
        Link lookUp = ways.lookUp(List.of(ladder.dye()), row.condition());
        return new Grid.Row(List.of(condition),
                row.cells().stream().map(cell -> cells.cell(cell, condition, lookUp)).toList());
    }

    private String depth(Ladder.Rung rung) {
        return materials.figures().amount(rung.owfPercent(), "percent", rung.about());
    }
}
