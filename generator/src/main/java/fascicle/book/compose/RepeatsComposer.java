package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.figures.Figures;
import fascicle.book.page.Link;
import fascicle.book.page.RepeatsPage;
import fascicle.book.words.Words;
import fascicle.notebook.NeedleLot;
import fascicle.workings.EntryWorking;
import fascicle.workings.PartFigures;
import fascicle.workings.grid.Repeat;
import fascicle.workings.grid.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Repeats of the same recipe, side by side. */
public final class RepeatsComposer {

    /** Repeats that a browser lays out at once. */
    private static final int PIECE = 200;

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Figures figures;
    private final CellComposer cells;

    /**
     * Composes the page.
     *
     * @param materials what pages are made from
     */
    public RepeatsComposer(Materials materials) {
        this.materials = materials;
        this.ways = Ways.fromTop(materials);
        this.words = materials.words();
        this.figures = materials.figures();
        this.cells = new CellComposer(materials, ways);
    }

    /**
     * The page of repeats.
     *
     * @return what the page says, those of most entries first
     */
    public RepeatsPage page() {
        List<Repeat> repeats = Repeat.among(materials.workings().entries());
        List<RepeatsPage.Group> groups = new ArrayList<>();
        for (int from = 0; from < repeats.size(); from += PIECE) {
            int to = Math.min(from + PIECE, repeats.size());
            String caption = repeats.size() <= PIECE ? words.say("repeats.caption")
                    : words.say("repeats.caption-piece", from + 1, to, repeats.size());
            groups.add(new RepeatsPage.Group(caption, repeats.subList(from, to).stream().map(this::repeat).toList()));
        }
        return new RepeatsPage(ways.frame(words.say("repeats.title")), List.copyOf(groups));
    }

    private RepeatsPage.Repeat repeat(Repeat repeat) {
        EntryWorking first = repeat.entries().get(0);
        return new RepeatsPage.Repeat(recipe(first), needles(first),
                cells.count(repeat.entries().size(), materials.workings().days(repeat.entries()).all()),
                repeat.entries().stream().map(cells::hanging).toList(),
                repeat.spread().map(spread -> figures.difference(spread.mean()))
                        .orElseGet(() -> words.say("repeats.no-spread")),
                repeat.spread().map(spread -> figures.difference(spread.largest())), remarks(repeat));
    }

    private List<Link> recipe(EntryWorking entry) {
        Stream<Link> method = entry.entry().method().map(id -> ways.to(Shelf.METHODS, id.value())).stream();
        return Stream.concat(method, entry.bath().dye().stream().map(this::dye)).toList();
    }

    private Link dye(PartFigures part) {
        Link dye = ways.to(Shelf.DYES, part.is());
        Optional<String> amount = figures.amount(part.owfPercent(), "percent", part.isRough()).or(part::asWritten);
        return new Link(amount.map(known -> words.say("ladder.at", dye.text(), known)).orElse(dye.text()), dye.href());
    }

    private List<Link> needles(EntryWorking entry) {
        return Stream.concat(entry.needles().condition().map(ways::condition).stream(),
                entry.needles().species().map(Link::plain).stream()).toList();
    }

    private List<String> remarks(Repeat repeat) {
        List<String> remarks = new ArrayList<>();
        if (repeat.lots().size() > 1) {
            remarks.add(words.say("repeats.lots", repeat.lots().size(), repeat.lots().stream()
                    .map(NeedleLot::called).collect(Collectors.joining(words.say("pieces")))));
        }
        repeat.spread().map(Spread::colours).filter(colours -> colours < repeat.entries().size())
                .ifPresent(colours -> remarks.add(words.say("repeats.coloured", colours)));
        repeat.spread().filter(spread -> !spread.readAlike())
                .ifPresent(spread -> remarks.add(words.say("repeats.read-unlike")));
        return List.copyOf(remarks);
    }
}
