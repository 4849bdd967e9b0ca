package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.Grid;
import fascicle.book.page.Hanging;
import fascicle.book.page.Link;
import fascicle.book.page.Verdict;
import fascicle.book.swatch.Swatch;
import fascicle.book.words.Words;
import fascicle.colour.ColourNames;
import fascicle.colour.Lab;
import fascicle.notebook.NeedleLot;
import fascicle.notebook.Outcome;
import fascicle.workings.ColourFigures;
import fascicle.workings.EntryWorking;
import fascicle.workings.Group;
import fascicle.workings.grid.Cell;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Samples among others: what stands in a grid's cell, and what hangs on the string. */
final class CellComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;
    private final ColourComposer colours;

    CellComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.figures = materials.figures();
        this.colours = new ColourComposer(materials, ways);
    }

    /** A cell of a grid; one entry is its own way, several are found behind the way that is given. */
    Grid.Cell cell(Cell cell, Link behind) {
        if (cell.entries().isEmpty()) {
            return new Grid.Cell(Optional.empty());
        }
        Optional<Lab> colour = cell.median().map(Cell.Median::colour);
        String name = colour.map(known -> ColourNames.nearest(known).name()).orElseGet(() ->
                words.say(cell.days().worked() > 0 ? "swatch.unknown" : "grid.none-worked"));
        Link way = cell.entries().size() == 1 ? ways.entry(cell.entries().get(0)) : behind;
        return new Grid.Cell(Optional.of(new Grid.Tried(swatch(cell, name).small(), name,
                colour.map(known -> known.toRgb().hex()),
                cell.median().filter(median -> median.of() == Outcome.Verdict.PARTLY)
                        .map(median -> words.say("grid.of-partly")),
                new Link(count(cell.entries().size(), cell.days().all()), way.href()), days(cell.days()))));
    }

    /** An entry among others. */
    Hanging hanging(EntryWorking entry) {
        Optional<ColourFigures> colour = entry.colour();
        return new Hanging(colours.swatch(entry).hung(), ways.entry(entry), figures.date(entry.entry().date()),
                colour.map(known -> known.name().name()), colour.map(known -> known.lab().toRgb().hex()),
                entry.entry().verdict().map(verdict -> new Verdict(verdict.word(), words.name("verdict", verdict))));
    }

    /** Entries on a string; of more than fit, as many as do, spread over all of them. */
    List<Hanging> someOf(List<EntryWorking> hung, int most) {
        int shown = Math.min(hung.size(), most);
        return IntStream.range(0, shown).mapToObj(place -> hung.get((int) ((long) place * hung.size() / shown)))
                .map(this::hanging).toList();
    }

    /** So many entries on so many dye days. */
    String count(int entries, int days) {
        return words.say("grid.count", words.say("count.entries", entries), words.say("count.days", days));
    }

    /** One entry shows its readings, several their median; the sheath is the bare needles' median. */
    private Swatch swatch(Cell cell, String name) {
        List<EntryWorking> shown = cell.median().map(Cell.Median::entries).orElse(cell.entries());
        List<Lab> bare = shown.stream().flatMap(entry -> entry.needles().lot().stream()).map(NeedleLot::id).distinct()
                .flatMap(lot -> materials.index().bareColour(lot).stream()).map(ColourFigures::lab).toList();
        List<Lab> dyed = cell.median().map(median -> shown.size() == 1
                ? shown.get(0).colour().map(ColourFigures::readings).orElse(List.of())
                : List.of(median.colour())).orElse(List.of());
        return new Swatch(dyed, bare.isEmpty() ? Optional.empty() : Optional.of(Lab.median(bare)), Optional.empty(),
                name);
    }

    private List<Verdict> days(Group.VerdictDays days) {
        List<Verdict> said = new ArrayList<>();
        add(said, Outcome.Verdict.WORKED, "days.worked", days.worked());
        add(said, Outcome.Verdict.PARTLY, "days.partly", days.partly());
        add(said, Outcome.Verdict.FAILED, "days.failed", days.failed());
        return List.copyOf(said);
    }

    private void add(Collection<Verdict> said, Outcome.Verdict verdict, String key, int days) {
        if (days > 0) {
            said.add(new Verdict(verdict.word(), words.say(key, days)));
        }
    }
}
